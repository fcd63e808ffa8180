package org.staywright.spring;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Rod and tube as one pinned column of two sections: the load at which it buckles.
 *
 * <p>Euler for the slender, with the section's step (S. P. Timoshenko and J. M. Gere, Theory of
 * Elastic Stability, 2nd ed., §2.14: tan(k₁a₁)/k₁ + tan(k₂a₂)/k₂ = 0); J. B. Johnson's parabola for
 * the stocky.
 *
 * @param rodLength exposed rod with its end fitting, m
 * @param rodInertia second moment of area of the rod, m⁴
 * @param tubeLength tube with its end fitting, m
 * @param tubeInertia second moment of area of the tube's wall, m⁴
 * @param yieldLoad of the weaker section, N
 */
public record SteppedColumn(
    double rodLength, double rodInertia, double tubeLength, double tubeInertia, double yieldLoad) {

  /** Young's modulus of steel, Pa (EN 1993-1-1, 3.2.6). */
  public static final double YOUNG = 210e9;

  /** Yield of a rod of C45+N up to 16 mm and above, Pa (EN 10083-2). */
  private static final double YIELD_THIN = 340e6;

  private static final double YIELD_THICK = 305e6;
  private static final double THICK = 16e-3;

  /** Relative accuracy of the buckling load. */
  private static final double ACCURACY = 1e-10;

  /**
   * The column a spring in a cylinder makes at a length between its mount centres.
   *
   * @param spring dimensions
   * @param length between mount centres, m
   * @param tubeEnd length that the tube's end fitting adds, m
   */
  public static SteppedColumn of(Filled spring, double length, double tubeEnd) {
    Cylinder cylinder = spring.cylinder();
    ThickTube wall = spring.tube();
    double tube = cylinder.compressedLength() + tubeEnd;
    double yield = cylinder.rodDiameter() <= THICK ? YIELD_THIN : YIELD_THICK;
    return new SteppedColumn(
        Math.max(0, length - tube),
        cylinder.rodInertia(),
        Math.min(length, tube),
        wall.inertia(),
        yield * Math.min(cylinder.rodArea(), wall.section()));
  }

  /** The load at which the column fails, N. */
  public double criticalLoad() {
    double euler = eulerLoad();
    return euler <= yieldLoad / 2 ? euler : yieldLoad * (1 - yieldLoad / (4 * euler));
  }

  /** P_E, the least root of tan(k₁a₁)/k₁ + tan(k₂a₂)/k₂ = 0, N. */
  public double eulerLoad() {
    double length = rodLength + tubeLength;
    double low = euler(Math.min(rodInertia, tubeInertia), length);
    double high =
        Math.min(
            rodLength == 0 ? Double.MAX_VALUE : euler(rodInertia, rodLength),
            tubeLength == 0 ? Double.MAX_VALUE : euler(tubeInertia, tubeLength));
    if (rodLength == 0 || tubeLength == 0) {
      return high;
    }
    // Neither section can pass half a wave of its own, and below that there is just one root.
    return new BrentSolver(ACCURACY, ACCURACY * low)
        .solve(200, this::condition, low * (1 - 1e-9), high * (1 + 1e-9));
  }

  private static double euler(double inertia, double length) {
    return Math.PI * Math.PI * YOUNG * inertia / (length * length);
  }

  /** The same condition without its poles: multiplied by both cosines. */
  private double condition(double load) {
    double k1 = Math.sqrt(load / (YOUNG * rodInertia));
    double k2 = Math.sqrt(load / (YOUNG * tubeInertia));
    double u1 = k1 * rodLength;
    double u2 = k2 * tubeLength;
    return Math.sin(u1) * Math.cos(u2) * k2 + Math.sin(u2) * Math.cos(u1) * k1;
  }
}
