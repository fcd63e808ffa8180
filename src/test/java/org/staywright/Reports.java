package org.staywright;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * Files of {@code reports/} that tests make. A test run writes them below {@code target/} and fails
 * where they are no longer as they are kept; {@code mvn test -Preports} keeps them as they are now.
 */
public final class Reports {

  /** Whether they are kept as they are now. */
  public static final boolean KEEP = Boolean.getBoolean("staywright.reports");

  private static final Path KEPT = Path.of("reports");
  private static final Path MADE = Path.of("target", "reports");

  private Reports() {}

  public static void hold(String name, String text) throws IOException {
    hold(name, text.getBytes(StandardCharsets.UTF_8));
  }

  public static void hold(String name, byte[] content) throws IOException {
    byte[] kept = Files.readAllBytes(made(name, content));
    assertTrue(
        Arrays.equals(content, kept),
        "reports/" + name + " is not as target/reports/" + name + ": mvn test -Preports keeps it");
  }

  /** Writes it, and says where the kept one is. */
  public static Path made(String name, byte[] content) throws IOException {
    Files.write(Files.createDirectories(MADE).resolve(name), content);
    if (KEEP) {
      Files.write(KEPT.resolve(name), content);
    }
    return KEPT.resolve(name);
  }
}
