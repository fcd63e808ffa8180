package org.staywright.web;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.h2.tools.Server;

/**
 * The program with its database in another process, which can be ended and started again, and with
 * its log in a file as JSON.
 */
public class DatabaseOfItsOwn implements QuarkusTestProfile {

  static final Path LOG = Path.of("target", "structured.log");

  /** The class is loaded once for the test and once for the program: what both know stands here. */
  private static final String PORT = "staywright.test.database.port";

  private static final String FOLDER = "staywright.test.database.folder";
  private static final String PROCESS = "staywright.test.database.process";

  @Override
  public Map<String, String> getConfigOverrides() {
    if (System.getProperty(PORT) == null) {
      try (ServerSocket free = new ServerSocket(0)) {
        System.setProperty(PORT, Integer.toString(free.getLocalPort()));
        System.setProperty(FOLDER, Files.createTempDirectory("staywright").toString());
        Files.deleteIfExists(LOG);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      start();
    }
    return Map.of(
        "quarkus.datasource.jdbc.url",
        "jdbc:h2:tcp://localhost:" + System.getProperty(PORT) + "/./staywright;WRITE_DELAY=0",
        "quarkus.log.file.enabled",
        "true",
        "quarkus.log.file.json.enabled",
        "true",
        "quarkus.log.file.path",
        LOG.toString(),
        "quarkus.http.access-log.enabled",
        "true");
  }

  public static void start() {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String jar =
        Path.of(Server.class.getProtectionDomain().getCodeSource().getLocation().getPath())
            .toString();
    ProcessBuilder command =
        new ProcessBuilder(
            java,
            "-cp",
            jar,
            Server.class.getName(),
            "-tcp",
            "-ifNotExists",
            "-tcpPort",
            System.getProperty(PORT),
            "-baseDir",
            System.getProperty(FOLDER));
    try {
      Process process = command.redirectErrorStream(true).start();
      // It says where it listens once it does.
      process.inputReader().readLine();
      System.setProperty(PROCESS, Long.toString(process.pid()));
      Runtime.getRuntime().addShutdownHook(new Thread(process::destroyForcibly));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static void kill() {
    ProcessHandle process =
        ProcessHandle.of(Long.parseLong(System.getProperty(PROCESS))).orElseThrow();
    process.destroyForcibly();
    process.onExit().join();
  }
}
