package org.staywright.unit;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.math3.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * A number as people type it: "16 in", "0,5 m", "1 3/8\"", "5'6\"", "12+8", "3*40 mm", "(60+8) °F".
 *
 * <p>A sum or product without any unit is in the field's unit; one unit behind it all is the unit
 * of all of it; else every part of a sum has its own. Nothing is rounded on the way.
 */
public final class TypedNumber {

  /** No number anyone means is longer. */
  private static final int LONGEST = 60;

  /** Decimals of a result: more than a double tells apart. */
  private static final int DECIMALS = 340;

  private static final int FIGURES = 25;

  private static final Map<Character, String> VULGAR =
      Map.of('½', "1/2", '¼', "1/4", '¾', "3/4", '⅛', "1/8", '⅜', "3/8", '⅝', "5/8", '⅞', "7/8");

  /** "1-3/8 in", one and three eighths where inches are usual. */
  private static final Pattern DASHED =
      Pattern.compile("(?<![\\d.,])(\\d+)-(\\d+/\\d+)(?=\\s*(?:in\\b|inch|\"|″|zoll))");

  private final String typed;
  private final String text;
  private final @Nullable Unit wanted;
  private final Unit plain;
  private final boolean decimalComma;
  private int at;

  private TypedNumber(String typed, @Nullable Unit wanted, Unit plain, boolean decimalComma) {
    this.typed = typed;
    this.wanted = wanted;
    this.decimalComma = decimalComma;
    String tidy = tidy(typed);
    Optional<String> last = lastUnit(tidy);
    this.text = last.map(way -> tidy.substring(0, tidy.length() - way.length())).orElse(tidy);
    this.plain = last.map(this::meant).orElse(plain);
  }

  /**
   * Reads a text.
   *
   * @param wanted unit of the answer, null for a plain number, which takes no unit
   * @param plain unit of a number without one, null for a plain number
   * @param decimalComma true where "1,234" is a little more than one; else it is refused, as it
   *     might as well be a thousand
   * @return the number in the unit wanted
   * @throws Refusal with a fault that stands nowhere yet
   */
  public static BigDecimal read(
      String typed, @Nullable Unit wanted, Unit plain, boolean decimalComma) {
    if (typed.length() > LONGEST) {
      throw new Refusal(new Fault("", typed, "≤ " + LONGEST, "too-long"));
    }
    return new TypedNumber(typed, wanted, plain, decimalComma).read();
  }

  /** A decimal number as a fraction. */
  public static BigFraction fraction(BigDecimal number) {
    BigFraction whole = new BigFraction(number.unscaledValue());
    BigInteger ten = BigInteger.TEN.pow(Math.abs(number.scale()));
    return number.scale() > 0 ? whole.divide(ten) : whole.multiply(ten);
  }

  private BigDecimal read() {
    Value all = sum();
    if (at < text.length()) {
      throw unreadable();
    }
    BigFraction result = all.unit() || wanted == null ? all.size() : plain.to(wanted, all.size());
    BigDecimal exact = result.bigDecimalValue(DECIMALS, RoundingMode.HALF_EVEN.ordinal());
    return exact.round(new MathContext(FIGURES)).stripTrailingZeros();
  }

  /**
   * @param size in the unit wanted where it has one
   * @param unit whether it has one
   */
  private record Value(BigFraction size, boolean unit) {}

  private Value sum() {
    Value sum = product();
    for (char sign = next(); sign == '+' || sign == '-'; sign = next()) {
      at++;
      Value term = product();
      if (term.unit() != sum.unit()) {
        throw new Refusal(new Fault("", typed, symbols(), "unit-on-one-part"));
      }
      BigFraction more = sign == '+' ? term.size() : term.size().negate();
      sum = new Value(sum.size().add(more), sum.unit());
    }
    return sum;
  }

  private Value product() {
    Value product = factor();
    for (char sign = next(); sign == '*' || sign == '/'; sign = next()) {
      at++;
      Value by = factor();
      boolean over = sign == '/';
      if (over && by.size().equals(BigFraction.ZERO)) {
        throw unreadable();
      }
      if (by.unit() && (over || product.unit())) {
        throw wrongDimension();
      }
      BigFraction size =
          over ? product.size().divide(by.size()) : product.size().multiply(by.size());
      product = new Value(size, product.unit() || by.unit());
    }
    return product;
  }

  private Value factor() {
    char sign = next();
    if (sign == '-' || sign == '+') {
      at++;
      Value value = factor();
      return sign == '-' ? new Value(value.size().negate(), value.unit()) : value;
    }
    if (sign == '(') {
      at++;
      Value inside = sum();
      if (next() != ')') {
        throw unreadable();
      }
      at++;
      return inside;
    }
    Value quantity = quantity();
    // Feet with inches behind them, pounds with ounces.
    while (quantity.unit() && Character.isDigit(next())) {
      Value rest = quantity();
      if (!rest.unit()) {
        throw new Refusal(new Fault("", typed, symbols(), "unit-on-one-part"));
      }
      quantity = new Value(quantity.size().add(rest.size()), true);
    }
    return quantity;
  }

