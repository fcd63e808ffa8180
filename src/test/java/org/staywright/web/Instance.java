package org.staywright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.staywright.Patience;

/** The program as it is built for PostgreSQL, in a process of its own. */
final class Instance implements AutoCloseable {

  private static final Path PROGRAM = Path.of("target", "postgresql");
  private static final Pattern LISTENS = Pattern.compile("Listening on: http://\\S+:(\\d+)");
  private static final HttpClient HTTP = HttpClient.newHttpClient();

  private final Path log;
  private final Process process;
  private String port;

  private Instance(Path log, Process process) {
    this.log = log;
    this.process = process;
  }

  /** Starts it on whatever port is free; {@link #awaitReady} says when it answers. */
  static Instance start(String name, String database) throws IOException {
    ProcessBuilder command =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx400m",
            "-XX:TieredStopAtLevel=1",
            "-Dquarkus.http.port=0",
            "-jar",
            PROGRAM.resolve("quarkus-run.jar").toString());
    command.environment().put("QUARKUS_DATASOURCE_JDBC_URL", database);
    command.environment().put("QUARKUS_DATASOURCE_USERNAME", "postgres");
    Path log = Path.of("target", name + ".log");
    Process process = command.redirectErrorStream(true).redirectOutput(log.toFile()).start();
    Runtime.getRuntime().addShutdownHook(new Thread(process::destroyForcibly));
    return new Instance(log, process);
  }

  void awaitReady() throws InterruptedException, IOException {
    Matcher listens =
        Patience.until(
            () -> {
              assertTrue(process.isAlive(), () -> "it does not start, see " + log);
              return LISTENS.matcher(written());
            },
            Matcher::find);
    port = listens.group(1);
    HttpRequest ready = HttpRequest.newBuilder(URI.create(url("/q/health/ready"))).build();
    assertEquals(200, HTTP.send(ready, HttpResponse.BodyHandlers.discarding()).statusCode());
  }

  private String written() {
    try {
      return Files.readString(log);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  String url(String path) {
    return "http://localhost:" + port + path;
  }

  /** Without a chance to tidy up. */
  void kill() {
    process.destroyForcibly();
    process.onExit().join();
  }

  @Override
  public void close() {
    kill();
  }
}
