package org.staywright.part;

import java.util.Map;

/**
 * What was measured on a spring in the hand, to find what is like it. Runs on the columns.
 *
 * @param figures by column; none means that every part is like it
 * @param inStock whether at least one must be on the shelf
 */
public record MeasuredSpring(Map<Column, Figure> figures, boolean inStock) {

  /**
   * @param value as measured, SI
   * @param plusMinus how far off it may be either way, above 0, SI
   */
  public record Figure(double value, double plusMinus) {

    /** 0 where it agrees, 1 at the edge of the tolerance. */
    double miss(double actual) {
      return Math.abs(actual - value) / plusMinus;
    }
  }

  /** Rounding of millimetres to metres must not push a part over the edge of a tolerance. */
  private static final double EDGE = 1 + 1e-9;

  public MeasuredSpring {
    figures = Map.copyOf(figures);
  }

  /**
   * A page of the rows within every tolerance, the closest first; ties by part number.
   *
   * @param from how many come before it
   * @param most on it
   */
  public Selection rows(Range range, int from, int most) {
    Sought[] sought =
        figures.entrySet().stream()
            .sorted(Map.Entry.comparingByKey())
            .map(figure -> new Sought(range.column(figure.getKey()), figure.getValue()))
            .toArray(Sought[]::new);
    return Selection.of(
        range.size(),
        row -> (!inStock || range.stock(row) > 0) && within(sought, row),
        sought.length == 0 ? null : row -> distance(sought, row),
        from,
        most);
  }

  private record Sought(double[] column, Figure figure) {}

  private static boolean within(Sought[] sought, int row) {
    for (Sought each : sought) {
      if (!(each.figure.miss(each.column[row]) <= EDGE)) {
        return false;
      }
    }
    return true;
  }

  /** Sum of the squared misses, each in units of its tolerance. */
  private static double distance(Sought[] sought, int row) {
    double sum = 0;
    for (Sought each : sought) {
      double miss = each.figure.miss(each.column[row]);
      sum += miss * miss;
    }
    return sum;
  }
}