  private Value quantity() {
    BigFraction number = mixed();
    next();
    Optional<String> way = Spelling.at(text, at);
    if (way.isEmpty()) {
      return new Value(number, false);
    }
    Unit unit = meant(way.get());
    // A sum of temperatures has no meaning: their zero is no nothing.
    if (!unit.startsAtZero()) {
      throw unreadable();
    }
    at += way.get().length();
    return new Value(unit.to(taken(), number), true);
  }

  /** A number, a fraction or both. */
  private BigFraction mixed() {
    Matcher fraction = ahead("(\\d+)/([1-9]\\d*)(?![\\d.,])");
    if (fraction.lookingAt()) {
      return take(fraction);
    }
    Matcher number = ahead("(?:\\d+(?:[.,]\\d+)*|[.,]\\d+)(?:[eE][+-]?\\d{1,3}(?!\\d))?");
    if (!number.lookingAt()) {
      throw unreadable();
    }
    at = number.end();
    BigFraction whole = fraction(decimal(number.group()));
    Matcher rest = ahead("\\s+(\\d+)/([1-9]\\d*)(?![\\d.,])");
    return rest.lookingAt() ? whole.add(take(rest)) : whole;
  }

  private BigFraction take(Matcher fraction) {
    at = fraction.end();
    return new BigFraction(new BigInteger(fraction.group(1)), new BigInteger(fraction.group(2)));
  }

  /** The last of two kinds of marks is the decimal one, the others part thousands. */
  private BigDecimal decimal(String number) {
    int last = Math.max(number.lastIndexOf('.'), number.lastIndexOf(','));
    if (last < 0) {
      return new BigDecimal(number);
    }
    char mark = number.charAt(last);
    String before = number.substring(0, last);
    String after = number.substring(last + 1);
    if (before.indexOf(mark) >= 0) {
      // The same mark twice parts thousands throughout.
      return new BigDecimal(thousands(number, mark));
    }
    if (mark == ',' && !decimalComma && before.matches("[1-9]\\d{0,2}") && after.length() == 3) {
      String ways = before + after + " | " + before + "." + after;
      throw new Refusal(new Fault("", typed, ways, "comma-of-two-meanings"));
    }
    return new BigDecimal(thousands(before, mark == '.' ? ',' : '.') + "." + after);
  }

  private String thousands(String number, char mark) {
    String quoted = Pattern.quote(String.valueOf(mark));
    if (number.indexOf(mark) >= 0 && !number.matches("\\d{1,3}(" + quoted + "\\d{3})+")) {
      throw unreadable();
    }
    return number.replace(String.valueOf(mark), "");
  }

  /** The next character that is no space, 0 at the end. */
  private char next() {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
    return at < text.length() ? text.charAt(at) : 0;
  }

  private Matcher ahead(String pattern) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    return matcher.region(at, text.length()).useTransparentBounds(true);
  }

  /** The unit of the answer, where a unit may stand at all. */
  private Unit taken() {
    if (wanted == null) {
      throw new Refusal(new Fault("", typed, "", "unit-not-wanted"));
    }
    return wanted;
  }

  private Unit meant(String way) {
    Unit into = taken();
    Unit unit = Spelling.meant(way, into.dimension());
    if (unit == null || unit.dimension() != into.dimension()) {
      throw wrongDimension();
    }
    return unit;
  }

  private String symbols() {
    return wanted == null ? "" : Spelling.of(wanted.dimension());
  }

  private Refusal wrongDimension() {
    return new Refusal(new Fault("", typed, symbols(), "wrong-dimension"));
  }

  private Refusal unreadable() {
    return new Refusal(new Fault("", typed, symbols(), "not-a-quantity"));
  }

  /** The one unit of a text where it stands at its very end. */
  private static Optional<String> lastUnit(String text) {
    String found = null;
    for (int i = 0; i < text.length(); i++) {
      Optional<String> way = Spelling.at(text, i);
      if (way.isPresent()) {
        if (found != null) {
          return Optional.empty();
        }
        found = way.get();
        i += found.length() - 1;
      }
    }
    String last = found;
    return Optional.ofNullable(last)
        .filter(
            way -> text.regionMatches(true, text.length() - way.length(), way, 0, way.length()));
  }

  /** One way of writing what can be written in several. */
  private static String tidy(String typed) {
    StringBuilder tidy = new StringBuilder();
    for (int i = 0; i < typed.length(); i++) {
      char each = typed.charAt(i);
      if (VULGAR.containsKey(each)) {
        tidy.append(' ').append(VULGAR.get(each));
      } else if (Character.isWhitespace(each) || Character.isSpaceChar(each)) {
        tidy.append(' ');
      } else {
        tidy.append(each);
      }
    }
    String even =
        tidy.toString()
            .replace('−', '-')
            .replace('–', '-')
            .replace('×', '*')
            .replace('÷', '/')
            .replace('⁄', '/')
            .replaceAll("(?<=\\d) ?[xX] ?(?=\\d)", "*")
            .replaceAll("(?<=['′’])-(?=\\d)", " ")
            .strip();
    return DASHED.matcher(even).replaceAll("$1 $2");
  }
}
