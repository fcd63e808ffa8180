package org.staywright.form.table;

import java.math.BigDecimal;
import java.math.MathContext;
import org.staywright.unit.Bound;

/**
 * One number of a part or fitting as it stands in a file or a table: a column in a unit of its own.
 */
public interface NumberColumn {

  /** Digits that survive the way to SI and back. */
  MathContext DIGITS = new MathContext(12);

  /** Name in the file's header and in the table: {@code stroke_mm}. */
  String column();

  /** What is accepted, in the column's unit. */
  Bound bound();

  /** What an empty cell stands for, NaN where it must not be empty. */
  double whenEmpty();

  /** The number without the noise of a conversion. */
  static double tidy(double value) {
    return BigDecimal.valueOf(value).round(DIGITS).doubleValue();
  }

  /** The number as people write it: {@code 31.5}, never {@code 3.15E1}. */
  static String text(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
