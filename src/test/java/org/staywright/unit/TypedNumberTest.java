package org.staywright.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Factors: NIST SP 811 Appendix B, see {@link UnitChecks}. */
class TypedNumberTest {

  private static final List<Unit> ASKED_FOR =
      List.of(Unit.MILLIMETRE, Unit.NEWTON, Unit.KILOGRAM, Unit.CELSIUS, Unit.NEWTON_METRE);

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "12.5; 12.5",
        "0,5; 0.5",
        ",5; 0.5",
        "−3; -3",
        "1.5E-3; 0.0015",
        "12+8; 20",
        "3*40; 120",
        "3x40; 120",
        "400 - 2*18,5; 363",
        "(12+8)/2; 10",
        "1/2; 0.5",
        "100/2,5; 40",
        "16 in; 406.4",
        "16in; 406.4",
        "16\"; 406.4",
        "0,5 m; 500",
        "4.5 cm; 45",
        "1/2 in; 12.7",
        "1 3/8 in; 34.925",
        "1-3/8\"; 34.925",
        "1½ in; 38.1",
        "2 ft; 609.6",
        "5'6\"; 1676.4",
        "5' 6 1/2''; 1689.1",
        "5'-6\"; 1676.4",
        "5 ft 6 in; 1676.4",
        "5'6'; 3352.8",
        "12+8 in; 508",
        "3*40 cm; 1200",
        "1 in + 3 mm; 28.4",
        "2 in * 3; 152.4",
        "1 m 20 cm; 1200",
        "1,234.5; 1234.5",
        "1.234,5; 1234.5",
        "1,234,567; 1234567",
        "16 Zoll; 406.4"
      })
  void readsALengthAsPeopleTypeIt(String typed, BigDecimal millimetres) {
    assertEquals(millimetres, read(typed, Unit.MILLIMETRE).add(BigDecimal.ZERO));
  }

  @ParameterizedTest
  @CsvSource({
    "35 lb, KILOGRAM, 15.87573295",
    "2 lb 4 oz, KILOGRAM, 1.0205828325",
    "1 lbf, NEWTON, 4.4482216152605",
    "1 lb, NEWTON, 4.4482216152605",
    "10 kgf, NEWTON, 98.0665",
    "1.2 kN, NEWTON, 1200",
    "68 °F, CELSIUS, 20",
    "-40F, CELSIUS, -40",
    "(60+8) °F, CELSIUS, 20",
    "-30 °C, CELSIUS, -30",
    "10 lbf·in, NEWTON_METRE, 1.129848290276167",
    "10 in-lb, NEWTON_METRE, 1.129848290276167",
    "5 Nm, NEWTON_METRE, 5",
    "45 deg, DEGREE, 45",
    "45°, DEGREE, 45",
    "5 %, PERCENT, 5",
  })
  void readsOtherDimensions(String typed, Unit wanted, BigDecimal value) {
    assertEquals(0, value.compareTo(read(typed, wanted)), typed);
  }

  @Test
  void aNumberWithoutAUnitIsInTheFieldsOwn() {
    assertEquals(
        "406.4", TypedNumber.read("16", Unit.MILLIMETRE, Unit.INCH, false).toPlainString());
    assertEquals(
        "16", TypedNumber.read("16 mm", Unit.MILLIMETRE, Unit.INCH, false).toPlainString());
    assertEquals(
        "20", TypedNumber.read("68", Unit.CELSIUS, Unit.FAHRENHEIT, false).toPlainString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"35 lb", "20 °C", "3 mm * 4 mm", "12 N", "1/(2 mm)", "1 mm / 2 mm"})
  void refusesAnotherDimension(String typed) {
    Fault fault = refusal(typed, Unit.MILLIMETRE, false);
    assertEquals("wrong-dimension", fault.code());
    assertEquals("mm | cm | m | in | ft", fault.bound());
    assertEquals(typed, fault.value());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "abc",
        "12 furlongs",
        "12+",
        "(3",
        "3)",
        "1 2",
        "1/0",
        "..",
        "1.2.3",
        "12,34,567",
        "4 in x",
        "NaN",
        "Infinity",
        "1e9999",
        "$5",
        "in",
        "3 4 mm",
        "1/(2-2)",
        "",
        "1,2345.6"
      })
  void refusesWhatIsNoNumber(String typed) {
    assertEquals("not-a-quantity", refusal(typed, Unit.MILLIMETRE, false).code());
  }

  @Test
  void refusesAUnitOnOnePartOfASum() {
    assertEquals("unit-on-one-part", refusal("12 in + 8", Unit.MILLIMETRE, false).code());
    assertEquals("unit-on-one-part", refusal("5'6", Unit.MILLIMETRE, false).code());
  }

  @Test
  void refusesSumsOfTemperatures() {
    assertEquals("not-a-quantity", refusal("60 °F + 8 °F", Unit.CELSIUS, false).code());
  }

  @Test
  void refusesAUnitWhereAPlainNumberIsWanted() {
    assertEquals("unit-not-wanted", refusal("3 mm", null, false).code());
    assertEquals(new BigDecimal("7"), TypedNumber.read("3+4", null, null, false));
  }

  @Test
  void asksWhetherACommaPartsThousands() {
    Fault fault = refusal("1,234", Unit.MILLIMETRE, false);
    assertEquals("comma-of-two-meanings", fault.code());
    assertEquals("1234 | 1.234", fault.bound());
    assertEquals(
        new BigDecimal("1.234"), TypedNumber.read("1,234", Unit.MILLIMETRE, Unit.MILLIMETRE, true));
    assertEquals(new BigDecimal("0.125"), read("0,125", Unit.MILLIMETRE));
  }

  @Test
  void refusesWhatIsFarTooLong() {
    assertEquals("30", read("1+".repeat(29) + " 1", Unit.MILLIMETRE).toPlainString());
    assertEquals("too-long", refusal("1+".repeat(30) + "1", Unit.MILLIMETRE, false).code());
    assertEquals("too-long", refusal("1+".repeat(40) + "1", Unit.MILLIMETRE, false).code());
  }

  @Test
  void comesBackFromEveryUnitOfItsDimension() {
    long seed = 20_261_125;
    Random random = new Random(seed);
    for (int i = 0; i < 5000; i++) {
      Unit wanted = ASKED_FOR.get(random.nextInt(ASKED_FOR.size()));
      List<Unit> units =
          Stream.of(Unit.values()).filter(u -> u.dimension() == wanted.dimension()).toList();
      Unit unit = units.get(random.nextInt(units.size()));
      BigDecimal value =
          BigDecimal.valueOf(random.nextInt(2_000_001) - 1_000_000, random.nextInt(6));
      String back =
          wanted
              .to(unit, TypedNumber.fraction(value))
              .bigDecimalValue(30, java.math.RoundingMode.HALF_EVEN.ordinal())
              .stripTrailingZeros()
              .toPlainString();
      BigDecimal read = read(back + " " + unit.symbol(), wanted);
      assertEquals(value.doubleValue(), read.doubleValue(), "seed " + seed + ": " + back + unit);
    }
  }

  private static BigDecimal read(String typed, Unit wanted) {
    return new BigDecimal(TypedNumber.read(typed, wanted, wanted, false).toPlainString());
  }

  private static Fault refusal(String typed, Unit wanted, boolean comma) {
    return assertThrows(Refusal.class, () -> TypedNumber.read(typed, wanted, wanted, comma), typed)
        .faults()
        .get(0);
  }
}
