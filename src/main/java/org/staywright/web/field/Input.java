package org.staywright.web.field;

import java.util.List;

/**
 * One field of a form as a page shows it.
 *
 * @param name in the query
 * @param label in words
 * @param values as typed; none where the field is empty
 * @param unit symbol, "" for none
 * @param keyboard that a touch screen should offer
 * @param fault what is wrong and how to mend it, "" where nothing is
 * @param options to choose from, none for a free entry
 * @param parts of a field made of several
 * @param shown what comes back beside it, for {@link ShownValue}
 * @param read how what was typed was understood, "" where it stands there as it was typed
 */
public record Input(
    String name,
    String label,
    List<String> values,
    String unit,
    String keyboard,
    String fault,
    List<Option> options,
    List<Input> parts,
    List<String> shown,
    String read) {

  /** One that is filled in with nothing but text. */
  public static Input plain(String name, String label, List<String> values, String fault) {
    return new Input(name, label, values, "", "text", fault, List.of(), List.of(), List.of(), "");
  }

  /**
   * @param value sent
   * @param label in words
   * @param chosen as of now
   */
  public record Option(String value, String label, boolean chosen) {}

  public Input {
    values = List.copyOf(values);
    options = List.copyOf(options);
    parts = List.copyOf(parts);
    shown = List.copyOf(shown);
  }

  public String value() {
    return values.isEmpty() ? "" : values.get(0);
  }

  /** Of two values the second; the only one of one. */
  public String last() {
    return values.isEmpty() ? "" : values.get(values.size() - 1);
  }

  public boolean wrong() {
    return !fault.isEmpty();
  }

  /** Whether one number is typed into it. */
  public boolean number() {
    boolean measured = !unit.isEmpty() || !keyboard.equals("text");
    return measured && options.isEmpty() && parts.isEmpty();
  }

  /** The last step of the name: x or y of a point. */
  public String axis() {
    return name.substring(name.lastIndexOf('.') + 1);
  }

  /** For elements and what points at them. */
  public String id() {
    return "f-" + name.replace('.', '-');
  }
}
