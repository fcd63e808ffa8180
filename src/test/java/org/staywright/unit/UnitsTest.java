package org.staywright.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class UnitsTest {

  @Test
  void areFoundByTheirCodes() {
    assertEquals(Optional.of(Units.METRIC), Units.of("metric"));
    assertEquals(Optional.of(Units.INCH_POUND), Units.of("inch-pound"));
    assertEquals(Optional.empty(), Units.of("imperial"));
    assertEquals("inch-pound", Units.INCH_POUND.code());
    assertEquals(Optional.of(Unit.POUND_FORCE), Unit.of("lbf"));
    assertEquals(Optional.empty(), Unit.of("stone"));
  }

  @Test
  void anInchStandsForAMillimetreAndNothingForADegree() {
    assertEquals(Unit.INCH, Units.INCH_POUND.instead(Unit.MILLIMETRE));
    assertEquals(Unit.DEGREE, Units.INCH_POUND.instead(Unit.DEGREE));
    assertEquals(3, Units.INCH_POUND.decimals(Unit.DEGREE, 3));
    assertEquals(Unit.MILLIMETRE, Units.METRIC.instead(Unit.MILLIMETRE));
  }

  /** Factors between them: NIST SP 811 Appendix B, see {@link UnitChecks}. */
  @ParameterizedTest
  @EnumSource
  void theLastDigitTellsAboutAsMuchInEitherUnit(Unit metric) {
    Unit shown = Units.INCH_POUND.instead(metric);
    assertEquals(metric.dimension(), shown.dimension());
    double ours = digit(metric, 6);
    double theirs = digit(shown, Units.INCH_POUND.decimals(metric, 6));
    assertTrue(theirs / ours > 0.15 && theirs / ours < 2.6, metric + ": " + theirs / ours);
  }

  @Test
  void noFigureHasFewerDecimalsThanNone() {
    assertNotEquals(Unit.BAR, Units.INCH_POUND.instead(Unit.BAR));
    assertEquals(0, Units.INCH_POUND.decimals(Unit.BAR, 0));
  }

  private static double digit(Unit unit, int decimals) {
    return (unit.si(1) - unit.si(0)) / Math.pow(10, decimals);
  }
}
