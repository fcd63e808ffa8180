package org.staywright.stock.file;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.staywright.form.table.RowFile;

/** Rows of CSV in UTF-8, read as they are asked for. */
final class CsvRows implements Rows {

  private final CSVParser parser;
  private final Iterator<CSVRecord> records;
  private int row = 1;

  CsvRows(Path path) throws IOException {
    var strict =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    parser = RowFile.FORMAT.parse(new InputStreamReader(Files.newInputStream(path), strict));
    records = parser.iterator();
  }

  @Override
  public Row next() {
    try {
      if (!records.hasNext()) {
        return null;
      }
      CSVRecord record = records.next();
      row = (int) parser.getCurrentLineNumber();
      return new Row(row, record.toList());
    } catch (UncheckedIOException | IllegalStateException e) {
      boolean coding = e.getCause() instanceof CharacterCodingException;
      int at = Math.max(row, (int) parser.getCurrentLineNumber());
      throw coding
          ? new Spoiled(at, null, "UTF-8", "not-utf8")
          : new Spoiled(at, null, "CSV (RFC 4180)", "not-csv");
    }
  }

  @Override
  public void close() throws IOException {
    parser.close();
  }
}
