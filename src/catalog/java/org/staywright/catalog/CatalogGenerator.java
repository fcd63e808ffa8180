package org.staywright.catalog;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.apache.commons.csv.CSVPrinter;
import org.staywright.form.part.FittingRow;
import org.staywright.form.part.PartRow;
import org.staywright.form.table.RowFile;
import org.staywright.part.Family;
import org.staywright.part.Part;

/** Writes the sample range into {@code catalog-data/}; always the same files. */
public final class CatalogGenerator {

  /** A file of one family, the word of its title and its parts. */
  public record Sheet(String file, Family family, String title, Supplier<List<Part>> plan) {

    String text() {
      List<String> columns = PartRow.columns(family);
      return CatalogGenerator.file(
          "# Staywright sample range: " + title + ". Lengths without end fittings.\n",
          columns,
          plan.get().stream().map(part -> PartRow.of(part).cells(columns)).toList());
    }
  }

  static final String SPRINGS = "gas-springs.csv";

  static final List<Sheet> SHEETS =
      List.of(
          new Sheet(SPRINGS, Family.GAS_SPRING, "open gas springs", SpringPlan::parts),
          new Sheet("seat-columns.csv", Family.SEAT_COLUMN, "seat columns", LockingPlan::columns),
          new Sheet(
              "locking-struts.csv", Family.LOCKING_STRUT, "locking struts", LockingPlan::struts),
          new Sheet(
              "traction-springs.csv",
              Family.TRACTION_SPRING,
              "traction springs",
              TractionPlan::parts),
          new Sheet("dampers.csv", Family.DAMPER, "dampers", DamperPlan::parts),
          new Sheet(
              "coil-springs.csv", Family.COIL_SPRING, "coil springs on guides", CoilPlan::parts));

  static final String FITTINGS = "fittings.csv";

  private static final String INVENTED =
      "# Invented: no such range exists, nobody sells these parts, and no maker's figures went in.\n";

  private CatalogGenerator() {}

  public static void main(String[] args) throws IOException {
    Path folder = Path.of("catalog-data");
    Files.createDirectories(folder);
    for (Sheet sheet : SHEETS) {
      Files.writeString(folder.resolve(sheet.file), sheet.text(), StandardCharsets.UTF_8);
    }
    Files.writeString(folder.resolve(FITTINGS), fittings(), StandardCharsets.UTF_8);
  }

  static String fittings() {
    return file(
        "# Staywright sample range: end fittings and brackets.\n",
        FittingRow.COLUMNS,
        FittingPlan.fittings().stream().map(fitting -> FittingRow.of(fitting).cells()).toList());
  }

  private static String file(String title, List<String> columns, List<List<String>> rows) {
    StringBuilder text = new StringBuilder(title).append(INVENTED);
    try (CSVPrinter printer = new CSVPrinter(text, RowFile.FORMAT)) {
      printer.printRecord(columns);
      printer.printRecords(rows);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }
}
