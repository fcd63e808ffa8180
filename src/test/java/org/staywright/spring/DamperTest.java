package org.staywright.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.spring.Spring.GAUGE_POINT;
import static org.staywright.unit.Unit.ATMOSPHERE;
import static org.staywright.unit.Unit.ROOM;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class DamperTest {

  private static final Damper PLAIN = damper(0, 0);
  private static final Damper PUSHING = damper(60, 8e-6);

  @Test
  void dampsEachWayByItsOwnCurve() {
    assertEquals(200, PLAIN.force(0.1), 1e-9);
    assertEquals(-800, PLAIN.force(-0.1), 1e-9);
    assertEquals(200 * Math.sqrt(2), PLAIN.force(0.2), 1e-9);
    assertEquals(-800 * 2, PLAIN.force(-0.2), 1e-9);
    assertEquals(0, PLAIN.force(0), 0);
  }

  @Property(tries = 200)
  void takesEnergyFromEveryMotionAndFlattens(
      @ForAll @Scale(6) @DoubleRange(min = 1e-4, max = 1) double speed,
      @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 1) double exponent) {
    Digression way = new Digression(500, 0.1, exponent);
    Damper damper = damper(0, 0, way, way);
    assertTrue(damper.force(speed) * speed > 0 && damper.force(-speed) * -speed > 0);
    assertEquals(damper.force(speed), -damper.force(-speed), 1e-12);
    double rise = damper.force(1.01 * speed) / damper.force(speed);
    assertTrue(rise > 1 && rise <= 1.01 + 1e-12, "rise " + rise);
  }

  @Test
  void pushesOnlyWithTheGasThatIsApart() {
    ForceLaw still = PLAIN.law();
    assertEquals(0, still.force(0.05, ROOM), 0);
    assertEquals(ATMOSPHERE, still.pressure(0.05, ROOM), 0);
    assertEquals(0, still.fast(0, 0.1, ROOM).force(0.1), 0);
    assertEquals(1, PLAIN.progression(), 0);
    assertEquals(60, PUSHING.law().extending(GAUGE_POINT, ROOM), 1e-7);
    assertEquals(PUSHING, PUSHING.law().spring());
    assertTrue(PUSHING.law().pressure(0.1, ROOM) > PUSHING.law().pressure(0, ROOM));
    assertTrue(PUSHING.progression() > 1);
  }

  @Test
  void warmOilTakesRoomFromTheGas() {
    ForceLaw law = PUSHING.law();
    double gasAlone = law.force(0.05, ROOM) * (ROOM + 40) / ROOM;
    assertTrue(law.force(0.05, ROOM + 40) > gasAlone);
  }

  @Test
  void bucklesAsTheGasSpringOfItsSizeDoes() {
    double critical = PUSHING.reserve().orElseThrow().criticalLoad(0.4, 0.02);
    assertEquals(critical, PUSHING.criticalLoad(0.4, 0.02), 1e-9 * critical);
    assertEquals(critical, PLAIN.criticalLoad(0.4, 0.02), 1e-9 * critical);
  }

  private static Damper damper(double force, double gas) {
    return damper(force, gas, new Digression(200, 0.1, 0.5), new Digression(800, 0.1, 1));
  }

  private static Damper damper(double force, double gas, Digression in, Digression out) {
    return new Damper(
        new Cylinder(0.008, 0.022, 0.019, 0.1, 0.32, 0.22, 10, 1.5, gas, 28e-6), force, in, out);
  }
}
