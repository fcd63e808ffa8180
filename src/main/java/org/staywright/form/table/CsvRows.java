package org.staywright.form.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Rows of CSV, read as they are asked for. */
final class CsvRows implements Rows {

  private final CSVParser parser;
  private final Iterator<CSVRecord> records;
  private int row;

  /**
   * @param file in UTF-8 and nothing else
   */
  CsvRows(InputStream file) throws IOException {
    this(new InputStreamReader(file, StandardCharsets.UTF_8.newDecoder()));
  }

  CsvRows(Reader file) throws IOException {
    parser = RowFile.FORMAT.parse(file);
    records = parser.iterator();
  }

  @Override
  public Row next() {
    try {
      if (!records.hasNext()) {
        return null;
      }
      List<String> cells = records.next().toList();
      if (row == 0 && cells.get(0).startsWith("\ufeff")) {
        cells.set(0, cells.get(0).substring(1));
      }
      row = line();
      return new Row(row, cells);
    } catch (UncheckedIOException | IllegalStateException e) {
      boolean coding = e.getCause() instanceof CharacterCodingException;
      throw coding
          ? new Spoiled(line(), null, "UTF-8", "not-utf8")
          : new Spoiled(line(), null, "CSV (RFC 4180)", "not-csv");
    }
  }

  private int line() {
    return Math.max(1, Math.max(row, (int) parser.getCurrentLineNumber()));
  }

  @Override
  public void close() throws IOException {
    parser.close();
  }
}
