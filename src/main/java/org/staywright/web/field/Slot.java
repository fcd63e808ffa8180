package org.staywright.web.field;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One of the numbered slots in which a form has what acts along beside the springs.
 *
 * @param part number of it
 * @param count of equal ones
 * @param frame mount
 * @param moving mount
 */
public record Slot(Input part, Input count, Input frame, Input moving) {

  static final String BESIDE = "beside";

  private static final Pattern SLOT = Pattern.compile(BESIDE + "\\.(\\d)\\.(\\w.*)");

  /** What an empty slot comes with all the same. */
  private static final String COUNT = "count";

  private static final String ONE = "1";

  /** How addresses named it when there was one damper. */
  private static final String ONCE = "damper.";

  static Slot of(FormFields form, int slot) {
    String at = BESIDE + "." + slot + ".";
    return new Slot(
        form.of(at + "partNumber"),
        form.of(at + COUNT),
        form.of(at + "mounts.frameMm"),
        form.of(at + "mounts.movingMm"));
  }

  /** Today's names, so that no old address loses its damper. */
  public static Map<String, List<String>> renamed(Map<String, List<String>> parameters) {
    Map<String, List<String>> renamed = new LinkedHashMap<>();
    parameters.forEach(
        (name, texts) ->
            renamed.put(
                name.startsWith(ONCE) ? BESIDE + ".0." + name.substring(ONCE.length()) : name,
                texts));
    return renamed;
  }

  /** Empty slots go last, so that what is filled counts from the first. */
  public static Typed closedUp(Typed typed) {
    List<String> filled = List.copyOf(numbers(typed.values(), true));
    return new Typed(closedUp(typed.values(), filled), closedUp(typed.texts(), filled));
  }

  private static Map<String, List<String>> closedUp(
      Map<String, List<String>> values, List<String> filled) {
    List<String> order = new ArrayList<>(filled);
    numbers(values, false).stream().filter(slot -> !filled.contains(slot)).forEach(order::add);
    Map<String, List<String>> closed = new LinkedHashMap<>();
    values.forEach(
        (name, texts) -> {
          Matcher slot = SLOT.matcher(name);
          if (!slot.matches()) {
            closed.put(name, texts);
          } else {
            int place = order.indexOf(slot.group(1));
            closed.put(
                BESIDE + "." + place + "." + slot.group(2),
                place < filled.size() ? texts : List.of(""));
          }
        });
    return closed;
  }

  /**
   * Which slots there are.
   *
   * @param filled only those with anything in them
   */
  static TreeSet<String> numbers(Map<String, List<String>> values, boolean filled) {
    TreeSet<String> numbers = new TreeSet<>();
    values.forEach(
        (name, texts) -> {
          Matcher slot = SLOT.matcher(name);
          if (slot.matches() && (!filled || fills(slot.group(2), texts))) {
            numbers.add(slot.group(1));
          }
        });
    return numbers;
  }

  private static boolean fills(String field, List<String> texts) {
    return texts.stream()
        .map(String::strip)
        .anyMatch(text -> !text.isEmpty() && !(field.equals(COUNT) && text.equals(ONE)));
  }
}
