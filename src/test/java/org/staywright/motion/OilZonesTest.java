package org.staywright.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** 3 ml of oil: 20 mm deep in a ring of 150 mm², 15 mm in a bore of 200 mm²; a stroke of 100 mm. */
class OilZonesTest {

  private static final OilZones ZONES = OilZones.of(0.1, 3e-6, 150e-6, 200e-6);

  @Test
  void liesAsDeepAsItFillsTheRingOrTheBore() {
    assertEquals(0.02, ZONES.extension(), 1e-12);
    assertEquals(0.015, ZONES.compression(), 1e-12);
  }

  @Test
  void rodDownTheHoleComesIntoTheOilAtTheEndOfExtending() {
    assertEquals(0.015, ZONES.depth(0.005, true, -1), 1e-12);
    assertEquals(-0.01, ZONES.depth(0.03, true, -1), 1e-12);
    assertTrue(ZONES.depth(0.005, false, -1) < 0);
  }

  @Test
  void rodUpItComesIntoTheOilAtTheEndOfCompressing() {
    assertEquals(0.01, ZONES.depth(0.095, false, 1), 1e-12);
    assertEquals(-0.005, ZONES.depth(0.08, false, 1), 1e-12);
    assertTrue(ZONES.depth(0.005, true, 1) < 0);
  }

  /** 30° to level is the least. */
  @Test
  void nearLevelNothingIsClaimed() {
    assertEquals(-0.2, ZONES.depth(0.005, true, -0.3), 1e-12);
    assertEquals(-0.2, ZONES.depth(0.095, false, 0.3), 1e-12);
    assertEquals(0.01, ZONES.depth(0.005, true, -0.51), 1e-12);
    assertEquals(-1, ZONES.depth(0.005, true, Double.NaN));
    assertEquals(-1, OilZones.NONE.depth(0, true, -1));
  }
}
