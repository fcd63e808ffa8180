package org.staywright.unit;

import java.math.BigDecimal;

/**
 * The interval a number must lie in.
 *
 * @param low lower end, −∞ for none
 * @param lowOpen whether the lower end itself is refused
 * @param high upper end, +∞ for none
 * @param highOpen whether the upper end itself is refused
 * @param unit symbol of the unit both ends are in, "" for a plain number
 */
public record Bound(double low, boolean lowOpen, double high, boolean highOpen, String unit) {

  /** low ≤ value ≤ high. */
  public static Bound between(double low, double high, String unit) {
    return new Bound(low, false, high, false, unit);
  }

  /** low &lt; value ≤ high. */
  public static Bound above(double low, double high, String unit) {
    return new Bound(low, true, high, false, unit);
  }

  /** True where the value lies inside; NaN never does. */
  public boolean holds(double value) {
    return (lowOpen ? value > low : value >= low) && (highOpen ? value < high : value <= high);
  }

  /** The value, or a refusal that names it. */
  public double require(String where, double value) {
    if (!holds(value)) {
      throw new Refusal(fault(where, value));
    }
    return value;
  }

  public Fault fault(String where, Object value) {
    return new Fault(where, value, text(), "out-of-bounds");
  }

  /** "&gt; 0 and ≤ 2000 kg". */
  public String text() {
    String lower = low == Double.NEGATIVE_INFINITY ? "" : (lowOpen ? "> " : "≥ ") + plain(low);
    String upper = high == Double.POSITIVE_INFINITY ? "" : (highOpen ? "< " : "≤ ") + plain(high);
    String joint = lower.isEmpty() || upper.isEmpty() ? "" : " and ";
    return (lower + joint + upper + (unit.isEmpty() ? "" : " " + unit)).trim();
  }

  private static String plain(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }
}
