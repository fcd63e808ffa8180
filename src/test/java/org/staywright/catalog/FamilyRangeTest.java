package org.staywright.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.staywright.form.part.PartRow;
import org.staywright.form.table.RowFile;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.part.PartNumber;
import org.staywright.spring.CoilSpring;
import org.staywright.spring.Damper;
import org.staywright.spring.ForceLaw;
import org.staywright.spring.Locking;
import org.staywright.spring.LockingSpring;
import org.staywright.spring.ThickTube;
import org.staywright.unit.Unit;

/** The files of the families beside open gas springs: every row could be built. */
class FamilyRangeTest {

  private static final Path FOLDER = Path.of("catalog-data");

  /** Volumes are written to a hundredth of a millilitre, each. */
  private static final double VOLUME_SLACK = 0.021e-6;

  private static final Map<Family, List<Part>> PARTS = new EnumMap<>(Family.class);

  @BeforeAll
  static void readTheFiles() throws IOException {
    for (CatalogGenerator.Sheet sheet : CatalogGenerator.SHEETS) {
      try (var file = Files.newBufferedReader(FOLDER.resolve(sheet.file()))) {
        var rows = RowFile.read(file, PartRow.COLUMNS, PartRow::read);
        assertEquals(List.of(), rows.faults(), sheet.file());
        PARTS.put(sheet.family(), rows.rows());
      }
    }
  }

  @Test
  void thereIsEnoughOfEveryFamily() {
    Map<Family, Integer> least =
        Map.of(
            Family.SEAT_COLUMN, 150,
            Family.LOCKING_STRUT, 300,
            Family.TRACTION_SPRING, 100,
            Family.DAMPER, 100,
            Family.COIL_SPRING, 100);
    least.forEach(
        (family, count) -> {
          assertTrue(of(family).size() >= count, family + ": " + of(family).size());
          of(family).forEach(part -> assertEquals(family, part.family()));
        });
  }

  @Test
  void numbersAreUsedOnceAcrossAllFamilies() {
    List<String> numbers = new ArrayList<>();
    PARTS.values().forEach(parts -> parts.forEach(part -> numbers.add(part.number())));
    numbers.forEach(number -> assertTrue(PartNumber.checks(number), number));
    assertEquals(numbers.size(), new HashSet<>(numbers).size());
  }

  @Test
  void columnsProgressGently() {
    within(Family.SEAT_COLUMN, 1.1, part -> part.spring().progression(), 1.3);
    within(Family.LOCKING_STRUT, 1.08, part -> part.spring().progression(), 1.65);
    within(Family.TRACTION_SPRING, 1.08, part -> part.spring().progression(), 1.65);
  }

  /** Of a traction spring nothing is throttled: its gas does not pass the piston. */
  @Test
  void theFreeRodComesOutNeitherSlowNorFast() {
    for (Family family : List.of(Family.SEAT_COLUMN, Family.LOCKING_STRUT)) {
      within(family, RowFigures.SLOWEST_OUT, part -> figures(part).speedsInGas().getMin(), 1);
      within(family, 0, part -> figures(part).speedsInGas().getMax(), RowFigures.FASTEST_OUT);
    }
  }

  @Test
  void gasIsHeldWithRoomToSpare() {
    for (Family family :
        List.of(Family.SEAT_COLUMN, Family.LOCKING_STRUT, Family.TRACTION_SPRING)) {
      within(family, 0, part -> figures(part).peakPressure(), Unit.BAR.si(400));
      within(family, 4, part -> figures(part).burstFactor(), Double.MAX_VALUE);
      within(family, 0, part -> figures(part).pressureVolume(), 80);
    }
  }

  @Test
  void nothingBucklesOverItsStroke() {
    PARTS
        .keySet()
        .forEach(
            family -> within(family, 3, part -> figures(part).bucklingFactor(), Double.MAX_VALUE));
  }

