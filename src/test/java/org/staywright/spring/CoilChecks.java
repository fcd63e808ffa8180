package org.staywright.spring;

import java.util.List;
import org.staywright.check.Check;

/** Coil springs against textbook examples. */
public final class CoilChecks {

  private static final double INCH = 0.0254;
  private static final double POUND = 4.4482216152605;
  private static final double PSI = POUND / (INCH * INCH);

  private static final String BHANDARI =
      "Bhandari, Design of Machine Elements, Example %s (a published computation of it)";
  private static final String SHIGLEY =
      "Shigley's Mechanical Engineering Design, Example 10-1 (from memory)";
  private static final String STABLE =
      "Shigley's Mechanical Engineering Design, eq. 10-13 and Table 10-2 (from memory)";

  /** What the ratio of the moduli, 30/11.5 there and 206/81.5 here, makes of the length. */
  private static final double MODULI_PERCENT = 2.5;

  private CoilChecks() {}

  public static List<Check> all() {
    CoilSpring balance = metric(7, 42, 22);
    CoilSpring valve = metric(11, 55, 5);
    CoilSpring music = music();
    double load = 6.46 * POUND;
    return List.of(
        printed(
            "wire 7 mm, D 42 mm, n 22: rate", "14.982902", balance.rate() / 1000, "N/mm", "10.5"),
        printed(
            "wire 11 mm, D 55 mm, n 5: rate", "179.014000", valve.rate() / 1000, "N/mm", "10.2"),
        shigley("music wire 0.037 in, D 0.400 in: C", "10.8", music.index(), ""),
        shigley("K_B, which is EN 13906-1's k", "1.124", music.correction(), ""),
        shigley("n 10.5: rate", "4.13", music.rate() * INCH / POUND, "lbf/in"),
        shigley(
            "stress at 6.46 lbf, corrected",
            "146",
            music.correctedStress(load) / PSI / 1000,
            "kpsi"),
        shigley("deflection at 6.46 lbf", "1.56", load / music.rate() / INCH, "in"),
        stable(
            "longest coil over D that never buckles, ends held parallel (E/G 2.61; ours 2.53)",
            "5.26",
            0.5),
        stable("the same, ends pinned", "2.63", 1),
        stable("the same, one end free", "1.32", 2));
  }

  private static Check printed(
      String what, String value, double ours, String unit, String example) {
    return Check.printed(what, value, ours, unit, 0.001, BHANDARI.formatted(example));
  }

  private static Check shigley(String what, String value, double ours, String unit) {
    return Check.printed(what, value, ours, unit, 0.5, SHIGLEY);
  }

  /** Found by bisection on what the law itself answers. */
  private static Check stable(String what, String value, double seating) {
    double low = 0.1;
    double high = 10;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      boolean buckles =
          Double.isFinite(coil(5e-3, 0.05, 5, 0.05 * middle).bucklingDeflection(seating));
      low = buckles ? low : middle;
      high = buckles ? middle : high;
    }
    return Check.printed(what, value, low, "", MODULI_PERCENT, STABLE);
  }

  private static CoilSpring metric(double wireMm, double coilMm, double coils) {
    return withShear(coil(wireMm / 1000, coilMm / 1000, coils, 0.2), 81_370e6);
  }

  private static CoilSpring music() {
    double wire = 0.037 * INCH;
    return withShear(coil(wire, 0.4 * INCH, 10.5, 0.2), 11.85e6 * PSI);
  }

  private static CoilSpring withShear(CoilSpring coil, double shear) {
    return new CoilSpring(
        coil.rodDiameter(),
        coil.tubeDiameter(),
        coil.wireDiameter(),
        coil.activeCoils(),
        coil.freeLength(),
        shear,
        coil.tensileStrength(),
        coil.stroke(),
        coil.extendedLength(),
        coil.compressedLength(),
        coil.force(),
        coil.friction());
  }

  /** A coil of drawn wire that is hardly loaded. */
  static CoilSpring coil(double wire, double coil, double coils, double free) {
    return new CoilSpring(
        0.3 * coil,
        coil + wire,
        wire,
        coils,
        free,
        CoilSpring.DRAWN_WIRE,
        1500e6,
        0.02,
        free + 0.04,
        free + 0.02,
        20,
        1);
  }
}
