package org.staywright;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** What {@code reports/security.md} says. */
final class SecurityReport {

  private static final Path FILE = Path.of("reports", "security.md");

  private SecurityReport() {}

  static String text() {
    try {
      return Files.readString(FILE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Rows of all tables in a section, cell by cell, without the heads. */
  static List<List<String>> rows(String section) {
    String after = text().split("\n## " + section + "\n", 2)[1];
    return after
        .split("\n## ", 2)[0]
        .lines()
        .filter(line -> line.startsWith("| "))
        .map(SecurityReport::cells)
        .filter(cells -> !cells.get(0).equals("library") && !cells.get(0).equals("row"))
        .toList();
  }

  private static List<String> cells(String line) {
    return Arrays.stream(line.substring(1, line.lastIndexOf('|')).split("\\|"))
        .map(String::strip)
        .toList();
  }
}
