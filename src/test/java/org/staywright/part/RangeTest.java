package org.staywright.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.staywright.spring.Cylinder;
import org.staywright.spring.GasSpring;

class RangeTest {

  private static final long SEED = 20_260_704;

  @Test
  void givesBackThePartsItTook() {
    List<Part> parts = parts(300);
    Range range = Range.of(7, parts, List.of());
    assertEquals(7, range.revision());
    assertEquals(300, range.size());
    for (Part part : parts) {
      assertEquals(Optional.of(part), range.part(part.number()), "seed " + SEED);
    }
  }

  @Test
  void keepsItsRowsInTheOrderOfTheirNumbers() {
    List<Part> parts = new ArrayList<>(parts(100));
    Collections.shuffle(parts, new Random(SEED));
    Range range = Range.of(1, parts, List.of());
    for (int row = 0; row < range.size(); row++) {
      assertEquals(row, range.row(range.number(row)).orElseThrow());
      assertTrue(row == 0 || range.number(row - 1).compareTo(range.number(row)) < 0);
      assertEquals(range.part(row).spring().stroke(), range.column(Column.STROKE)[row]);
      assertEquals(range.part(row).offer().stock(), range.stock(row));
      assertEquals(range.part(row).ends(), range.ends(row));
    }
    assertTrue(range.row("NO-SUCH-PART").isEmpty());
  }

  @Test
  void worksTheGasMassOutOnce() {
    Range range = Range.of(1, parts(40), List.of());
    for (int row = 0; row < range.size(); row++) {
      Part part = range.part(row);
      GasSpring spring = (GasSpring) part.spring();
      double low = (spring.force() - part.forceTolerance()) / spring.force();
      assertEquals(spring.charged().gasMass(), range.column(Column.GAS_MASS)[row]);
      assertEquals(spring.charged(low, 1).gasMass(), range.column(Column.GAS_MASS_LOW)[row]);
      assertTrue(range.column(Column.GAS_MASS_HIGH)[row] > range.column(Column.GAS_MASS)[row]);
    }
  }

  @Test
  void refusesTwoPartsOfOneNumber() {
    Part part = parts(1).get(0);
    List<Part> twice = List.of(part, part);
    assertThrows(IllegalArgumentException.class, () -> Range.of(1, twice, List.of()));
  }

  @Test
  void mayBeEmpty() {
    Range range = Range.of(0, List.of(), List.of());
    assertEquals(0, range.size());
    assertTrue(range.part("ANY").isEmpty());
    assertEquals(List.of(), range.fittings());
  }

  @Test
  void findsFittingsByNumber() {
    Fitting socket = fitting("ZZ-2");
    Fitting eyelet = fitting("AA-1");
    Range range = Range.of(1, List.of(), List.of(socket, eyelet));
    assertEquals(List.of(eyelet, socket), range.fittings());
    assertEquals(Optional.of(socket), range.fitting("ZZ-2"));
    assertEquals(Optional.empty(), range.fitting("ZZ-3"));
  }

  private static Fitting fitting(String number) {
    return new Fitting(
        number,
        null,
        FittingType.EYELET,
        Finish.ZINC,
        "M8",
        0.02,
        2000,
        0.2,
        0,
        0.008,
        0.02,
        new Offer(null, 3, null, 5));
  }

  private static List<Part> parts(int count) {
    System.out.println("RangeTest seed " + SEED);
    Random random = new Random(SEED);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      parts.add(part(String.format("T%05d", i), random));
    }
    return parts;
  }

  private static Part part(String number, Random random) {
    double stroke = 0.04 + 0.3 * random.nextDouble();
    double force = 100 + 500 * random.nextDouble();
    double gas = Math.PI / 4 * 0.0156 * 0.0156 * (stroke + 0.005);
    GasSpring spring =
        new GasSpring(
            new Cylinder(
                0.008, 0.018, 0.0156, stroke, 2 * stroke + 0.06, stroke + 0.06, 19, 1.5, gas, 1e-6),
            force);
    boolean plain = random.nextBoolean();
    return new Part(
        number,
        random.nextBoolean() ? null : "invented " + number,
        Family.GAS_SPRING,
        plain ? Finish.ZINC : Finish.STAINLESS,
        spring,
        20 + random.nextDouble(),
        new Part.Ends("M8", plain ? "M8" : "M6"),
        new Part.Damping(plain ? 0 : 0.03, 0.6e-3, 2e-3, 4, 3),
        new Part.Limits(243.15, 353.15, 400e5),
        new Part.Wear(0.02, 1.5e-6),
        0.2 + 0.1 * random.nextDouble(),
        plain ? Mounting.ANY : Mounting.ROD_DOWN,
        new Offer(
            random.nextInt(5) == 0 ? null : price(random),
            random.nextInt(100),
            plain ? null : LocalDate.of(2026, 11, 20),
            random.nextInt(30)),
        plain ? List.of() : List.of("gasVolumeMl", "massKg"));
  }

  private static Price price(Random random) {
    BigDecimal one = BigDecimal.valueOf(1000 + random.nextInt(5000), 2);
    List<Price.Break> breaks = new ArrayList<>();
    breaks.add(new Price.Break(1, one));
    if (random.nextBoolean()) {
      breaks.add(new Price.Break(10, BigDecimal.valueOf(90_125 + random.nextInt(9) * 10, 4)));
    }
    return new Price("EUR", LocalDate.of(2027, 6, 30), 1, random.nextInt(2) + 1, breaks);
  }
}
