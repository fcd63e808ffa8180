package org.staywright.stock;

import java.io.IOException;
import java.io.Writer;
import org.apache.commons.csv.CSVPrinter;
import org.staywright.form.stock.StockRow;
import org.staywright.form.table.RowFile;
import org.staywright.part.Fitting;
import org.staywright.part.Range;

/** A range as a file, exactly as an import takes it: parts by their numbers, then fittings. */
public final class StockCsv {

  private StockCsv() {}

  public static void write(Range range, Writer file) throws IOException {
    CSVPrinter csv = new CSVPrinter(file, RowFile.FORMAT);
    csv.printRecord(StockRow.COLUMNS);
    for (int row = 0; row < range.size(); row++) {
      csv.printRecord(new StockRow(range.part(row), null).cells());
    }
    for (Fitting fitting : range.fittings()) {
      csv.printRecord(new StockRow(null, fitting).cells());
    }
    csv.flush();
  }
}
