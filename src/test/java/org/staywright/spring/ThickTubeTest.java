package org.staywright.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Published values are in {@link StrengthChecks}. */
class ThickTubeTest {

  private static final ThickTube TUBE = new ThickTube(7.8e-3, 9e-3);

  @Test
  void radialStressIsThePressureAtEitherFace() {
    assertEquals(-150e5, TUBE.radial(150e5, 1e5, 7.8e-3), 1e-3);
    assertEquals(-1e5, TUBE.radial(150e5, 1e5, 9e-3), 1e-3);
  }

  /** Cut lengthwise, both walls carry the pressure on the bore's width. */
  @Test
  void hoopStressBalancesThePressureOnALengthwiseCut() {
    double sum = 0;
    int steps = 2000;
    double wall = 1.2e-3;
    for (int i = 0; i < steps; i++) {
      sum += TUBE.hoop(150e5, 0, 7.8e-3 + wall * (i + 0.5) / steps) * wall / steps;
    }
    assertEquals(150e5 * 7.8e-3, sum, 1e-5 * sum);
  }

  @Test
  void axialStressBalancesThePressureOnTheEnds() {
    double section = Math.PI * (9e-3 * 9e-3 - 7.8e-3 * 7.8e-3);
    double force = Math.PI * 7.8e-3 * 7.8e-3 * 150e5;
    assertEquals(force, TUBE.axial(150e5, 0) * section, 1e-6 * force);
  }

  @Test
  void yieldsFirstAtTheBoreByTheGreatestShear() {
    double pressure = TUBE.pressureAt(355e6);
    double range = TUBE.hoop(pressure, 0, 7.8e-3) - TUBE.radial(pressure, 0, 7.8e-3);
    assertEquals(355e6, range, 1);
    double outside = TUBE.hoop(pressure, 0, 9e-3) - TUBE.radial(pressure, 0, 9e-3);
    assertTrue(outside < range);
  }

  /** p·r/t, the boiler formula, where the wall is thin. */
  @Test
  void becomesTheBoilerFormulaInAThinWall() {
    ThickTube thin = new ThickTube(0.1, 0.1001);
    assertEquals(1e5 * 0.1 / 1e-4, thin.hoop(1e5, 0, 0.1), 1e-3 * 1e8);
  }

  /** By hand: π·(9² − 7.8²) mm² and π/4·(9⁴ − 7.8⁴) mm⁴. */
  @Test
  void itsSectionIsARing() {
    assertEquals(63.33451e-6, TUBE.section(), 1e-10);
    assertEquals(2245.841e-12, TUBE.inertia(), 1e-15);
  }
}
