package org.staywright.spring;

import static org.staywright.spring.SteppedColumn.YOUNG;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.staywright.check.Check;
import org.staywright.check.Facts;

/** Buckling and thick tubes against textbook examples. */
public final class StrengthChecks {

  private static final double INCH = 0.0254;
  private static final double KIP = 4448.2216152605;
  private static final double KSI = KIP / (INCH * INCH);

  /** Remembered values are met this well or better; SteppedColumnTest is the sharper check. */
  private static final double REMEMBERED_PERCENT = 1;

  private StrengthChecks() {}

  /** One section is two sections of one inertia; other ends are a column of another length. */
  public static List<Check> buckling() {
    double inertia = Math.PI / 64 * (Math.pow(0.040, 4) - Math.pow(0.036, 4));
    List<Check> checks = new ArrayList<>();
    checks.add(euler("pinned-pinned", inertia, 1.2));
    checks.add(euler("fixed-free", inertia, 2 * 1.2));
    checks.add(euler("fixed-fixed", inertia, 1.2 / 2));
    checks.add(
        faires(
            "rod that fails at 3 × 10 kip, Le = 25 in: D",
            Facts.example("buckling Johnson", "round rod Le=25 in", "D"),
            diameter(25, 30, 48)));
    checks.add(
        faires(
            "rod that fails at 3 × 10 kip, Le = 50 in: D",
            Facts.example("buckling Euler", "round rod Le=50 in", "D"),
            diameter(50, 30, 48)));
    checks.add(
        faires(
            "slenderness where Johnson's parabola meets Euler, S_y = 150 ksi",
            Facts.example("buckling transition", "slenderness at Sy/2", "(Le/k)c"),
            transition()));
    return checks;
  }

  /** Two sections, pinned: factor on the weaker section's Euler load. */
  public static List<Check> stepped() {
    String source =
        "Roark's Formulas for Stress and Strain, Table 15.1 case 1b, P₂ = 0 (from memory; finite"
            + " elements in SteppedColumnTest agree with us within 0.01 %)";
    String[][] table = {
      {"1.5", "1.010", "1.065", "1.180", "1.357", "1.479"},
      {"2", "1.014", "1.098", "1.297", "1.633", "1.940"},
    };
    List<Check> checks = new ArrayList<>();
    for (String[] row : table) {
      double stiffer = Double.parseDouble(row[0]);
      for (int sixths = 1; sixths <= 5; sixths++) {
        String what = "I₂/I₁ = " + row[0] + ", a/l = " + sixths + "/6: P/P₁";
        double load = column(1 - sixths / 6.0, 1e-9, sixths / 6.0, stiffer * 1e-9).eulerLoad();
        double ours = load / (Math.PI * Math.PI * YOUNG * 1e-9);
        checks.add(Check.printed(what, row[sixths], ours, "", REMEMBERED_PERCENT, source));
      }
    }
    return checks;
  }

  /** Lamé's equations. */
  public static List<Check> tubes() {
    ThickTube tube = new ThickTube(0.040, 0.060);
    ThickTube other = new ThickTube(0.060, 0.100);
    ThickTube third = new ThickTube(0.100, 0.150);
    return List.of(
        lame(
            "40/60 mm, 120/40 MPa: ",
            "internal+external pressure",
            "hoop at r=40",
            tube.hoop(120e6, 40e6, 0.040)),
        lame("40/60 mm, 120/40 MPa: ", "", "hoop at r=60", tube.hoop(120e6, 40e6, 0.060)),
        lame("40/60 mm, 120/40 MPa: ", "", "hoop at r=50", tube.hoop(120e6, 40e6, 0.050)),
        lame(
            "40/60 mm, 120/40 MPa: ",
            "",
            "radial (compressive) at r=50",
            -tube.radial(120e6, 40e6, 0.050)),
        lame(
            "40/60 mm, 120/40 MPa: ",
            "",
            "constant a (=axial, closed ends)",
            tube.axial(120e6, 40e6)),
        lame("60/100 mm, 20/5 MPa: ", "60/100 mm closed", "axial", other.axial(20e6, 5e6)),
        lame("100/150 mm, 60/30 MPa: ", "100/150 mm radii", "axial", third.axial(60e6, 30e6)));
  }

  private static Check euler(String ends, double inertia, double length) {
    CSVRecord row = Facts.example("buckling Euler", "tube " + ends, "Pcr");
    double load = column(0.4 * length, inertia, 0.6 * length, inertia).eulerLoad();
    String what = "tube 40/36 mm, 1.2 m, " + ends + ": P_cr";
    return Check.printed(what, row.get("value"), load / 1000, "kN", 0.01, Facts.source(row));
  }

  private static Check faires(String what, CSVRecord row, double ours) {
    String unit = row.get("unit").equals("-") ? "" : row.get("unit");
    return Check.printed(what, row.get("value"), ours, unit, 0.01, Facts.source(row));
  }

  private static Check lame(String what, String name, String quantity, double pascal) {
    CSVRecord row = Facts.example("Lame", name, quantity);
    return Check.printed(
        what + quantity, row.get("value"), pascal / 1e6, "MPa", 0.01, Facts.source(row));
  }

  /** The diameter whose critical load is the one asked for, by bisection, in. */
  private static double diameter(double lengthInch, double loadKip, double yieldKsi) {
    double low = 0.1;
    double high = 10;
    for (int i = 0; i < 80; i++) {
      double middle = (low + high) / 2;
      if (round(middle, lengthInch, yieldKsi).criticalLoad() < loadKip * KIP) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Le/k at which the Euler load is half the yield load. */
  private static double transition() {
    double low = 1;
    double high = 1000;
    for (int i = 0; i < 80; i++) {
      double middle = (low + high) / 2;
      SteppedColumn rod = round(1, middle / 4, 150);
      if (rod.eulerLoad() > rod.yieldLoad() / 2) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** A round rod of the book's steel, E = 30e3 ksi: its inertia is scaled to our modulus. */
  private static SteppedColumn round(double diameterInch, double lengthInch, double yieldKsi) {
    double diameter = diameterInch * INCH;
    double inertia = Math.PI / 64 * Math.pow(diameter, 4) * 30e3 * KSI / YOUNG;
    double yield = yieldKsi * KSI * Math.PI / 4 * diameter * diameter;
    double half = lengthInch * INCH / 2;
    return new SteppedColumn(half, inertia, half, inertia, yield);
  }

  private static SteppedColumn column(double rod, double inertia, double tube, double stiffer) {
    return new SteppedColumn(rod, inertia, tube, stiffer, Double.MAX_VALUE);
  }
}
