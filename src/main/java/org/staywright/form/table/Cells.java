package org.staywright.form.table;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.staywright.part.Coded;
import org.staywright.part.PartNumber;
import org.staywright.unit.Bound;
import org.staywright.unit.Fault;

/**
 * The cells of one row by column, read one after the other; whatever is wrong with them is
 * collected. A reader gets null, NaN or 0 for a cell at fault, and asks at the end.
 */
public final class Cells {

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d{1,20}(\\.\\d{0,20})?|\\.\\d{1,20})([eE][+-]?\\d{1,3})?");
  private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}");
  private static final Pattern COMMA = Pattern.compile("[+-]?\\d+,\\d+");
  private static final Pattern WITH_UNIT =
      Pattern.compile(
          "[+-]?\\d+([.,]\\d+)?\\s*(mm|cm|m|in|inch|ft|\"|″|'|k?N|lbf|kgf|k?g|lb|oz|ml|L|cm³|in³|bar|MPa|psi|°?[CF]|°|%)");
  private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
  private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}");
  private static final int LONGEST_TEXT = 200;

  private final UnaryOperator<String> cell;
  private final List<Fault> faults = new ArrayList<>();

  /**
   * @param cell text of a column, null or blank where nothing was given
   */
  public Cells(UnaryOperator<String> cell) {
    this.cell = cell;
  }

  /** All that was wrong so far. */
  public List<Fault> faults() {
    return List.copyOf(faults);
  }

  public void fault(Fault fault) {
    faults.add(fault);
  }

  public boolean blank(String column) {
    String text = cell.apply(column);
    return text == null || text.isBlank();
  }

  /** The text of a cell, null where nothing was given. */
  public String optional(String column) {
    return optional(column, LONGEST_TEXT);
  }

  public String optional(String column, int longest) {
    String text = cell.apply(column);
    if (text == null || text.isBlank()) {
      return null;
    }
    text = text.strip();
    if (text.length() > longest) {
      faults.add(new Fault(column, clip(text), "≤ " + longest, "too-long"));
      return null;
    }
    if (CONTROL.matcher(text).find()) {
      faults.add(new Fault(column, clip(text), "", "control-character"));
      return null;
    }
    return text;
  }

  public String required(String column, String expected) {
    String text = optional(column);
    if (text == null) {
      missing(column, expected);
    }
    return text;
  }

  public String partNumber(String column) {
    String expected = PartNumber.PATTERN.pattern();
    String text = required(column, expected);
    if (text != null && !PartNumber.PATTERN.matcher(text).matches()) {
      faults.add(new Fault(column, clip(text), expected, "not-of-the-form"));
    }
    return text;
  }

  /** A cell that has no meaning in this row. */
  public void empty(String column, String reason) {
    String text = optional(column);
    if (text != null) {
      faults.add(new Fault(column, clip(text), reason, "does-not-apply"));
    }
  }

  public double number(NumberColumn number) {
    String column = number.column();
    Bound bound = number.bound();
    String text = optional(column);
    if (text == null) {
      if (Double.isNaN(number.whenEmpty())) {
        missing(column, bound.text());
      }
      return number.whenEmpty();
    }
    if (!NUMBER.matcher(text).matches()) {
      faults.add(new Fault(column, clip(text), bound.text(), unreadable(text)));
      return Double.NaN;
    }
    double value = Double.parseDouble(text);
    if (!bound.holds(value)) {
      faults.add(bound.fault(column, clip(text)));
      return Double.NaN;
    }
    return value;
  }

  private static String unreadable(String text) {
    if (COMMA.matcher(text).matches()) {
      return "decimal-comma";
    }
    return WITH_UNIT.matcher(text).matches() ? "unit-in-cell" : "not-a-number";
  }

  public int whole(String column, int least, int most, int whenEmpty) {
    String text = optional(column);
    if (text == null) {
      return whenEmpty;
    }
    Bound bound = Bound.between(least, most, "");
    if (!WHOLE.matcher(text).matches()) {
      faults.add(new Fault(column, clip(text), bound.text(), "not-whole"));
      return whenEmpty;
    }
    int value = Integer.parseInt(text);
    if (!bound.holds(value)) {
      faults.add(bound.fault(column, clip(text)));
    }
    return value;
  }

  public LocalDate date(String column) {
    String text = optional(column);
    if (text == null) {
      return null;
    }
    try {
      if (DATE.matcher(text).matches()) {
        return LocalDate.parse(text);
      }
    } catch (DateTimeParseException e) {
      // No such day: told as any other date that is none.
    }
    faults.add(new Fault(column, clip(text), "YYYY-MM-DD", "not-of-the-form"));
    return null;
  }

  public <E extends Enum<E> & Coded> E choice(String column, Class<E> type) {
    return choice(column, List.of(type.getEnumConstants()), Coded::code);
  }

  public <E> E choice(String column, List<E> choices, Function<E, String> code) {
    String text = optional(column);
    Optional<E> chosen = choices.stream().filter(e -> code.apply(e).equals(text)).findFirst();
    if (chosen.isEmpty()) {
      String expected = choices.stream().map(code).collect(Collectors.joining(" | "));
      if (text == null) {
        missing(column, expected);
      } else {
        faults.add(new Fault(column, clip(text), expected, "not-a-choice"));
      }
    }
    return chosen.orElse(null);
  }

  /** Said only where nothing else is wrong with the cell. */
  private void missing(String column, String expected) {
    if (faults.stream().noneMatch(fault -> fault.where().equals(column))) {
      faults.add(new Fault(column, null, expected, "missing"));
    }
  }

  /** As much of a text as a fault names. */
  public static String clip(String text) {
    return text.length() <= 60 ? text : text.substring(0, 60) + "…";
  }
}
