package org.staywright.document.draw;

/**
 * A scale with ticks at 1, 2 or 5 times a power of ten.
 *
 * @param low first tick
 * @param high last tick
 * @param step between ticks
 */
public record Axis(double low, double high, double step) {

  /** The least axis of whole steps around an interval, with about so many steps. */
  public static Axis around(double low, double high, int steps) {
    double span = high > low ? high - low : Math.max(1, Math.abs(low));
    double step = nice(span / steps);
    double first = Math.floor(low / step + 1e-9) * step;
    double last = Math.ceil(high / step - 1e-9) * step;
    return new Axis(first, last > first ? last : first + step, step);
  }

  /** An axis that ends where the interval does; its ticks lie within. */
  public static Axis within(double low, double high, int steps) {
    return new Axis(low, high, nice((high - low) / steps));
  }

  /** The nearest of 1, 2, 5 times a power of ten that is not below. */
  private static double nice(double rough) {
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    for (double factor : new double[] {1, 2, 5}) {
      if (factor * power >= rough * (1 - 1e-9)) {
        return factor * power;
      }
    }
    return 10 * power;
  }

  double[] ticks() {
    long first = (long) Math.ceil(low / step - 1e-9);
    long last = (long) Math.floor(high / step + 1e-9);
    double[] ticks = new double[(int) (last - first + 1)];
    for (int i = 0; i < ticks.length; i++) {
      ticks[i] = (first + i) * step;
    }
    return ticks;
  }

  /** Decimals that tell the ticks apart. */
  int decimals() {
    return (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  }

  /** Where a value lies between the ends, 0 to 1. */
  double share(double value) {
    return (value - low) / (high - low);
  }
}
