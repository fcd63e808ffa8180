package org.staywright.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Published factors are in {@link UnitChecks}. */
class UnitTest {

  @ParameterizedTest
  @EnumSource
  void comesBackFromSi(Unit unit) {
    for (double value : new double[] {-40, 0, 1e-6, 1, 380.25, 1e6}) {
      assertEquals(value, unit.of(unit.si(value)), 1e-12 * Math.abs(value) + 1e-9);
    }
  }

  @Test
  void celsiusAndFahrenheitMeetWhereEveryoneKnows() {
    assertEquals(32, Unit.FAHRENHEIT.of(Unit.CELSIUS.si(0)), 1e-10);
    assertEquals(212, Unit.FAHRENHEIT.of(Unit.CELSIUS.si(100)), 1e-10);
    assertEquals(-40, Unit.FAHRENHEIT.of(Unit.CELSIUS.si(-40)), 1e-10);
    assertEquals(Unit.ROOM, Unit.CELSIUS.si(20), 1e-12);
  }

  @Test
  void symbolsAreDistinct() {
    long symbols = Arrays.stream(Unit.values()).map(Unit::symbol).distinct().count();
    assertTrue(symbols == Unit.values().length);
  }
}
