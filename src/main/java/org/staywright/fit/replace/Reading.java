package org.staywright.fit.replace;

import java.util.random.RandomGenerator;

/**
 * Something measured, with how far off it may be. SI.
 *
 * @param value as read
 * @param plusMinus 95 % half-width, above 0
 */
public record Reading(double value, double plusMinus) {

  /** ln √(2π). */
  private static final double ROOT_TWO_PI = 0.5 * Math.log(2 * Math.PI);

  /** Standard deviation: half of the half-width. */
  public double sigma() {
    return plusMinus / 2;
  }

  /** The same, off by chance as its half-width has it. */
  Reading drawn(RandomGenerator random) {
    return new Reading(value + sigma() * random.nextGaussian(), plusMinus);
  }

  /** How many standard deviations the reading lies above what it is of. */
  double off(double actual) {
    return (value - actual) / sigma();
  }

  /** Whether another reading of the same lies farther off than both leave open. */
  boolean disagrees(Reading other) {
    return Math.abs(value - other.value) > Math.hypot(plusMinus, other.plusMinus);
  }

  /** Logarithm of the normal density of this reading, were the true value so. */
  double logDensity(double actual) {
    double off = off(actual);
    return -0.5 * off * off - Math.log(sigma()) - ROOT_TWO_PI;
  }
}
