package org.staywright.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.spring.Spring.GAUGE_POINT;
import static org.staywright.unit.Unit.ROOM;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/** Published values are in {@link CoilChecks}. */
class CoilSpringTest {

  /** Wire 3 mm, D 24 mm, 10 coils, 150 mm free; R = 81.5e9·0.003⁴/(8·0.024³·10) = 5969.24 N/m. */
  private static final CoilSpring COIL = coil(100, 0.05);

  @Test
  void followsHooke() {
    double rate = 81.5e9 * 81e-12 / (8 * 13.824e-6 * 10);
    ForceLaw law = COIL.law();
    assertEquals(rate, COIL.rate(), 1e-9 * rate);
    assertEquals(100, law.extending(GAUGE_POINT, ROOM), 1e-9);
    assertEquals(100 + rate * 0.02, law.extending(GAUGE_POINT + 0.02, ROOM), 1e-9);
    assertEquals(law.force(0.03, ROOM), law.fast(0, 0.05, ROOM).force(0.03), 1e-12);
  }

  /** Stress and solid length of the same coil by hand. */
  @Test
  void isStressedByTorsion() {
    assertEquals(8 * 0.024 * 100 / (Math.PI * 27e-9), COIL.stress(100), 1);
    assertEquals(8.5 / 7.25, COIL.correction(), 1e-12);
    assertEquals(0.036, COIL.solidLength(), 1e-12);
    assertEquals(10 * (0.0015 * 0.024 * 8 + 0.0003), COIL.leastGaps(), 1e-12);
    assertEquals(0.56 * 1500e6, COIL.permissibleStress(), 1);
    assertEquals(COIL.stress(COIL.rate() * 0.114), COIL.solidStress(), 1);
  }

  @Test
  void softensInTheHeat() {
    double cold = COIL.law().force(0.02, ROOM);
    assertEquals(cold * (1 - 0.07 * 50 / 250), COIL.law().force(0.02, ROOM + 50), 1e-9);
  }

  @Test
  void refusesACoilThatGoesSolid() {
    double most = COIL.usableStroke();
    coil(100, most - 1e-6).law();
    Refusal refusal = assertThrows(Refusal.class, () -> coil(100, most + 1e-6).law());
    Fault fault = refusal.faults().get(0);
    assertEquals("coil-solid", fault.code());
    assertEquals(1000 * most + 1e-3, (double) fault.value(), 1e-6);
    // Preload, stroke, gaps and solid length fill the free coil.
    assertEquals(
        COIL.freeLength(), COIL.preload() + most + COIL.leastGaps() + COIL.solidLength(), 1e-12);
  }

  @Test
  void slenderCoilsBuckleAndStockyOnesNever() {
    double slender = CoilChecks.coil(3e-3, 0.024, 20, 0.3).bucklingDeflection(0.5);
    assertTrue(slender > 0 && slender < 0.3, "" + slender);
    assertEquals(
        Double.POSITIVE_INFINITY, CoilChecks.coil(3e-3, 0.024, 6, 0.1).criticalLoad(0.1, 0));
    // A long pinned coil is a column: s_K/L0 tends to (π·D/L0)²·0.25/(0.5 + G/E).
    double ratio = 81.5 / 206;
    double limit = Math.pow(Math.PI * 0.024 / 5, 2) * 0.25 / (0.5 + ratio);
    double lengthy = CoilChecks.coil(3e-3, 0.024, 300, 5).bucklingDeflection(1) / 5;
    assertEquals(limit, lengthy, 1e-3 * limit);
  }

  @Property(tries = 200)
  void buckleSoonerTheLongerAndTheFreer(
      @ForAll @Scale(6) @DoubleRange(min = 0.15, max = 1) double free,
      @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 1.9) double seating) {
    CoilSpring coil = CoilChecks.coil(3e-3, 0.024, 20, free);
    CoilSpring longer = CoilChecks.coil(3e-3, 0.024, 20, 1.1 * free);
    assertTrue(share(longer, seating) <= share(coil, seating));
    assertTrue(share(coil, seating + 0.1) <= share(coil, seating));
  }

  private static double share(CoilSpring coil, double seating) {
    return coil.bucklingDeflection(seating) / coil.freeLength();
  }

  private static CoilSpring coil(double force, double stroke) {
    return new CoilSpring(
        0.008,
        0.027,
        0.003,
        10,
        0.15,
        CoilSpring.DRAWN_WIRE,
        1500e6,
        stroke,
        0.18,
        0.18 - stroke,
        force,
        2);
  }
}
