package org.staywright.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.staywright.check.Facts;

/** The series of ISO 3 that strokes and force classes follow; values are in StandardChecks. */
class PreferredNumbersTest {

  @Test
  void coarserSeriesAreEverySecondNumberOfTheFiner() {
    assertEquals(everySecond(series("R40")), series("R20"));
    assertEquals(everySecond(series("R20")), series("R10"));
    assertEquals(everySecond(series("R10")), series("R5"));
  }

  @Test
  void oneDecadeOfR20HasTwentyRisingNumbers() {
    List<Double> series = series("R20");
    assertEquals(20, series.size());
    for (int i = 1; i < series.size(); i++) {
      assertTrue(series.get(i) > series.get(i - 1));
    }
  }

  private static List<Double> series(String name) {
    return Facts.of("preferred-numbers").stream()
        .filter(row -> row.get("series").equals(name))
        .map(row -> Facts.number(row, "value"))
        .toList();
  }

  private static List<Double> everySecond(List<Double> series) {
    return IntStream.range(0, series.size() / 2).mapToObj(i -> series.get(2 * i)).toList();
  }
}
