package org.staywright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.staywright.fit.clear.Change;
import org.staywright.unit.Units;

/** From where on a near part holds, in the units of the reader. */
class FitTextTest {

  @ParameterizedTest
  @CsvSource({
    "minC, -10, 2.5, °C, metric, where it is never colder than 2.5 °C.",
    "minC, -10, 5, °C, inch-pound, where it is never colder than 41 °F.",
    "maxC, 40, 30, °C, metric, where it is never hotter than 30 °C.",
    "serviceYears, 5, 3.2, a, metric, 'for 3.2 years in service, no longer.'"
  })
  void namesTheConditionFromWhichAPartHolds(
      String name, String from, String to, String unit, String units, String end) {
    Units shown = units.equals("metric") ? Units.METRIC : Units.INCH_POUND;
    Change change =
        new Change("/conditions/" + name, new BigDecimal(from), new BigDecimal(to), unit);
    String sentence = FitText.in(Wording.of(Locale.ENGLISH, shown)).holdsFrom(change);
    assertEquals(
        "No single moderate change makes it fit; it fits " + end, sentence.replace('\u00a0', ' '));
  }
}
