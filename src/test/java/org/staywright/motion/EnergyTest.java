package org.staywright.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class EnergyTest {

  /** Ten in by the load, one by each other; half taken up by friction and damping. */
  @Test
  void whatIsMissingFromTheBooksIsTheGap() {
    Energy even = new Energy(9, 10, 1, 3, 3, 1, 1, 1, 1);
    assertEquals(0, even.gap(), 1e-12);
    assertEquals(0, even.imbalance(), 1e-12);
    Energy odd = new Energy(7, 10, 1, 3, 3, 1, 1, 1, 1);
    assertEquals(-2, odd.gap(), 1e-12);
    assertEquals(0.2, odd.imbalance(), 1e-12);
    assertEquals(0.25, new Energy(6, -1, 8, 0, 1, 1, 1, 0, 0).imbalance(), 1e-12);
  }

  @Test
  void whereNothingMovedNothingIsMissing() {
    assertEquals(0, new Energy(0, 0, 0, 0, 0, 0, 0, 0, 0).imbalance());
  }
}
