package org.staywright.web;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import org.h2.tools.Server;

/** A database in a process of its own, which can be ended and started again. */
final class DatabaseOfItsOwn {

  private final int port;
  private final Path folder;
  private Process process;

  DatabaseOfItsOwn() throws IOException {
    try (ServerSocket free = new ServerSocket(0)) {
      port = free.getLocalPort();
    }
    folder = Files.createTempDirectory("staywright");
    Runtime.getRuntime().addShutdownHook(new Thread(this::kill));
    start();
  }

  String url() {
    return "jdbc:h2:tcp://localhost:" + port + "/./staywright;WRITE_DELAY=0";
  }

  void start() throws IOException {
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
            Integer.toString(port),
            "-baseDir",
            folder.toString());
    process = command.redirectErrorStream(true).start();
    // It says where it listens once it does.
    process.inputReader().readLine();
  }

  void kill() {
    process.destroyForcibly();
    process.onExit().join();
  }
}
