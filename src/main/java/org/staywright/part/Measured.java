package org.staywright.part;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What was measured on a spring in the hand, to find what is like it. Runs on the columns.
 *
 * @param figures by column; none means that every part is like it
 * @param inStock whether at least one must be on the shelf
 */
public record Measured(Map<Column, Figure> figures, boolean inStock) {

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

  public Measured {
    figures = Map.copyOf(figures);
  }

  /** Rows of a range within every tolerance, the closest first; ties by part number. */
  public List<Integer> rows(Range range) {
    return IntStream.range(0, range.size())
        .filter(row -> !inStock || range.stock(row) > 0)
        .filter(row -> figures.keySet().stream().allMatch(c -> miss(range, row, c) <= EDGE))
        .boxed()
        .sorted(Comparator.comparingDouble(row -> distance(range, row)))
        .toList();
  }

  /** Sum of the squared misses, each in units of its tolerance. */
  private double distance(Range range, int row) {
    return figures.keySet().stream()
        .sorted()
        .mapToDouble(column -> miss(range, row, column))
        .map(miss -> miss * miss)
        .sum();
  }

  private double miss(Range range, int row, Column column) {
    return figures.get(column).miss(range.column(column)[row]);
  }
}
