package org.staywright.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ADR 2023, 3.3.1, special provision 283, by {@code shared/regulations.csv}. */
class TransportTest {

  /** Its own examples: 0.5 L × 160 bar, 1 L × 80 bar, 1.6 L × 50 bar, 0.28 L × 280 bar. */
  @ParameterizedTest
  @CsvSource({"0.5, 160", "1, 80", "1.6, 50", "0.28, 280"})
  void theExamplesOfTheProvisionKeepItsFiguresAndALittleMoreDoesNot(double litres, double bar) {
    assertTrue(new Transport(litres * 1e-3, bar * 1e5).withinFigures());
    assertFalse(new Transport(1.01 * litres * 1e-3, 1.01 * bar * 1e5).withinFigures());
  }

  @Test
  void itsBoundsAreThoseOfTheFacts() throws IOException {
    assertEquals(
        fact("ADR SP283 capacity", "<= ([\\d.]+) L"), Transport.MOST_GAS_SPACE * 1e3, 1e-12);
    assertEquals(fact("ADR SP283 pressure", "<= ([\\d.]+) bar"), Transport.MOST_CHARGE / 1e5, 1e-9);
    assertEquals(fact("ADR SP283 product", "<= ([\\d.]+)"), Transport.MOST_PRODUCT / 100, 1e-9);
    assertEquals(fact("ADR SP283 burst", "<= ([\\d.]+) L"), Transport.SMALL * 1e3, 1e-12);
  }

  @Test
  void theBurstPressureToDeclareDependsOnTheGasSpace() throws IOException {
    assertEquals(fact("ADR SP283 burst", "burst >= (\\d) x"), new Transport(5e-4, 1).burstFactor());
    assertEquals(fact("ADR SP283 burst", "; >= (\\d) x"), new Transport(6e-4, 1).burstFactor());
  }

  private static double fact(String item, String pattern) throws IOException {
    String row =
        Files.readAllLines(Path.of("shared", "regulations.csv")).stream()
            .filter(line -> line.startsWith(item + ','))
            .findFirst()
            .orElseThrow();
    Matcher matcher = Pattern.compile(pattern).matcher(row);
    assertTrue(matcher.find(), row);
    return Double.parseDouble(matcher.group(1));
  }
}
