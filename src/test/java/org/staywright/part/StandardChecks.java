package org.staywright.part;

import static org.staywright.check.Facts.number;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.staywright.check.Check;
import org.staywright.check.Facts;

/** The standards' tables the range is built on, recomputed by the standards' own formulas. */
public final class StandardChecks {

  /** Coarsest rounding in the basic series of ISO 3. */
  private static final double ROUNDING_PERCENT = 1.3;

  private StandardChecks() {}

  /** Basic series R20 against 10^(i/20). */
  public static List<Check> preferredNumbers() {
    return Facts.of("preferred-numbers").stream()
        .filter(row -> row.get("series").equals("R20"))
        .map(
            row ->
                Check.percent(
                    "R20, i = " + row.get("index"),
                    row.get("value"),
                    Math.pow(10, number(row, "index") / 20),
                    "",
                    ROUNDING_PERCENT,
                    Facts.source(row)))
        .toList();
  }

  /** Stress areas: π/4·((d₂ + d₃)/2)², with the flank and root diameters of the basic profile. */
  public static List<Check> threads() {
    List<Check> checks = new ArrayList<>();
    for (CSVRecord row : Facts.of("threads")) {
      double d = Double.parseDouble(row.get("thread").substring(1));
      double height = Math.sqrt(3) / 2 * number(row, "pitch_mm");
      double flank = d - 2 * 3.0 / 8 * height;
      double root = d - 2 * 17.0 / 24 * height;
      double area = Math.PI / 4 * Math.pow((flank + root) / 2, 2);
      String thread = row.get("thread");
      String source = "ISO 898-1 tables; formula ISO 898-1, profile ISO 68-1, ISO 724";
      checks.add(Check.printed(thread + ": d₂", row.get("d2_mm"), flank, "mm", 0.01, source));
      checks.add(Check.printed(thread + ": d₃", row.get("d3_mm"), root, "mm", 0.01, source));
      checks.add(
          Check.printed(thread + ": A_s", row.get("As_table_mm2"), area, "mm²", 0.01, source));
    }
    return checks;
  }
}
