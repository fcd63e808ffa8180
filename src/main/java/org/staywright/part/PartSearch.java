package org.staywright.part;

import java.util.Map;
import java.util.Objects;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.staywright.unit.Bound;

/**
 * What is looked for in the range. Runs on the columns.
 *
 * @param family wanted, null for any
 * @param finish wanted, null for any
 * @param inStock whether at least one must be on the shelf
 * @param text in number or description, upper or lower case alike, null for any
 * @param bounds of the measured columns, SI
 */
public record PartSearch(
    @Nullable Family family,
    @Nullable Finish finish,
    boolean inStock,
    @Nullable String text,
    Map<Column, Bound> bounds) {

  /** Orders of a search; ties stay in the order of part numbers. */
  public enum Order implements Coded {
    NUMBER(null),
    ROD_DIAMETER(Column.ROD_DIAMETER),
    TUBE_DIAMETER(Column.TUBE_DIAMETER),
    STROKE(Column.STROKE),
    EXTENDED_LENGTH(Column.EXTENDED_LENGTH),
    FORCE(Column.FORCE),
    STOCK(null),
    /** Of one; what has none comes as if it were dearest. */
    PRICE(null),
    LEAD_TIME(null);

    private final @Nullable Column column;

    Order(@Nullable Column column) {
      this.column = column;
    }

    private IntToDoubleFunction key(Range range) {
      return switch (this) {
        case NUMBER -> row -> row;
        case STOCK -> range::stock;
        case PRICE -> range::priceOfOne;
        case LEAD_TIME -> range::leadTimeDays;
        default -> {
          double[] sorted = range.column(Objects.requireNonNull(column));
          yield row -> sorted[row];
        }
      };
    }
  }

  public PartSearch {
    bounds = Map.copyOf(bounds);
  }

  /**
   * A page of the rows that match.
   *
   * @param from how many come before it
   * @param most on it
   */
  public Selection rows(Range range, Order order, boolean falling, int from, int most) {
    IntToDoubleFunction rising = order.key(range);
    @Nullable IntToDoubleFunction key =
        falling ? row -> -rising.applyAsDouble(row) : order == Order.NUMBER ? null : rising;
    Within[] within =
        bounds.entrySet().stream()
            .map(bound -> new Within(range.column(bound.getKey()), bound.getValue()))
            .toArray(Within[]::new);
    return Selection.of(range.size(), row -> matches(range, within, row), key, from, most);
  }

  private record Within(double[] column, Bound bound) {}

  private boolean matches(Range range, Within[] within, int row) {
    if (family != null && range.family(row) != family
        || finish != null && range.finish(row) != finish
        || inStock && range.stock(row) == 0) {
      return false;
    }
    for (Within each : within) {
      if (!each.bound.holds(each.column[row])) {
        return false;
      }
    }
    return text == null
        || contains(range.number(row), text)
        || contains(range.description(row), text);
  }

  static boolean contains(String whole, String part) {
    if (whole == null) {
      return false;
    }
    for (int i = 0; i <= whole.length() - part.length(); i++) {
      if (whole.regionMatches(true, i, part, 0, part.length())) {
        return true;
      }
    }
    return false;
  }
}
