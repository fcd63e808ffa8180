package org.staywright.catalog;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Published facts from {@code shared/}. */
final class SharedTable {

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get();

  private SharedTable() {}

  static List<Map<String, String>> rows(String file) {
    try (Reader reader =
        new InputStreamReader(
            SharedTable.class.getResourceAsStream("/shared/" + file), StandardCharsets.UTF_8)) {
      return FORMAT.parse(reader).stream().map(CSVRecord::toMap).toList();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read shared/" + file, e);
    }
  }
}
