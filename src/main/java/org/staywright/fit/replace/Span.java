package org.staywright.fit.replace;

import java.util.Arrays;

/**
 * Where a quantity lies in 95 of a hundred cases.
 *
 * @param least 2.5 % lie below
 * @param middle half lie below
 * @param most 2.5 % lie above
 */
public record Span(double least, double middle, double most) {

  private static final double TAIL = 0.025;

  static Span of(double[] draws) {
    double[] sorted = draws.clone();
    Arrays.sort(sorted);
    return new Span(at(sorted, TAIL), at(sorted, 0.5), at(sorted, 1 - TAIL));
  }

  private static double at(double[] sorted, double share) {
    return sorted[(int) Math.round(share * (sorted.length - 1))];
  }

  /** As wide as this, about its own middle. */
  public Reading reading() {
    return new Reading((least + most) / 2, (most - least) / 2);
  }

  public boolean holds(double value) {
    return value >= least && value <= most;
  }
}
