package org.staywright.backup;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Archives as nobody should have made them: sound as archives, and yet changed. */
final class Zips {

  private Zips() {}

  static Path changed(Path file, String entry, UnaryOperator<String> change) throws IOException {
    Map<String, String> entries = read(file);
    entries.computeIfPresent(entry, (name, text) -> change.apply(text));
    return write(file, entries);
  }

  static Path without(Path file, String entry) throws IOException {
    Map<String, String> entries = read(file);
    entries.remove(entry);
    return write(file, entries);
  }

  static Path with(Path file, String entry, String text) throws IOException {
    Map<String, String> entries = read(file);
    entries.put(entry, text);
    return write(file, entries);
  }

  static String text(Path file, String entry) throws IOException {
    return read(file).get(entry);
  }

  private static Map<String, String> read(Path file) throws IOException {
    Map<String, String> entries = new LinkedHashMap<>();
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry entry : zip.stream().toList()) {
        byte[] bytes = zip.getInputStream(entry).readAllBytes();
        entries.put(entry.getName(), new String(bytes, StandardCharsets.UTF_8));
      }
    }
    return entries;
  }

  private static Path write(Path file, Map<String, String> entries) throws IOException {
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      for (Map.Entry<String, String> entry : entries.entrySet()) {
        zip.putNextEntry(new ZipEntry(entry.getKey()));
        zip.write(entry.getValue().getBytes(StandardCharsets.UTF_8));
      }
    }
    return file;
  }
}