  @Test
  void whatLocksHasBothItsSidesInItsGasVolume() {
    for (LockingSpring spring : locking()) {
      assertEquals(0, spring.volumeAmiss(), VOLUME_SLACK, spring.toString());
      double sum =
          spring.cylinder().boreArea() * spring.stroke()
              + spring.fullSideDeadVolume()
              + spring.rodSideDeadVolume();
      assertEquals(sum, spring.cylinder().gasVolume(), VOLUME_SLACK, spring.toString());
    }
  }

  @Test
  void columnsGetSofterAllTheWayUp() {
    for (Part part : of(Family.SEAT_COLUMN)) {
      LockingSpring column = (LockingSpring) part.spring();
      assertTrue(column.softensSteadily(), part.description());
      assertEquals(Locking.ELASTIC, column.locking());
      double before = 0;
      for (int i = 0; i <= 10; i++) {
        double stiffness = column.locked(column.stroke() * i / 10, Unit.ROOM).stiffness();
        assertTrue(stiffness > before, part.description() + " at " + i);
        before = stiffness;
      }
    }
  }

  /** 45 kg, of which the feet carry a fifth, on a seat of 9 kg: at 35 °C, new and over-filled. */
  @Test
  void stiffColumnsSinkUnderALightSitter() {
    List<Part> stiff = of(Family.SEAT_COLUMN).stream().filter(FamilyRangeTest::isStiff).toList();
    assertTrue(stiff.size() >= 80, stiff.size() + " stiff columns");
    for (Part part : stiff) {
      ForceLaw strong = part.spring().law(1 + part.forceTolerance() / part.spring().force(), 1);
      double against = strong.compressing(part.spring().stroke(), 308.15);
      assertTrue(against <= (9 + 0.8 * 45) * 9.80665, part.description() + ": " + against);
    }
  }

  private static boolean isStiff(Part part) {
    LockingSpring column = (LockingSpring) part.spring();
    return column.cylinder().boreArea() > 5 * column.cylinder().rodArea();
  }

  @Test
  void theSleeveOfAColumnHasTheRoomThatIsClaimed() {
    for (Part part : of(Family.SEAT_COLUMN)) {
      LockingSpring column = (LockingSpring) part.spring();
      double bore = Unit.MILLIMETRE.of(column.cylinder().boreDiameter());
      double rod = Unit.MILLIMETRE.of(column.rodDiameter());
      double sleeve = LockingPlan.sleeveMm(rod, Unit.MILLIMETRE.of(column.tubeDiameter()));
      double ml = LockingPlan.sleeveMl(bore + 3, sleeve, Unit.MILLIMETRE.of(column.stroke()));
      assertEquals(ml, Unit.MILLILITRE.of(column.rodSideDeadVolume()), 0.006);
      // The wall that is computed with is no thicker than the one that is built.
      double built = new ThickTube(sleeve / 2000, column.tubeDiameter() / 2).pressureAt(490e6);
      assertTrue(column.tube().pressureAt(490e6) <= built, part.description());
    }
  }

  @Test
  void strutsLockInEveryWay() {
    Set<Locking> ways = new HashSet<>();
    of(Family.LOCKING_STRUT).forEach(part -> ways.add(((LockingSpring) part.spring()).locking()));
    assertEquals(Set.of(Locking.values()), ways);
  }

  @Test
  void oilThatLocksFillsItsSideAndHasItsRoomInTheTube() {
    for (Part part : of(Family.LOCKING_STRUT)) {
      LockingSpring strut = (LockingSpring) part.spring();
      double caught =
          (strut.locking().rigidPushed() ? strut.fullSide(0) : 0)
              + (strut.locking().rigidPulled() ? strut.rodSide(strut.stroke()) : 0);
      assertTrue(strut.cylinder().oilVolume() >= caught - VOLUME_SLACK, part.description());
      double inside = strut.compressedLength() * strut.cylinder().boreArea();
      assertTrue(strut.cylinder().gasVolume() + caught < inside, part.description());
    }
  }

