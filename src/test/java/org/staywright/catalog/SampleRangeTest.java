package org.staywright.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVPrinter;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.staywright.form.part.FittingRow;
import org.staywright.form.part.PartRow;
import org.staywright.form.stock.StockRow;
import org.staywright.form.table.RowFile;
import org.staywright.part.Family;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Mounting;
import org.staywright.part.Part;
import org.staywright.part.PartNumber;
import org.staywright.spring.GasSpring;
import org.staywright.unit.Unit;

/** The written files: every row could be built, and they are what the generator writes. */
class SampleRangeTest {

  private static final Path FOLDER = Path.of("catalog-data");

  private static List<Part> parts;
  private static List<Fitting> fittings;

  @BeforeAll
  static void readTheFiles() throws IOException {
    var springFile = Files.newBufferedReader(FOLDER.resolve(CatalogGenerator.SPRINGS));
    var springs = RowFile.read(springFile, PartRow.COLUMNS, PartRow::read);
    assertEquals(List.of(), springs.faults());
    parts = springs.rows();
    var fittingFile = Files.newBufferedReader(FOLDER.resolve(CatalogGenerator.FITTINGS));
    var others = RowFile.read(fittingFile, FittingRow.COLUMNS, FittingRow::read);
    assertEquals(List.of(), others.faults());
    fittings = others.rows();
  }

  @Test
  void isLargeEnoughToChooseFrom() {
    assertTrue(parts.size() >= 2500, parts.size() + " springs");
    assertTrue(fittings.size() >= 60, fittings.size() + " fittings");
    assertEquals(
        Set.of(FittingType.values()), new HashSet<>(fittings.stream().map(Fitting::type).toList()));
  }

  @Test
  void isExactlyWhatTheGeneratorWrites() throws IOException {
    for (CatalogGenerator.Sheet sheet : CatalogGenerator.SHEETS) {
      assertEquals(sheet.text(), text(sheet.file()));
    }
    assertEquals(CatalogGenerator.fittings(), text(CatalogGenerator.FITTINGS));
  }

  @Test
  void saysThatItIsInvented() throws IOException {
    for (String name : List.of(CatalogGenerator.SPRINGS, CatalogGenerator.FITTINGS, "README.md")) {
      assertTrue(text(name).contains("nvented"), name);
    }
  }

  @Test
  void numbersPassTheirOwnCheckAndAreUsedOnce() {
    List<String> numbers =
        Stream.concat(parts.stream().map(Part::number), fittings.stream().map(Fitting::number))
            .toList();
    numbers.forEach(number -> assertTrue(PartNumber.checks(number), number));
    assertEquals(numbers.size(), new HashSet<>(numbers).size());
  }

  @Test
  void progressionIsThatOfAGasSpring() {
    within(RowFigures.PROGRESSION_LOW, part -> part.spring().progression(), 1.65);
  }

  @Test
  void peakPressureStaysBelowTheLimit() {
    within(0, part -> figures(part).peakPressure(), Unit.BAR.si(400));
    within(Unit.BAR.si(400), part -> part.limits().pressure(), Unit.BAR.si(400));
  }

  @Test
  void tubesBurstFarAboveTheirCharge() {
    within(4, part -> figures(part).burstFactor(), Double.MAX_VALUE);
  }

  @Test
  void pressureTimesVolumeStaysSmall() {
    within(0, part -> figures(part).pressureVolume(), 80);
  }

  @Test
  void noSpringBucklesOverItsStroke() {
    within(3, part -> figures(part).bucklingFactor(), Double.MAX_VALUE);
  }

  @Test
  void oilFillsTheDampingZone() {
    for (Part part : parts) {
      GasSpring spring = (GasSpring) part.spring();
      double room =
          (spring.cylinder().boreArea() - spring.cylinder().rodArea()) * part.damping().endZone();
      assertTrue(spring.cylinder().oilVolume() >= room, part.description());
      boolean damped = part.damping().endZone() > 0;
      assertEquals(damped ? Mounting.ROD_DOWN : Mounting.ANY, part.mounting());
    }
  }

