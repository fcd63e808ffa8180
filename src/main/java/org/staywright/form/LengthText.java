package org.staywright.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.staywright.unit.Unit;

/** Lengths as people type them: "12.5", "12.5 mm", "1/2 in", "1 3/8\"". */
final class LengthText {

  private static final Pattern TYPED =
      Pattern.compile(
          "(?:(\\d+(?:[.,]\\d+)?)(?![\\d/])\\s*)?(?:(\\d+)/([1-9]\\d*)\\s*)?(mm|in|\"|″)");

  private LengthText() {}

  /** The texts of fields in millimetres, those with a unit behind them turned into millimetres. */
  static Map<String, List<String>> inMillimetres(Map<String, List<String>> typed) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    typed.forEach(
        (name, texts) ->
            values.put(
                name,
                name.contains("Mm")
                    ? texts.stream().map(LengthText::millimetres).toList()
                    : texts));
    return values;
  }

  private static String millimetres(String text) {
    Matcher typed = TYPED.matcher(text.strip());
    if (!typed.matches() || typed.group(1) == null && typed.group(2) == null) {
      return text;
    }
    double value =
        typed.group(1) == null ? 0 : Double.parseDouble(typed.group(1).replace(',', '.'));
    if (typed.group(2) != null) {
      value += Double.parseDouble(typed.group(2)) / Double.parseDouble(typed.group(3));
    }
    Unit unit = typed.group(4).equals("mm") ? Unit.MILLIMETRE : Unit.INCH;
    return JsonNumber.of(unit.si(value), Unit.MILLIMETRE).asText();
  }
}
