package org.staywright.web.field;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Shape;
import org.staywright.unit.Refusal;
import org.staywright.unit.TypedNumber;
import org.staywright.unit.Unit;
import org.staywright.unit.Units;
import org.staywright.wording.Wording;

/**
 * Fields of a page as they were typed, and as they are meant: numbers in the units of their names,
 * with a point. What cannot be read stays as it is, for its field to say so.
 *
 * @param values as meant
 * @param texts as typed
 */
public record Typed(Map<String, List<String>> values, Map<String, List<String>> texts) {

  private static final Pattern PLAIN = Pattern.compile("[+-]?\\d+(?:\\.\\d+)?(?:[eE]\\d+)?");

  /** Digits that JSON keeps. */
  private static final MathContext FIGURES = new MathContext(15);

  /**
   * What a shape knows, in the order of the names, so that one job has one address; whatever else
   * an address or a form carries is left out.
   */
  public static Typed of(Shape shape, Map<String, List<String>> parameters, Wording wording) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    Map<String, List<String>> texts = new LinkedHashMap<>();
    new TreeMap<>(parameters)
        .forEach(
            (name, typed) ->
                shape
                    .field(name)
                    .ifPresent(
                        field -> {
                          texts.put(name, List.copyOf(typed));
                          List<ShownValue> shown = ShownValue.of(name, parameters);
                          values.put(
                              name, meant(field.kind(), typed, shown, wording.decimalComma()));
                        }));
    return new Typed(values, texts);
  }

  private static List<String> meant(
      Kind kind, List<String> typed, List<ShownValue> shown, boolean decimalComma) {
    Kind entry = kind instanceof Kind.Many many ? many.of() : kind;
    if (kind instanceof Kind.Many && entry instanceof Shape row && !shown.isEmpty()) {
      Units units = Units.of(shown.get(0).text()).orElse(Units.METRIC);
      return List.of(TypedTable.meant(row, String.join("\n", typed), units));
    }
    boolean number = entry instanceof Kind.Amount || entry instanceof Kind.Whole;
    if (!number) {
      return List.copyOf(typed);
    }
    Unit unit = entry instanceof Kind.Amount amount ? amount.unit() : null;
    List<String> meant = new ArrayList<>();
    for (int i = 0; i < typed.size(); i++) {
      String text = typed.get(i).strip();
      ShownValue was = i < shown.size() ? shown.get(i) : new ShownValue("", unit, "", "");
      boolean untouched = !was.exact().isEmpty() && text.equals(was.text());
      meant.add(untouched ? was.exact() : meant(text, unit, was.unit(), decimalComma));
    }
    return meant;
  }

  private static String meant(String text, Unit unit, Unit plain, boolean decimalComma) {
    if (text.isEmpty()) {
      return text;
    }
    try {
      Unit own =
          unit == null || plain == null || plain.dimension() != unit.dimension() ? unit : plain;
      boolean asItIs = own == unit && PLAIN.matcher(text).matches();
      return asItIs ? text : plain(TypedNumber.read(text, unit, own, decimalComma));
    } catch (Refusal unread) {
      return text;
    }
  }

  private static String plain(BigDecimal number) {
    BigDecimal short15 = number.round(FIGURES).stripTrailingZeros();
    return short15.scale() <= 0 && short15.precision() - short15.scale() < 20
        ? short15.toPlainString()
        : short15.toString();
  }
}