  /** Common practice, no source. */
  @Test
  void theFreeRodComesOutNeitherSlowNorFast() {
    within(RowFigures.SLOWEST_OUT, part -> figures(part).speedsInGas().getMin(), 1);
    within(0, part -> figures(part).speedsInGas().getMax(), RowFigures.FASTEST_OUT);
  }

  /** Ours, with nothing but that missing. */
  @Test
  void anOrificeThatAFileDoesNotGiveLetsTheRodOutAsFast() throws IOException {
    List<String> columns = new ArrayList<>(PartRow.columns(Family.GAS_SPRING));
    columns.remove("orifice_diameter_mm");
    StringBuilder text = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(text, RowFile.FORMAT)) {
      printer.printRecord(columns);
      for (Part part : parts) {
        printer.printRecord(PartRow.of(part).cells(columns));
      }
    }
    var read =
        RowFile.read(
            new StringReader(text.toString()),
            StockRow.COLUMNS,
            cells -> StockRow.read(cells, false).part());
    assertEquals(List.of(), read.faults());
    for (Part part : read.rows()) {
      assertEquals(List.of("orificeDiameterMm"), part.derived());
      var speeds = figures(part).speedsInGas();
      assertTrue(speeds.getMin() >= RowFigures.SLOWEST_OUT, part.description() + ": " + speeds);
      assertTrue(speeds.getMax() <= RowFigures.FASTEST_OUT, part.description() + ": " + speeds);
    }
  }

  /** At the most half as fast: our choice. */
  @Test
  void endDampedSpringsAreSlowerAtTheEnd() {
    for (Part part : parts) {
      if (part.damping().endZone() > 0) {
        double gas = figures(part).speedsInGas().getMin();
        double oil = figures(part).speedsInOil().getMax();
        assertTrue(oil < gas / 2, part.description() + ": " + oil + " after " + gas);
      }
    }
  }

  @Test
  void gasAndOilFillTheBoreBesideThePiston() {
    for (Part part : parts) {
      GasSpring spring = (GasSpring) part.spring();
      double length = spring.stroke() + Unit.MILLIMETRE.si(size(part).endMm());
      double together = spring.cylinder().gasVolume() + spring.cylinder().oilVolume();
      // Both are written to a hundredth of a millilitre.
      assertEquals(spring.cylinder().boreArea() * length, together, 0.011e-6, part.description());
    }
  }

  @Test
  void frictionAndToleranceFollowTheForce() {
    for (Part part : parts) {
      GasSpring spring = (GasSpring) part.spring();
      double friction = size(part).frictionN() + 0.02 * spring.force();
      assertEquals(friction, spring.friction(), 0.5, part.description());
      assertEquals(Math.max(15, 0.05 * spring.force()), part.forceTolerance(), 1);
    }
  }

  @Test
  void lengthsAddUp() {
    for (Part part : parts) {
      GasSpring spring = (GasSpring) part.spring();
      assertEquals(spring.extendedLength(), spring.compressedLength() + spring.stroke(), 1e-12);
    }
  }

  @Test
  void everyPriceBeginsAtOneAndFalls() {
    Stream.concat(parts.stream().map(Part::offer), fittings.stream().map(Fitting::offer))
        .forEach(
            offer -> {
              var breaks = offer.price().breaks();
              assertEquals(1, breaks.get(0).from());
              for (int i = 1; i < breaks.size(); i++) {
                assertTrue(breaks.get(i).each().compareTo(breaks.get(i - 1).each()) < 0);
              }
            });
  }

  static SpringSize size(Part part) {
    double rod = Unit.MILLIMETRE.of(part.spring().rodDiameter());
    return SpringSize.ALL.stream()
        .filter(size -> Math.abs(size.rodMm() - rod) < 1e-9)
        .findFirst()
        .orElseThrow();
  }

  private static RowFigures figures(Part part) {
    return new RowFigures(part, FittingPlan.socketLength(part.ends().rod()));
  }

  private static void within(double least, ToDoubleFunction<Part> figure, double most) {
    for (Part part : parts) {
      double value = figure.applyAsDouble(part);
      assertTrue(value >= least && value <= most, part.description() + ": " + value);
    }
  }

  private static String text(String name) throws IOException {
    return Files.readString(FOLDER.resolve(name), StandardCharsets.UTF_8);
  }
}
