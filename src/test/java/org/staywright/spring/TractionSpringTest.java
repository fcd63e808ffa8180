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

class TractionSpringTest {

  private static final TractionSpring SPRING = spring(300, 15, 60e-6);

  @Test
  void pullsWithItsForceClassFiveMillimetresOut() {
    double short5 = SPRING.stroke() - GAUGE_POINT;
    assertEquals(-300, SPRING.charged().compressing(short5, ROOM), 1e-7);
    assertEquals(-330, SPRING.charged().extending(short5, ROOM), 1e-7);
    assertEquals(-1, SPRING.sense());
  }

  /** Its gas has V0 − A_a·y; Boyle at low pressure gives the pull a closed form. */
  @Test
  void followsBoyleWhereTheGasIsThin() {
    TractionSpring thin = spring(20, 0, 60e-6);
    double ring = Math.PI / 4 * (0.0156 * 0.0156 - 0.008 * 0.008);
    double p1 = ATMOSPHERE + 20 / ring;
    double v1 = 60e-6 - ring * GAUGE_POINT;
    for (int i = 0; i <= 20; i++) {
      double y = 0.2 * i / 20;
      double ideal = -(p1 * v1 / (60e-6 - ring * y) - ATMOSPHERE) * ring;
      assertEquals(ideal, thin.charged().force(0.2 - y, ROOM), 2e-3 * p1 * ring, "y " + y);
    }
  }

  @Test
  void hasItsGasAtEaseWhereItIsShortest() {
    ChargedSpring charged = SPRING.charged();
    assertEquals(SPRING.stroke(), SPRING.restCompression());
    assertEquals(charged.gasMass() / 60e-6, charged.density(SPRING.restCompression(), ROOM), 1e-9);
    assertTrue(charged.pressure(0, ROOM) > charged.pressure(SPRING.stroke(), ROOM));
  }

  @Test
  void progressesOnItsWayOut() {
    double f1 = -SPRING.charged().compressing(0.195, ROOM);
    double f2 = -SPRING.charged().compressing(0.005, ROOM);
    assertEquals(f2 / f1, SPRING.progression(), 1e-12);
    assertTrue(SPRING.progression() > 1.2);
  }

  @Test
  void cannotBuckle() {
    assertEquals(Double.POSITIVE_INFINITY, SPRING.criticalLoad(0.5, 0.02));
  }

  @Property(tries = 200)
  void pullsHarderFurtherOutWarmerAndFaster(
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.199) double out,
      @ForAll @Scale(6) @DoubleRange(min = 243, max = 350) double kelvin) {
    ChargedSpring charged = SPRING.charged();
    double pull = -charged.force(0.2 - out, kelvin);
    assertTrue(-charged.force(0.2 - out - 0.001, kelvin) > pull);
    assertTrue(-charged.force(0.2 - out, kelvin + 1) > pull);
    assertTrue(-charged.fast(0.2, 0, kelvin).force(0.2 - out) > pull);
  }

  @Property(tries = 100)
  void aClosedSlowLoopCostsItsFriction(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.09) double from,
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 0.2) double to,
      @ForAll @Scale(6) @DoubleRange(min = 243, max = 350) double kelvin) {
    ForceLaw law = SPRING.law();
    assertEquals(2 * SPRING.friction(kelvin) * (to - from), loop(law, from, to, kelvin), 1e-6);
  }

  /** Work put in while it is pushed together less work given back on the way out, J. */
  static double loop(ForceLaw law, double from, double to, double kelvin) {
    int steps = 200;
    double width = (to - from) / steps;
    double work = 0;
    for (int i = 0; i < steps; i++) {
      double x = from + width * (i + 0.5);
      work += law.compressing(x, kelvin) * width - law.extending(x, kelvin) * width;
    }
    return work;
  }

  private static TractionSpring spring(double force, double friction, double gas) {
    return new TractionSpring(
        new Cylinder(0.008, 0.018, 0.0156, 0.2, 0.53, 0.33, friction, 1.5, gas, 1e-6), force);
  }
}
