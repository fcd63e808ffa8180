package org.staywright.stock;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import org.apache.commons.csv.CSVPrinter;
import org.staywright.form.RowFile;
import org.staywright.form.StockRow;

/** A revision as a file, exactly as an import takes it. */
public final class StockCsv {

  private StockCsv() {}

  public static void write(Stock stock, int revision, Writer file) throws IOException {
    CSVPrinter csv = new CSVPrinter(file, RowFile.FORMAT);
    csv.printRecord(StockRow.COLUMNS);
    try {
      stock.each(
          revision,
          row -> {
            try {
              csv.printRecord(row.cells());
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          });
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    csv.flush();
  }
}
