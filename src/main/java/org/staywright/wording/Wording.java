package org.staywright.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import org.staywright.unit.Fault;
import org.staywright.unit.Unit;

/**
 * One language: its sentences by key and its numbers.
 *
 * <p>The sentence of {@code fault.missing} stands under that key in {@code
 * wording/fault.properties} (German in {@code fault_de.properties}), in the notation of {@link
 * MessageFormat}. Numbers go in as text made by {@link #number}, so that the pattern never formats
 * them.
 */
public final class Wording {

  private static final ResourceBundle.Control NO_FALLBACK =
      ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

  private final Locale locale;
  private final String subject;

  private Wording(Locale locale, String subject) {
    this.locale = locale;
    this.subject = subject;
  }

  public static Wording of(Locale locale) {
    return new Wording(locale, "");
  }

  public static Wording english() {
    return of(Locale.ENGLISH);
  }

  /**
   * The same language in the words of a subject: {@code page.view.straight-lift} before {@code
   * page.view} where both are there.
   *
   * @param subject code of a mechanism
   */
  public Wording about(String subject) {
    return new Wording(locale, subject);
  }

  public Locale locale() {
    return locale;
  }

  /** The sentence of a key, its {0}, {1}… filled in. */
  public String text(String key, Object... values) {
    try {
      ResourceBundle bundle = bundle(key);
      String own = key + '.' + subject;
      String pattern = bundle.getString(bundle.containsKey(own) ? own : key);
      return new MessageFormat(pattern, locale).format(values);
    } catch (MissingResourceException e) {
      throw new IllegalArgumentException("no text for key " + key, e);
    }
  }

  /** True where there is a sentence of a key. */
  public boolean knows(String key) {
    return bundle(key).containsKey(key);
  }

  private ResourceBundle bundle(String key) {
    String topic = "wording." + key.substring(0, key.indexOf('.'));
    return ResourceBundle.getBundle(topic, locale, NO_FALLBACK);
  }

  /** A number with a fixed count of decimals; −0 is written 0. */
  public String number(double value, int decimals) {
    NumberFormat format = NumberFormat.getNumberInstance(locale);
    format.setMinimumFractionDigits(decimals);
    format.setMaximumFractionDigits(decimals);
    format.setRoundingMode(RoundingMode.HALF_UP);
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

  /** An SI value in a unit, with its symbol: "12.5 mm". */
  public String quantity(double si, Unit unit, int decimals) {
    String joint = unit == Unit.DEGREE ? "" : "\u00a0";
    return number(unit.of(si), decimals) + joint + unit.symbol();
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

  /** What is wrong with an input and how to mend it. */
  public String fault(Fault fault) {
    String value = fault.value() == null ? "" : String.valueOf(fault.value());
    return text("fault." + fault.code(), fault.where(), value, fault.bound());
  }
}
