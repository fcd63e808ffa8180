package org.staywright.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.staywright.unit.Bound;
import org.staywright.unit.Fault;
import org.staywright.unit.Unit;
import org.staywright.unit.Units;

/**
 * One language: its sentences by key and its numbers.
 *
 * <p>The sentence of {@code part.brief} stands under that key in {@code
 * wording/part/part.properties} (German in {@code part_de.properties}), in the notation of {@link
 * MessageFormat}: {@link Topics}. Numbers go in as text made by {@link #number}, so that the
 * pattern never formats them. [mm] in a sentence is the unit that its reader measures lengths in,
 * [5 mm] a length in it.
 */
public final class Wording {

  private static final ResourceBundle.Control NO_FALLBACK =
      ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

  /** Decimals of a metric number that a field in other units still tells apart. */
  private static final int ENTRY_DECIMALS = 2;

  private static final int ENTRY_FIGURES = 4;

  /** In the last decimal shown. */
  private static final double NOISE = 1e-6;

  private static final Pattern BRACKETS =
      Pattern.compile("\\[([−-]?[0-9.,]+ )?(mm/s|N/mm|mm²|mm|N·m|N|kg|J|bar|°C)]");

  private final Locale locale;
  private final Units units;
  private final String subject;

  private Wording(Locale locale, Units units, String subject) {
    this.locale = locale;
    this.units = units;
    this.subject = subject;
  }

  public static Wording of(Locale locale) {
    return of(locale, Units.METRIC);
  }

  public static Wording of(Locale locale, Units units) {
    return new Wording(locale, units, "");
  }

  public static Wording english() {
    return of(Locale.ENGLISH);
  }

  /**
   * The same language in the words of a subject: {@code bench.view.straight-lift} before {@code
   * bench.view}.
   *
   * @param subject code of a mechanism
   */
  public Wording about(String subject) {
    return new Wording(locale, units, subject);
  }

  /** The same language in metric units, for what is quoted in them. */
  public Wording metric() {
    return new Wording(locale, Units.METRIC, subject);
  }

  public Locale locale() {
    return locale;
  }

  public Units units() {
    return units;
  }

  /** True where a comma stands before the decimals. */
  public boolean decimalComma() {
    return DecimalFormatSymbols.getInstance(locale).getDecimalSeparator() == ',';
  }

  /** The sentence of a key, its {0}, {1}… filled in. */
  public String text(String key, Object... values) {
    try {
      String said = said(key);
      String pattern = bundle(said).getString(said);
      return new MessageFormat(inUnits(pattern), locale).format(values);
    } catch (MissingResourceException e) {
      throw new IllegalArgumentException("no text for key " + key, e);
    }
  }

  /** [mm] and [5 mm] in a sentence stand for what the reader's units have in their place. */
  private String inUnits(String pattern) {
    return units == Units.METRIC
        ? BRACKETS.matcher(pattern).replaceAll("$1$2")
        : BRACKETS.matcher(pattern).replaceAll(this::inUnits);
  }

  private String inUnits(MatchResult bracket) {
    Unit unit = Unit.of(bracket.group(2)).orElseThrow();
    if (bracket.group(1) == null) {
      return symbol(unit);
    }
    String number = bracket.group(1).strip().replace('−', '-').replace(',', '.');
    int decimals = Math.max(0, new BigDecimal(number).scale());
    return measure(unit.si(Double.parseDouble(number)), unit, decimals);
  }

  /** True where there is a sentence of a key. */
  public boolean knows(String key) {
    return written(said(key));
  }

  /** The key in the words of the subject, where there are such. */
  private String said(String key) {
    String own = key + '.' + subject;
    return written(own) ? own : key;
  }

  private boolean written(String key) {
    return bundle(key).containsKey(key);
  }

  private ResourceBundle bundle(String key) {
    return ResourceBundle.getBundle(Topics.bundle(key), locale, NO_FALLBACK);
  }

  /** A number with a fixed count of decimals; −0 is written 0. */
  public String number(double value, int decimals) {
    return number(value, decimals, RoundingMode.HALF_UP);
  }

  /**
   * The same rounded another way: up for what is said to be the most, down for what is the least.
   * What arithmetic leaves of a number that ends there is not rounded.
   */
  public String number(double value, int decimals, RoundingMode rounding) {
    double shift = Math.pow(10, decimals);
    double whole = Math.rint(value * shift);
    boolean ends = Math.abs(value * shift - whole) < NOISE;
    NumberFormat format = NumberFormat.getNumberInstance(locale);
    format.setMinimumFractionDigits(decimals);
    format.setMaximumFractionDigits(decimals);
    format.setRoundingMode(ends ? RoundingMode.HALF_UP : rounding);
    format.setGroupingUsed(Math.abs(value) >= 10_000);
    return format.format(value).replaceFirst("^-(0([.,]0*)?)$", "$1").replace('-', '−');
  }

  /** A number with as few decimals as it needs, up to a most. */
  public String shortest(double value, int most) {
    int decimals = most;
    double shift = Math.pow(10, most);
    while (decimals > 0 && Math.rint(value * shift) % 10 == 0) {
      shift /= 10;
      decimals--;
    }
    return number(value, decimals);
  }

