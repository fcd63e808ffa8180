package org.staywright.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;

/** Search by measured size, held against the plain meaning of a tolerance. */
class MeasuredSpringTest {

  private final Range range = SampleRange.read();

  @Test
  void findsEveryPartWhereNothingWasMeasured() {
    assertEquals(range.size(), new MeasuredSpring(Map.of(), false).rows(range, 0, 10).total());
  }

  @Test
  void keepsToTheToleranceAndPutsTheClosestFirst() {
    long seed = 20261125;
    Random random = new Random(seed);
    for (int round = 0; round < 50; round++) {
      double stroke = 0.04 + 0.4 * random.nextDouble();
      double rod = 0.004 + 0.012 * random.nextDouble();
      MeasuredSpring measured =
          new MeasuredSpring(
              Map.of(
                  Column.STROKE, new MeasuredSpring.Figure(stroke, 0.02),
                  Column.ROD_DIAMETER, new MeasuredSpring.Figure(rod, 0.0021)),
              false);
      List<Integer> rows = measured.rows(range, 0, range.size()).rows();
      double[] strokes = range.column(Column.STROKE);
      double[] rods = range.column(Column.ROD_DIAMETER);
      long within =
          IntStream.range(0, range.size())
              .filter(i -> Math.abs(strokes[i] - stroke) <= 0.02)
              .filter(i -> Math.abs(rods[i] - rod) <= 0.0021)
              .count();
      assertEquals(within, rows.size(), "seed " + seed + ", round " + round);
      for (int i = 1; i < rows.size(); i++) {
        assertTrue(
            far(strokes[rows.get(i - 1)] - stroke, rods[rows.get(i - 1)] - rod)
                <= far(strokes[rows.get(i)] - stroke, rods[rows.get(i)] - rod) + 1e-12,
            "seed " + seed + ", round " + round + ", row " + i);
      }
    }
  }

  @Test
  void leavesOutWhatIsNotOnTheShelf() {
    List<Integer> rows = new MeasuredSpring(Map.of(), true).rows(range, 0, range.size()).rows();
    assertTrue(rows.stream().allMatch(row -> range.stock(row) > 0));
    assertTrue(rows.size() < range.size());
  }

  private static double far(double stroke, double rod) {
    return Math.pow(stroke / 0.02, 2) + Math.pow(rod / 0.0021, 2);
  }
}
