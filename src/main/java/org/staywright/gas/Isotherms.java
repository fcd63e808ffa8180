package org.staywright.gas;

/**
 * Isotherms between two temperatures for many random states: polynomials over density at a few
 * Chebyshev temperatures, and polynomials between those. The tests hold it within 2e-4 of the
 * equation of state over the densities in use.
 */
public final class Isotherms {

  private static final int NODES = 6;

  private final double[] kelvin = new double[NODES];
  private final double[][] coefficient = new double[NODES][];

  /**
   * @param coldest K
   * @param hottest K
   * @param lowest density in use, kg/m³
   * @param highest density in use, kg/m³
   */
  public Isotherms(double coldest, double hottest, double lowest, double highest) {
    for (int i = 0; i < NODES; i++) {
      double share = (1 - Math.cos(Math.PI * i / (NODES - 1))) / 2;
      kelvin[i] = coldest + (hottest - coldest) * share;
      coefficient[i] = IsothermFit.of(Isotherm.at(kelvin[i]), lowest, highest).coefficients();
    }
  }

  /** c₀…c₆ of p = ρ·(c₀ + c₁ρ + …) at one temperature, SI. */
  public double[] at(double temperature) {
    double[] blended = new double[coefficient[0].length];
    double sum = 0;
    for (int i = 0; i < NODES; i++) {
      double distance = temperature - kelvin[i];
      if (distance == 0) {
        return coefficient[i].clone();
      }
      double weight = (i % 2 == 0 ? 1 : -1) * (i == 0 || i == NODES - 1 ? 0.5 : 1) / distance;
      sum += weight;
      for (int k = 0; k < blended.length; k++) {
        blended[k] += weight * coefficient[i][k];
      }
    }
    for (int k = 0; k < blended.length; k++) {
      blended[k] /= sum;
    }
    return blended;
  }

  /** Absolute pressure by such coefficients, Pa. */
  public static double pressure(double[] coefficients, double density) {
    double sum = 0;
    for (int k = coefficients.length - 1; k >= 0; k--) {
      sum = sum * density + coefficients[k];
    }
    return sum * density;
  }
}
