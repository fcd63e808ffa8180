package org.staywright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.staywright.unit.Bound;
import org.staywright.unit.Unit;
import org.staywright.unit.Units;

/** Figures in the reader's units; factors after NIST SP 811, see the checks of {@code unit}. */
class WordingUnitsTest {

  private static final Wording METRIC = Wording.english();
  private static final Wording INCH = Wording.of(Locale.ENGLISH, Units.INCH_POUND);
  private static final Wording GERMAN = Wording.of(Locale.GERMAN);

  /** Beside a gap its own unit must be one that changes with the reader. */
  private static final Pattern UNIT_BESIDE_A_GAP =
      Pattern.compile("\\} ?(?:mm|N|kg|°C|bar|J|m/s|N·m)(?![\\w·/])");

  /**
   * Published thresholds and the columns of files stand in the units of their texts, faults quote
   * what was sent.
   */
  private static final List<String> FIXED =
      List.of(
          "document.note.transport", "document.column", "document.lines.mass", "fault.", "law.");

  @Test
  void figuresStandInTheReadersUnits() {
    assertEquals("400.0\u00a0mm", METRIC.quantity(0.4, Unit.MILLIMETRE, 1));
    assertEquals("15.748\u00a0in", INCH.quantity(0.4, Unit.MILLIMETRE, 1));
    assertEquals("89.9\u00a0lbf", INCH.quantity(400, Unit.NEWTON, 0));
    assertEquals("−22\u00a0°F", INCH.quantity(Unit.CELSIUS.si(-30), Unit.CELSIUS, 0));
    assertEquals("40\u00a0lb", INCH.measure(18.143_694_8, Unit.KILOGRAM, 1));
    assertEquals("80°", INCH.quantity(Unit.DEGREE.si(80), Unit.DEGREE, 0));
    assertEquals("15,7\u00a0mm", GERMAN.quantity(0.015_7, Unit.MILLIMETRE, 1));
  }

  @Test
  void aUnitInASentenceIsTheReaders() {
    assertEquals("Rod, mm", METRIC.text("part.rod"));
    assertEquals("Rod, in", INCH.text("part.rod"));
    assertTrue(METRIC.text("document.near").startsWith("Near: 5 mm before"));
    assertTrue(INCH.text("document.near").startsWith("Near: 0.2\u00a0in before"));
    assertTrue(INCH.text("document.forces").contains("68\u00a0°F"));
  }

  @Test
  void boundsStandInTheReadersUnits() {
    Bound mass = Bound.above(0, 2000, "kg");
    assertEquals("> 0 and ≤ 2000 kg", METRIC.bound(mass));
    assertEquals("> 0 and ≤ 4409.25 lb", INCH.bound(mass));
    assertEquals("≥ 0,5", GERMAN.bound(Bound.between(0.5, Double.POSITIVE_INFINITY, "")));
  }

  @Test
  void aFieldShowsNumbersWithoutParting() {
    assertEquals("15.748", INCH.entry(new BigDecimal("400"), Unit.MILLIMETRE));
    assertEquals("0.0003937", INCH.entry(new BigDecimal("0.01"), Unit.MILLIMETRE));
    assertEquals("12345.6", METRIC.entry(new BigDecimal("12345.60"), Unit.MILLIMETRE));
    assertEquals("12345,6", GERMAN.entry(new BigDecimal("12345.6"), Unit.MILLIMETRE));
  }

  @Test
  void noSentenceFixesTheUnitOfAGap() throws IOException {
    Map<String, String> found = new TreeMap<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/resources/wording"))) {
      for (Path file :
          files.filter(p -> p.toString().matches(".*(?<!api)\\.properties")).toList()) {
        Properties sentences = new Properties();
        try (Reader in = Files.newBufferedReader(file)) {
          sentences.load(in);
        }
        sentences.stringPropertyNames().stream()
            .filter(key -> FIXED.stream().noneMatch(key::startsWith))
            .filter(key -> UNIT_BESIDE_A_GAP.matcher(sentences.getProperty(key)).find())
            .forEach(key -> found.put(key, sentences.getProperty(key)));
      }
    }
    assertEquals(Map.of(), found);
  }
}
