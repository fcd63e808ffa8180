package org.staywright.web.field;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.staywright.unit.Unit;

/**
 * What a field showed when its page was made. It comes back beside what was typed, so that a number
 * left as it was keeps every digit, and one typed anew is read in the unit that stood there.
 *
 * @param name of the field
 * @param unit of a plain number in it, null for none
 * @param text in the field
 * @param exact number that the text stands for, in the unit of the field's name
 */
record ShownValue(String name, Unit unit, String text, String exact) {

  /** The field that it travels in. */
  static final String FIELD = "shown";

  private static final String BETWEEN = "|";

  /** Of one field, in the order of its entries. */
  static List<ShownValue> of(String name, Map<String, List<String>> parameters) {
    return parameters.getOrDefault(FIELD, List.of()).stream()
        .filter(text -> text.startsWith(name + BETWEEN))
        .flatMap(text -> read(text).stream())
        .toList();
  }

  private static Optional<ShownValue> read(String text) {
    String[] parts = text.split("\\|", 4);
    return parts.length < 4
        ? Optional.empty()
        : Optional.of(new ShownValue(parts[0], Unit.of(parts[1]).orElse(null), parts[2], parts[3]));
  }

  @Override
  public String toString() {
    String symbol = unit == null ? "" : unit.symbol();
    return String.join(BETWEEN, name, symbol, text, exact);
  }
}
