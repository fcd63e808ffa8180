package org.staywright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.RestAssured;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.staywright.Patience;

/** The program as it is built, in a process of its own. */
public final class Instance implements AutoCloseable {

  private static final Pattern LISTENS = Pattern.compile("Listening on: http://\\S+:(\\d+)");
  private static final HttpClient HTTP = HttpClient.newHttpClient();

  private final Path log;
  private final Process process;
  private String port;

  private Instance(Path log, Process process) {
    this.log = log;
    this.process = process;
  }

  /** On a data folder of its own, new. */
  public static Instance onH2(String name) throws IOException {
    return onH2(name, Map.of());
  }

  /** With settings as the environment names them. */
  public static Instance onH2(String name, Map<String, String> settings) throws IOException {
    Map<String, String> environment = new HashMap<>(settings);
    Path data = Files.createTempDirectory(Path.of("target"), name + "-data-");
    environment.put("STAYWRIGHT_DATA", data.toString());
    return start(name, "quarkus-app", environment);
  }

  public static Instance onPostgresql(String name, String database) throws IOException {
    return start(
        name,
        "postgresql",
        Map.of("QUARKUS_DATASOURCE_JDBC_URL", database, "QUARKUS_DATASOURCE_USERNAME", "postgres"));
  }

  /** Starts it on whatever port is free; {@link #awaitReady} says when it answers. */
  private static Instance start(String name, String program, Map<String, String> environment)
      throws IOException {
    ProcessBuilder command =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx400m",
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-Dquarkus.http.port=0",
            "-jar",
            Path.of("target", program, "quarkus-run.jar").toString());
    command.environment().putAll(environment);
    Path log = Path.of("target", name + ".log");
    Process process = command.redirectErrorStream(true).redirectOutput(log.toFile()).start();
    Runtime.getRuntime().addShutdownHook(new Thread(process::destroyForcibly));
    return new Instance(log, process);
  }

  public void awaitReady() throws InterruptedException, IOException {
    port = told(LISTENS);
    HttpRequest ready = HttpRequest.newBuilder(URI.create(url("/q/health/ready"))).build();
    assertEquals(200, HTTP.send(ready, HttpResponse.BodyHandlers.discarding()).statusCode());
  }

  /** The first group of what the log is to say, once it does. */
  public String told(Pattern pattern) throws InterruptedException {
    Matcher found =
        Patience.until(
            () -> {
              assertTrue(process.isAlive(), () -> "it does not start, see " + log);
              return pattern.matcher(written());
            },
            Matcher::find);
    return found.group(1);
  }

  private String written() {
    try {
      return Files.readString(log);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public String url(String path) {
    return "http://localhost:" + port + path;
  }

  /** Paths asked for from here on are its own. */
  public void beAsked() throws InterruptedException, IOException {
    awaitReady();
    RestAssured.baseURI = url("");
  }

  /** Without a chance to tidy up. */
  void kill() {
    process.destroyForcibly();
    process.onExit().join();
  }

  @Override
  public void close() {
    RestAssured.reset();
    kill();
  }
}
