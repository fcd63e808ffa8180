package org.staywright.document.draw;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class AxisTest {

  @Test
  void ticksStandAtRoundNumbersAroundTheValues() {
    assertArrayEquals(new double[] {0, 200, 400, 600, 800}, Axis.around(0, 787, 6).ticks(), 1e-9);
    assertArrayEquals(
        new double[] {-40, -20, 0, 20, 40, 60}, Axis.around(-24, 50, 7).ticks(), 1e-9);
  }

  @Test
  void ticksOfAnAxisThatEndsWithItsValuesLieWithin() {
    Axis axis = Axis.within(0, 95, 8);
    assertArrayEquals(new double[] {0, 20, 40, 60, 80}, axis.ticks(), 1e-9);
    assertEquals(1, axis.share(95));
  }

  @Test
  void decimalsTellTheTicksApart() {
    assertEquals(0, Axis.around(0, 100, 5).decimals());
    assertEquals(1, Axis.around(0, 1, 5).decimals());
    assertEquals(2, Axis.around(0, 0.1, 5).decimals());
  }

  @Test
  void anIntervalOfNoLengthStillHasAnAxis() {
    assertTrue(Axis.around(3, 3, 5).high() > 3);
    assertTrue(Axis.around(0, 0, 5).ticks().length > 1);
  }

  @Test
  void everyIntervalIsCoveredByAFewTicks() {
    long seed = 20261120;
    Random random = new Random(seed);
    for (int i = 0; i < 10_000; i++) {
      double low = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(9) - 4);
      double high = low + (1e-3 + random.nextDouble()) * Math.pow(10, random.nextInt(9) - 4);
      Axis axis = Axis.around(low, high, 6);
      String which = "seed " + seed + ", case " + i + ": " + low + " to " + high + " by " + axis;
      double slack = 1e-6 * axis.step();
      assertTrue(axis.low() <= low + slack && axis.high() >= high - slack, which);
      assertTrue(axis.ticks().length >= 2 && axis.ticks().length <= 9, which);
    }
  }
}
