package org.staywright.fit.replace;

import org.apache.commons.math3.special.Erf;

/** The normal distribution where it is needed often. */
final class Normal {

  /** Below this the distribution function is taken from its asymptotic series. */
  private static final double DEEP = -15;

  private Normal() {}

  /** Logarithm of the distribution function, far into its lower tail. */
  static double logDistribution(double z) {
    if (z < DEEP) {
      return logTail(z);
    }
    return z <= 0
        ? Math.log(Erf.erfc(-z / Math.sqrt(2)) / 2)
        : Math.log1p(-Erf.erfc(z / Math.sqrt(2)) / 2);
  }

  /**
   * Relative error below 105/z⁸: 5e-8 at −15.
   *
   * <p>Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.12, from memory;
   * checked against published values.
   */
  private static double logTail(double z) {
    double small = 1 / (z * z);
    double series = 1 - small * (1 - 3 * small * (1 - 5 * small));
    return -z * z / 2 - Math.log(-z * Math.sqrt(2 * Math.PI)) + Math.log(series);
  }

  /** Logarithm of a sum of exponentials. */
  static double logSum(double[] logs) {
    double most = Double.NEGATIVE_INFINITY;
    for (double log : logs) {
      most = Math.max(most, log);
    }
    if (most == Double.NEGATIVE_INFINITY) {
      return most;
    }
    double sum = 0;
    for (double log : logs) {
      sum += Math.exp(log - most);
    }
    return most + Math.log(sum);
  }
}