  /**
   * How many decimals, from a least on, tell a number in full; the least where two more do not.
   *
   * @param unit metric, null for a plain number
   */
  int decimals(double si, Unit unit, int least) {
    double shown = unit == null ? si : units.instead(unit).of(si);
    for (int decimals = least; decimals <= least + 2; decimals++) {
      double shifted =
          shown * Math.pow(10, unit == null ? decimals : units.decimals(unit, decimals));
      if (Math.abs(shifted - Math.rint(shifted)) < NOISE) {
        return decimals;
      }
    }
    return least;
  }

  /**
   * An SI value with its symbol: "12.5 mm", or what stands for it in the reader's units.
   *
   * @param unit metric
   * @param decimals in the metric unit
   */
  public String quantity(double si, Unit unit, int decimals) {
    return quantity(si, unit, decimals, RoundingMode.HALF_UP);
  }

  /**
   * @param unit metric, null for a plain number
   * @param rounding up for what is said to be the most, down for what is the least
   */
  public String quantity(double si, Unit unit, int decimals, RoundingMode rounding) {
    return unit == null
        ? number(si, decimals, rounding)
        : bare(si, unit, decimals, rounding) + joint(unit) + units.instead(unit).symbol();
  }

  /** The same with as few decimals as it needs, up to a most. */
  public String measure(double si, Unit unit, int most) {
    return shortest(si, unit, most) + joint(unit) + units.instead(unit).symbol();
  }

  /** The number alone, where its unit stands elsewhere: {@link #symbol}. */
  public String bare(double si, Unit unit, int decimals) {
    return bare(si, unit, decimals, RoundingMode.HALF_UP);
  }

  /** The same rounded another way. */
  public String bare(double si, Unit unit, int decimals, RoundingMode rounding) {
    return number(units.instead(unit).of(si), units.decimals(unit, decimals), rounding);
  }

  /** The number alone with as few decimals as it needs. */
  public String shortest(double si, Unit unit, int most) {
    return shortest(units.instead(unit).of(si), units.decimals(unit, most));
  }

  /** Symbol of what is shown for a metric unit. */
  public String symbol(Unit unit) {
    return units.instead(unit).symbol();
  }

  /**
   * A number as a field holds it, without thousands parted.
   *
   * @param number in the metric unit
   * @param unit metric, null for a plain number
   */
  public String entry(BigDecimal number, Unit unit) {
    BigDecimal shown = number;
    if (unit != null && units.instead(unit) != unit) {
      Unit instead = units.instead(unit);
      BigDecimal exact = new BigDecimal(instead.of(unit.si(number.doubleValue())));
      int decimals = units.decimals(unit, ENTRY_DECIMALS);
      int figures = ENTRY_FIGURES - exact.precision() + exact.scale();
      shown = exact.setScale(Math.max(decimals, figures), RoundingMode.HALF_EVEN);
    }
    String plain = shown.stripTrailingZeros().toPlainString();
    return decimalComma() ? plain.replace('.', ',') : plain;
  }

  private static String joint(Unit unit) {
    return unit == Unit.DEGREE ? "" : "\u00a0";
  }

  /** Money with its currency: "14.20 EUR". */
  public String money(BigDecimal amount, String currency) {
    return money(amount) + "\u00a0" + currency;
  }

  /** Money where its currency stands elsewhere. */
  public String money(BigDecimal amount) {
    return decimal(amount, 2, 4);
  }

  /** A decimal number as exact as it is. */
  public String exact(BigDecimal number) {
    return decimal(number, 0, 9);
  }

  private String decimal(BigDecimal number, int least, int most) {
    NumberFormat format = NumberFormat.getNumberInstance(locale);
    format.setMinimumFractionDigits(least);
    format.setMaximumFractionDigits(most);
    return format.format(number).replace('-', '−');
  }

  /** "&gt; 0 and ≤ 2000 kg" in the reader's language and units. */
  public String bound(Bound bound) {
    Unit metric = Unit.of(bound.unit()).orElse(null);
    String symbol = metric == null ? bound.unit() : symbol(metric);
    String low = end(bound.lowOpen() ? "> " : "≥ ", bound.low(), metric);
    String high = end(bound.highOpen() ? "< " : "≤ ", bound.high(), metric);
    String both =
        low.isEmpty() || high.isEmpty() ? low + high : text("fault.bound.both", low, high);
    return symbol.isEmpty() ? both : both + " " + symbol;
  }

  private String end(String sign, double end, Unit unit) {
    return Double.isInfinite(end) ? "" : sign + entry(BigDecimal.valueOf(end), unit);
  }

  /** What is wrong with a number that has a bound, in the reader's language and units. */
  public String fault(Fault fault, Bound bound) {
    Unit unit = Unit.of(bound.unit()).orElse(null);
    Object value =
        fault.value() instanceof Number number
            ? entry(new BigDecimal(number.toString()), unit)
            : fault.value();
    String accepted = fault.bound().equals(bound.text()) ? bound(bound) : fault.bound();
    return fault(new Fault(fault.where(), value, accepted, fault.code()));
  }

  /** What is wrong with an input and how to mend it. */
  public String fault(Fault fault) {
    String value = fault.value() == null ? "" : String.valueOf(fault.value());
    return text("fault." + fault.code(), fault.where(), value, fault.bound());
  }
}
