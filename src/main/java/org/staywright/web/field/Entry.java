package org.staywright.web.field;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Shape;
import org.staywright.unit.Unit;
import org.staywright.unit.Units;
import org.staywright.wording.Wording;

/**
 * What a field shows of the numbers it stands for.
 *
 * @param texts in the reader's units and with their decimal mark
 * @param unit symbol beside them, "" for none
 * @param shown what has to come back beside them
 * @param read how what was typed was understood, "" where that is plain to see
 */
public record Entry(List<String> texts, String unit, List<String> shown, String read) {

  private static final Pattern PLAIN =
      Pattern.compile("[+-]?(?:\\d{1,30}(?:\\.\\d{0,30})?|\\.\\d{1,30})(?:[eE]-?\\d)?");

  /**
   * @param field null for one that the shape does not know
   * @param values as meant
   * @param typed as they were typed, none where nothing was
   */
  public static Entry of(
      String name, Field field, List<String> values, List<String> typed, Wording wording) {
    Kind kind = field != null && field.kind() instanceof Kind.Many many ? many.of() : kind(field);
    Units units = wording.units();
    if (kind instanceof Shape row && field.kind() instanceof Kind.Many && units != Units.METRIC) {
      String mark = new ShownValue(name, null, units.code(), "").toString();
      String text = TypedTable.shown(row, String.join("\n", values), units);
      return new Entry(List.of(text), "", List.of(mark), "");
    }
    boolean number = kind instanceof Kind.Amount || kind instanceof Kind.Whole;
    if (!number) {
      return new Entry(values, "", List.of(), "");
    }
    Unit metric = kind instanceof Kind.Amount amount ? amount.unit() : null;
    Unit unit = metric == null ? null : wording.units().instead(metric);
    boolean foreign = unit != metric || wording.decimalComma();
    String symbol = unit == null ? bound(kind) : unit.symbol();
    List<String> texts = new ArrayList<>();
    List<String> shown = new ArrayList<>();
    List<String> read = new ArrayList<>();
    for (int i = 0; i < Math.max(1, values.size()); i++) {
      String value = i < values.size() ? values.get(i).strip() : "";
      BigDecimal exact = number(value);
      boolean asItIs = exact == null || unit == metric && !wording.decimalComma();
      String text = asItIs ? value : wording.entry(exact, metric);
      if (i < values.size()) {
        texts.add(text);
      }
      if (foreign) {
        shown.add(new ShownValue(name, unit, text, exact == null ? "" : value).toString());
      }
      String said = i < typed.size() ? typed.get(i).strip() : "";
      if (exact != null && !said.equals(text) && !said.isEmpty() && number(said) == null) {
        read.add(said + " = " + text + (symbol.isEmpty() ? "" : "\u00a0" + symbol));
      }
    }
    return new Entry(texts, symbol, shown, String.join(", ", read));
  }

  private static Kind kind(Field field) {
    return field == null ? null : field.kind();
  }

  private static String bound(Kind kind) {
    return kind instanceof Kind.Amount amount ? amount.bound().unit() : "";
  }

  /** Null for a text that is no plain number, or one that nobody would write out. */
  private static BigDecimal number(String text) {
    return PLAIN.matcher(text).matches() ? new BigDecimal(text) : null;
  }
}
