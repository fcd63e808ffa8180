package org.staywright.catalog;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVPrinter;
import org.staywright.form.FittingRow;
import org.staywright.form.PartRow;
import org.staywright.form.RowFile;
import org.staywright.part.Family;

/** Writes the sample range into {@code catalog-data/}; always the same files. */
public final class CatalogGenerator {

  static final String SPRINGS = "gas-springs.csv";
  static final String FITTINGS = "fittings.csv";

  private static final String INVENTED =
      "# Invented: no such range exists, nobody sells these parts, and no maker's figures went in.\n";

  private CatalogGenerator() {}

  public static void main(String[] args) throws IOException {
    Path folder = Path.of("catalog-data");
    Files.createDirectories(folder);
    Files.writeString(folder.resolve(SPRINGS), springs(), StandardCharsets.UTF_8);
    Files.writeString(folder.resolve(FITTINGS), fittings(), StandardCharsets.UTF_8);
  }

  static String springs() {
    List<String> columns = PartRow.columns(Family.GAS_SPRING);
    return file(
        "# Staywright sample range: open gas springs. Lengths without end fittings.\n",
        columns,
        SpringPlan.parts().stream().map(part -> PartRow.of(part).cells(columns)).toList());
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
