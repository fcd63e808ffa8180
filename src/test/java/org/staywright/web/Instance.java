package org.staywright.web;

import java.io.File;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** The program as it is built for PostgreSQL, in a process of its own. */
final class Instance implements AutoCloseable {

  private static final Path PROGRAM = Path.of("target", "postgresql");
  private static final HttpClient HTTP = HttpClient.newHttpClient();

  private final String name;
  private final int port;
  private final Process process;

  private Instance(String name, int port, Process process) {
    this.name = name;
    this.port = port;
    this.process = process;
  }

  /** Starts it; {@link #awaitReady} says when it answers. */
  static Instance start(String name, String database) throws IOException {
    int port;
    try (ServerSocket free = new ServerSocket(0)) {
      port = free.getLocalPort();
    }
    ProcessBuilder command =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx400m",
            "-XX:TieredStopAtLevel=1",
            "-Dquarkus.http.port=" + port,
            "-jar",
            PROGRAM.resolve("quarkus-run.jar").toString());
    command.environment().put("QUARKUS_DATASOURCE_JDBC_URL", database);
    command.environment().put("QUARKUS_DATASOURCE_USERNAME", "postgres");
    File log = Path.of("target", name + ".log").toFile();
    Process process = command.redirectErrorStream(true).redirectOutput(log).start();
    Runtime.getRuntime().addShutdownHook(new Thread(process::destroyForcibly));
    return new Instance(name, port, process);
  }

  void awaitReady() throws InterruptedException {
    long start = System.nanoTime();
    while (!ready()) {
      if (!process.isAlive() || System.nanoTime() - start > TimeUnit.MINUTES.toNanos(2)) {
        throw new AssertionError(name + " does not start: target/" + name + ".log");
      }
      Thread.sleep(100);
    }
  }

  private boolean ready() throws InterruptedException {
    try {
      HttpRequest request = HttpRequest.newBuilder(URI.create(url("/q/health/ready"))).build();
      return HTTP.send(request, HttpResponse.BodyHandlers.discarding()).statusCode() == 200;
    } catch (IOException notYet) {
      return false;
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