  @Test
  void theLockGivesBeforeTheRodBuckles() {
    for (Family family : List.of(Family.SEAT_COLUMN, Family.LOCKING_STRUT)) {
      for (Part part : of(family)) {
        LockingSpring spring = (LockingSpring) part.spring();
        double end = FittingPlan.socketLength(part.ends().rod());
        double critical = spring.criticalLoad(spring.extendedLength() + 2 * end, end);
        assertTrue(spring.lockForce() + spring.force() <= critical, part.description());
        assertTrue(spring.lockForce() >= spring.force(), part.description());
      }
    }
  }

  @Test
  void gasOfTractionSpringsFindsRoomOnTheRodsSide() {
    for (Part part : of(Family.TRACTION_SPRING)) {
      var gas = part.gas().orElseThrow();
      double length = gas.cylinder().gasVolume() / gas.cylinder().ringArea();
      assertTrue(length > gas.stroke() && length < gas.compressedLength(), part.description());
      assertEquals(-1, part.spring().sense());
    }
  }

  @Test
  void oilOfDampersLeavesTheRodItsRoom() {
    for (Part part : of(Family.DAMPER)) {
      Damper damper = (Damper) part.spring();
      double rod = Math.PI / 4 * Math.pow(damper.rodDiameter(), 2) * damper.stroke();
      double inside =
          Math.PI / 4 * Math.pow(damper.cylinder().boreDiameter(), 2) * damper.compressedLength();
      assertTrue(damper.cylinder().oilVolume() + rod < inside, part.description());
      assertEquals(damper.force() > 0, damper.cylinder().gasVolume() > 0, part.description());
      assertTrue(damper.compressing().exponent() <= 1 && damper.extending().exponent() <= 1);
      damper
          .reserve()
          .ifPresent(
              gas -> {
                assertTrue(
                    gas.leastGasVolume(part.limits().hottest()) > 0.2 * gas.cylinder().gasVolume());
                double hot = damper.law().force(damper.stroke(), part.limits().hottest());
                assertTrue(hot < 5 * damper.force(), part.description() + ": " + hot);
              });
    }
  }

  @Test
  void coilsKeepTheirGapsAndTheirStress() {
    for (Part part : of(Family.COIL_SPRING)) {
      CoilSpring coil = (CoilSpring) part.spring();
      assertTrue(coil.stroke() <= coil.usableStroke(), part.description());
      assertTrue(coil.solidStress() <= coil.permissibleStress(), part.description());
      assertTrue(coil.preload() > 0, part.description());
      assertTrue(coil.index() >= 4 && coil.index() <= 20, part.description());
      assertTrue(coil.rodDiameter() < coil.tubeDiameter() - 2 * coil.wireDiameter());
      assertEquals(Double.POSITIVE_INFINITY, coil.bucklingDeflection(CoilSpring.SEATING));
      // The coil and both ends make up the length.
      double installed = coil.freeLength() - coil.preload();
      assertTrue(coil.extendedLength() > installed, part.description());
    }
  }

  private static List<Part> of(Family family) {
    return PARTS.get(family);
  }

  private static List<LockingSpring> locking() {
    List<LockingSpring> all = new ArrayList<>();
    of(Family.SEAT_COLUMN).forEach(part -> all.add((LockingSpring) part.spring()));
    of(Family.LOCKING_STRUT).forEach(part -> all.add((LockingSpring) part.spring()));
    return all;
  }

  private static RowFigures figures(Part part) {
    return new RowFigures(part, FittingPlan.socketLength(part.ends().rod()));
  }

  private static void within(
      Family family, double least, ToDoubleFunction<Part> figure, double most) {
    for (Part part : of(family)) {
      double value = figure.applyAsDouble(part);
      assertTrue(value >= least && value <= most, part.description() + ": " + value);
    }
  }
}
