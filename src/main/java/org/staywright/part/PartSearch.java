package org.staywright.part;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
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
    Family family, Finish finish, boolean inStock, String text, Map<Column, Bound> bounds) {

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

    private final Column column;

    Order(Column column) {
      this.column = column;
    }

    private ToDoubleFunction<Integer> key(Range range) {
      return switch (this) {
        case NUMBER -> row -> row;
        case STOCK -> range::stock;
        case PRICE -> row -> price(range.offer(row));
        case LEAD_TIME -> row -> range.offer(row).leadTimeDays();
        default -> row -> range.column(column)[row];
      };
    }

    private static double price(Offer offer) {
      return offer.price() == null ? Double.POSITIVE_INFINITY : offer.price().each(1).doubleValue();
    }
  }

  public PartSearch {
    bounds = Map.copyOf(bounds);
  }

  /** Rows of the range that match, in an order. */
  public List<Integer> rows(Range range, Order order, boolean falling) {
    Comparator<Integer> comparator = Comparator.comparingDouble(order.key(range));
    return IntStream.range(0, range.size())
        .filter(row -> matches(range, row))
        .boxed()
        .sorted(falling ? comparator.reversed() : comparator)
        .toList();
  }

  private boolean matches(Range range, int row) {
    return (family == null || range.family(row) == family)
        && (finish == null || range.finish(row) == finish)
        && (!inStock || range.stock(row) > 0)
        && bounds.entrySet().stream()
            .allMatch(bound -> bound.getValue().holds(range.column(bound.getKey())[row]))
        && (text == null
            || contains(range.number(row), text)
            || contains(range.description(row), text));
  }

  static boolean contains(String whole, String part) {
    return whole != null && whole.toLowerCase(Locale.ROOT).contains(part.toLowerCase(Locale.ROOT));
  }
}
