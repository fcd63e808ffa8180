package org.staywright.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.staywright.form.table.RowFile;

/** Somebody may have a part on a list: what a number stood for once, it stands for always. */
class KeptNumbersTest {

  private static final Path KEPT = Path.of("src/test/resources/catalog/kept-numbers.csv");

  private static final CSVFormat WITH_HEADER =
      RowFile.FORMAT.builder().setHeader().setSkipHeaderRecord(true).get();

  @Test
  void everyNumberKeepsItsFamilyItsSizesAndItsForceClass() throws IOException {
    Map<String, Map<String, String>> today = new HashMap<>();
    for (CatalogGenerator.Sheet sheet : CatalogGenerator.SHEETS) {
      for (Map<String, String> row : rows(Path.of("catalog-data", sheet.file()))) {
        today.put(row.get("part_number"), row);
      }
    }
    List<Map<String, String>> kept = rows(KEPT);
    assertTrue(kept.size() >= 4565, kept.size() + " numbers");
    for (Map<String, String> row : kept) {
      String number = row.get("part_number");
      Map<String, String> now = today.getOrDefault(number, Map.of());
      row.forEach(
          (column, value) ->
              assertEquals(value, now.getOrDefault(column, ""), number + ", " + column));
    }
  }

  private static List<Map<String, String>> rows(Path file) throws IOException {
    try (var reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      return WITH_HEADER.parse(reader).stream().map(CSVRecord::toMap).toList();
    }
  }
}
