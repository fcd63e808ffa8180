package org.staywright.stock;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVPrinter;
import org.staywright.fit.SampleRange;
import org.staywright.form.stock.StockRow;
import org.staywright.form.table.NumberColumn;
import org.staywright.form.table.RowFile;
import org.staywright.part.Family;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.PartNumber;

/**
 * A range of any size as a file: the sample range again and again, each part a little longer and
 * weaker, with a number, a price and a stock of its own. Always the same for a size.
 */
final class SyntheticRange {

  /** Beyond the numbers of the sample range. */
  private static final int FIRST_SERIAL = 1_000_000;

  private static final int NUMBER = StockRow.COLUMNS.indexOf("part_number");
  private static final int EXTENDED = StockRow.COLUMNS.indexOf("extended_length_mm");
  private static final int COMPRESSED = StockRow.COLUMNS.indexOf("compressed_length_mm");
  private static final int FORCE = StockRow.COLUMNS.indexOf("force_class_n");
  private static final int BREAKS = StockRow.COLUMNS.indexOf("price_breaks");
  private static final int STOCK = StockRow.COLUMNS.indexOf("stock");

  private SyntheticRange() {}

  /** Writes a file of so many rows, the sample's end fittings among them. */
  static void write(Path file, int rows) throws IOException {
    List<Part> samples = samples();
    SplittableRandom random = new SplittableRandom(20_261_129);
    try (BufferedWriter text = Files.newBufferedWriter(file);
        CSVPrinter csv = new CSVPrinter(text, RowFile.FORMAT)) {
      csv.printRecord(StockRow.COLUMNS);
      List<Fitting> fittings = SampleRange.read().fittings();
      for (Fitting fitting : fittings) {
        csv.printRecord(new StockRow(null, fitting).cells());
      }
      for (int i = 0; i < rows - fittings.size(); i++) {
        Part sample = samples.get(i % samples.size());
        csv.printRecord(varied(sample, PartNumber.of(FIRST_SERIAL + i), random));
      }
    }
  }

  private static List<Part> samples() {
    return Stream.of(Family.values()).flatMap(f -> SampleRange.parts(f).stream()).toList();
  }

  private static List<String> varied(Part sample, String number, SplittableRandom random) {
    List<String> cells = new ArrayList<>(new StockRow(sample, null).cells());
    cells.set(NUMBER, number);
    cells.set(STOCK, Integer.toString(random.nextInt(100)));
    int cents = random.nextInt(500, 20_000);
    cells.set(BREAKS, "1:%d.%02d;10:%d.%02d".formatted(cents / 100, cents % 100, cents / 110, 50));
    if (sample.family() != Family.COIL_SPRING) {
      double longer = random.nextInt(200) / 10.0;
      cells.set(EXTENDED, more(cells.get(EXTENDED), longer));
      cells.set(COMPRESSED, more(cells.get(COMPRESSED), longer));
    }
    if (sample.family() == Family.GAS_SPRING) {
      double weaker = -0.1 * random.nextDouble() * sample.spring().force();
      cells.set(FORCE, more(cells.get(FORCE), Math.rint(weaker)));
    }
    return cells;
  }

  private static String more(String cell, double by) {
    return NumberColumn.text(NumberColumn.tidy(Double.parseDouble(cell) + by));
  }
}
