package org.staywright.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The published figures in {@code shared/}. */
public final class Facts {

  private Facts() {}

  /** Rows of {@code shared/<name>.csv}, cells by the column's name. */
  public static List<CSVRecord> of(String name) {
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    Path file = Path.of("shared", name + ".csv");
    try (var in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      return format.parse(in).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  /** A worked example by its topic, case and quantity. */
  public static CSVRecord example(String topic, String name, String quantity) {
    return of("worked-examples").stream()
        .filter(row -> row.get("topic").equals(topic))
        .filter(row -> row.get("case").equals(name))
        .filter(row -> row.get("quantity").equals(quantity))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(topic + ", " + name + ", " + quantity));
  }

  public static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /** The source of a row, with the confession where nobody looked the figure up. */
  public static String source(CSVRecord row) {
    String source = row.get("source");
    boolean confessed = source.contains("memory");
    return row.get("seen").equals("yes") || confessed ? source : source + " (from memory)";
  }
}
