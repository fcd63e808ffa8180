package org.staywright.gas;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * An isotherm as a polynomial, for loops over thousands of springs: p = ρ·(c₀ + c₁ρ + … + c₆ρ⁶),
 * fitted to the equation of state over the densities in use.
 */
public final class IsothermFit {

  private static final int DEGREE = 6;
  private static final int POINTS = 40;

  private final double[] coefficient;
  private final double error;

  private IsothermFit(double[] coefficient, double error) {
    this.coefficient = coefficient;
    this.error = error;
  }

  /**
   * @param isotherm what to fit
   * @param lowest lowest density in use, kg/m³
   * @param highest highest density in use, kg/m³
   */
  public static IsothermFit of(Isotherm isotherm, double lowest, double highest) {
    double[][] rows = new double[POINTS][DEGREE + 1];
    double[] target = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      double node = Math.cos(Math.PI * (i + 0.5) / POINTS);
      double density = (lowest + highest) / 2 + (highest - lowest) / 2 * node;
      double specific = isotherm.pressure(density) / density;
      // Columns are scaled by the highest density: the system stays well conditioned.
      double term = 1 / specific;
      for (int k = 0; k <= DEGREE; k++, term *= density / highest) {
        rows[i][k] = term;
      }
      target[i] = 1;
    }
    RealMatrix matrix = new Array2DRowRealMatrix(rows, false);
    double[] c =
        new QRDecomposition(matrix).getSolver().solve(new ArrayRealVector(target, false)).toArray();
    double error = 0;
    for (double fitted : matrix.operate(c)) {
      error = Math.max(error, Math.abs(fitted - 1));
    }
    double scale = 1;
    for (int k = 0; k <= DEGREE; k++, scale *= highest) {
      c[k] /= scale;
    }
    return new IsothermFit(c, error);
  }

  /** c₀…c₆ of p/ρ, SI. */
  public double[] coefficients() {
    return coefficient.clone();
  }

  /** Largest relative error of the pressure at the points of the fit. */
  public double error() {
    return error;
  }

  /** Absolute pressure, Pa. */
  public double pressure(double density) {
    double sum = 0;
    for (int k = DEGREE; k >= 0; k--) {
      sum = sum * density + coefficient[k];
    }
    return sum * density;
  }
}
