package org.staywright.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Published discharges are in {@link MotionChecks}. */
class ThrottleTest {

  private record Water(double density, double viscosity, double speedOfSound, double pressure)
      implements Orifice.Fluid {}

  /** A thin hole of 1 mm², without friction: C_d = 0.62, Δp = ρ·u²/(2·C_d²). */
  private static final Throttle HOLE =
      new Throttle(
          new Orifice(Math.sqrt(4e-6 / Math.PI), 0, 2, 100e-6), new Water(1000, 0, 1500, 1e5));

  @Test
  void theFlowThroughTheRingPassesTheHole() {
    // 0.1 m/s of 100 mm² are 10 m/s in 1 mm² while extending, 5 m/s in twice that compressing.
    assertEquals(1000 * 100 / (2 * 0.62 * 0.62) * 100e-6, HOLE.force(-0.1), 1e-9);
    assertEquals(1000 * 25 / (2 * 0.62 * 0.62) * 100e-6, HOLE.force(0.1), 1e-9);
    assertEquals(10 / 1500.0, HOLE.mach(-0.1), 1e-12);
  }

  @Test
  void comesToTheSpeedAtWhichItTakesUpAForce() {
    assertEquals(0.1, HOLE.speedAt(HOLE.force(0.1), true), 1e-9);
    assertEquals(0.1, HOLE.speedAt(HOLE.force(-0.1), false), 1e-9);
  }
}
