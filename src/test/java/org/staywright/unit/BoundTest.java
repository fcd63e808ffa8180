package org.staywright.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BoundTest {

  private static final Bound MASS = Bound.above(0, 2000, "kg");
  private static final double INFINITE = Double.POSITIVE_INFINITY;

  @Test
  void saysWhatItAccepts() {
    assertEquals("> 0 and ≤ 2000 kg", MASS.text());
    assertEquals("≥ -60 and ≤ 150 °C", Bound.between(-60, 150, "°C").text());
    assertEquals("≥ 0.001", Bound.between(0.001, INFINITE, "").text());
    assertEquals("< 100000000 Pa", below(1e8, "Pa").text());
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.MIN_VALUE, 1, 2000})
  void takesWhatLiesInside(double value) {
    assertEquals(value, MASS.require("/load/massKg", value));
  }

  @ParameterizedTest
  @ValueSource(
      doubles = {
        0,
        -0.0,
        -3,
        2000.0000000000002,
        Double.NaN,
        Double.NEGATIVE_INFINITY,
        Double.POSITIVE_INFINITY
      })
  void refusesWhatDoesNot(double value) {
    Refusal refusal = assertThrows(Refusal.class, () -> MASS.require("/load/massKg", value));
    Fault fault = refusal.faults().get(0);
    assertEquals("/load/massKg", fault.where());
    assertEquals(value, fault.value());
    assertEquals("> 0 and ≤ 2000 kg", fault.bound());
    assertEquals("out-of-bounds", fault.code());
  }

  @Test
  void noNumberLiesNowhere() {
    assertFalse(new Bound(-INFINITE, false, INFINITE, false, "").holds(Double.NaN));
    assertTrue(new Bound(-INFINITE, false, INFINITE, false, "").holds(-1e300));
  }

  @Test
  void anOpenEndIsRefusedAndAClosedOneTaken() {
    assertFalse(Bound.above(3, 7, "").holds(3));
    assertTrue(Bound.above(3, 7, "").holds(7));
    assertTrue(Bound.between(3, 7, "").holds(3));
    assertTrue(below(7, "").holds(6.999));
    assertFalse(below(7, "").holds(7));
    assertFalse(below(7, "").holds(8));
  }

  @Test
  void aFaultMovesToAnotherPlace() {
    Fault fault = MASS.fault("mass", -3).at("#/load/massKg");
    assertEquals(new Fault("#/load/massKg", -3, "> 0 and ≤ 2000 kg", "out-of-bounds"), fault);
  }

  private static Bound below(double high, String unit) {
    return new Bound(-INFINITE, false, high, true, unit);
  }
}
