package org.staywright.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/**
 * A published figure and ours.
 *
 * @param quantity what it is of
 * @param published as printed in the source, digits included
 * @param ours as computed
 * @param unit of both, "" for a plain number
 * @param tolerance largest deviation allowed
 * @param scale what the deviation is counted in
 * @param source of the published figure
 */
public record Check(
    String quantity,
    String published,
    double ours,
    String unit,
    double tolerance,
    Scale scale,
    String source) {

  /** What a deviation is counted in. */
  public enum Scale {
    /** Percent of the published figure. */
    PERCENT,
    /** The unit of the figure itself. */
    ABSOLUTE
  }

  /** A figure to be met within some percent. */
  public static Check percent(
      String quantity, String published, double ours, String unit, double percent, String source) {
    return new Check(quantity, published, ours, unit, percent, Scale.PERCENT, source);
  }

  /** A figure to be met within so many of its own units. */
  public static Check absolute(
      String quantity, String published, double ours, String unit, double most, String source) {
    return new Check(quantity, published, ours, unit, most, Scale.ABSOLUTE, source);
  }

  /**
   * A figure to be met within some percent, or within half of its last printed digit where that is
   * coarser.
   */
  public static Check printed(
      String quantity, String published, double ours, String unit, double percent, String source) {
    BigDecimal value = new BigDecimal(published);
    double half = value.ulp().doubleValue() / 2 / Math.abs(value.doubleValue()) * 100;
    return percent(quantity, published, ours, unit, Math.max(percent, half), source);
  }

  public double deviation() {
    double value = Double.parseDouble(published);
    return scale == Scale.PERCENT ? 100 * (ours - value) / Math.abs(value) : ours - value;
  }

  public boolean holds() {
    return Math.abs(deviation()) <= tolerance;
  }

  /** A row of the report; rounded, so that it reads the same from every machine. */
  public String row() {
    String sign = scale == Scale.PERCENT ? " %" : unit.isEmpty() ? "" : " " + unit;
    String off = String.format(Locale.ROOT, "%+.4f", deviation());
    String cells =
        String.join(
            " | ",
            quantity,
            published,
            plain(ours, 6),
            unit,
            (off.substring(1).equals("0.0000") ? "0" : off) + sign,
            plain(tolerance, 2) + sign);
    return "| " + cells + " |";
  }

  private static String plain(double value, int digits) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits)).stripTrailingZeros();
    boolean readable = Math.abs(value) >= 1e-4 && Math.abs(value) < 1e7;
    return readable ? rounded.toPlainString() : rounded.toString();
  }
}
