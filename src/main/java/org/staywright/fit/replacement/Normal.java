package org.staywright.fit.replacement;

/** The normal distribution where it is needed often. */
final class Normal {

  /** Chebyshev fit of erfc, ascending powers: error below 1.2e-7 of the value everywhere. */
  private static final double[] FIT = {
    -1.26551223,
    1.00002368,
    0.37409196,
    0.09678418,
    -0.18628806,
    0.27886807,
    -1.13520398,
    1.48851587,
    -0.82215223,
    0.17087277
  };

  private Normal() {}

  /**
   * Logarithm of the distribution function, far into its lower tail.
   *
   * <p>Source: W. H. Press et al., Numerical Recipes, 2nd ed., section 6.2, from memory; checked
   * against Commons Math.
   */
  static double logDistribution(double z) {
    double x = Math.abs(z) / Math.sqrt(2);
    double t = 1 / (1 + 0.5 * x);
    double fit = 0;
    for (int i = FIT.length - 1; i >= 0; i--) {
      fit = fit * t + FIT[i];
    }
    double log = Math.log(t / 2) - x * x + fit;
    return z <= 0 ? log : Math.log1p(-Math.exp(log));
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
