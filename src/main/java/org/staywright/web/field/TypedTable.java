package org.staywright.web.field;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.staywright.form.schema.FlatTable;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Shape;
import org.staywright.unit.TypedNumber;
import org.staywright.unit.Unit;
import org.staywright.unit.Units;

/** A table in a text field, in units of the reader; its decimal mark is the point everywhere. */
final class TypedTable {

  private static final Pattern PLAIN = Pattern.compile("[+-]?\\d{1,20}(?:\\.\\d{1,20})?");

  /** Figures that a number in other units comes back with; one that has more keeps its own unit. */
  private static final MathContext FIGURES = new MathContext(9);

  private static final int DECIMALS = 30;

  private TypedTable() {}

  /** As a reader of those units sees it. */
  static String shown(Shape row, String text, Units units) {
    return rewritten(row, text, unit -> cell -> shown(cell, unit, units.instead(unit)));
  }

  /** As it is meant, where a plain number is in those units. */
  static String meant(Shape row, String text, Units units) {
    return rewritten(row, text, unit -> cell -> meant(cell, unit, units.instead(unit)));
  }

  private static String rewritten(
      Shape row, String text, Function<Unit, Function<String, String>> ways) {
    return FlatTable.rewritten(
        row,
        text,
        (kind, cell) ->
            kind instanceof Kind.Amount amount
                    && amount.unit() != null
                    && PLAIN.matcher(cell).matches()
                ? ways.apply(amount.unit()).apply(cell)
                : cell);
  }

  private static String shown(String cell, Unit unit, Unit instead) {
    BigDecimal exact = new BigDecimal(cell);
    BigDecimal other =
        unit.to(instead, TypedNumber.fraction(exact))
            .bigDecimalValue(DECIMALS, RoundingMode.HALF_EVEN.ordinal());
    for (int figures = 4; figures <= 12; figures++) {
      String text = other.round(new MathContext(figures)).stripTrailingZeros().toPlainString();
      if (exact.compareTo(new BigDecimal(meant(text, unit, instead))) == 0) {
        return text;
      }
    }
    return cell + unit.symbol();
  }

  private static String meant(String cell, Unit unit, Unit instead) {
    return TypedNumber.read(cell, unit, instead, false)
        .round(instead == unit ? MathContext.UNLIMITED : FIGURES)
        .stripTrailingZeros()
        .toPlainString();
  }
}
