package org.staywright.gas;

import static org.staywright.check.Facts.number;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.staywright.check.Check;
import org.staywright.check.Facts;

/** Viscosities against the published ones. */
public final class ViscosityChecks {

  private static final String NITROGEN =
      "E. W. Lemmon, R. T. Jacobsen, Int. J. Thermophysics 25 (2004), Table V, as quoted in the tests"
          + " of CoolProp";

  /** K, mol/L, µPa s. */
  private static final String[][] TABLE = {
    {"100", "0", "6.90349"},
    {"300", "0", "17.8771"},
    {"100", "25", "79.7418"},
    {"200", "10", "21.0810"},
    {"300", "5", "20.7430"}
  };

  private ViscosityChecks() {}

  public static List<Check> all() {
    List<Check> checks = new ArrayList<>();
    for (String[] row : TABLE) {
      double density = Double.parseDouble(row[1]) * 28.01348;
      double ours = NitrogenViscosity.at(Double.parseDouble(row[0]), density) * 1e6;
      String what = "nitrogen at " + row[0] + " K, " + row[1] + " mol/L";
      checks.add(Check.printed(what, row[2], ours, "µPa s", 0.001, NITROGEN));
    }
    checks.add(example("SAE140", "nu(60C)", Oil.between(313.15, 404e-6, 373.15, 28e-6), 333.15));
    checks.add(
        example("VG68 type", "nu(100C)", Oil.between(313.15, 68e-6, 353.15, 14.85e-6), 373.15));
    for (CSVRecord row : Facts.of("viscosity")) {
      if (row.get("oil").equals("ISO VG 22") || row.get("oil").equals("ISO VG 46")) {
        Oil oil = row.get("oil").endsWith("22") ? Oil.VG_22 : Oil.VG_46;
        double ours = oil.kinematicViscosity(313.15) * 1e6;
        checks.add(
            Check.percent(
                row.get("oil") + " at 40 °C",
                row.get("nu_mm2_s"),
                ours,
                "mm²/s",
                0.01,
                Facts.source(row)));
      }
    }
    return checks;
  }

  private static Check example(String name, String quantity, Oil oil, double kelvin) {
    CSVRecord row = Facts.example("viscosity D341", name, quantity);
    return Check.percent(
        "ASTM D341, " + name + ", " + quantity.replace("nu", "ν"),
        row.get("value"),
        oil.kinematicViscosity(kelvin) * 1e6,
        "mm²/s",
        Math.max(0.01, 100 * 0.01 / number(row, "value")),
        Facts.source(row));
  }
}
