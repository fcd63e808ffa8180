package org.staywright.document.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.document.Stocked.ENGLISH;

import com.lowagie.text.pdf.PdfReader;
import java.io.IOException;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.staywright.document.Printed;
import org.staywright.document.chart.FitCharts;
import org.staywright.document.chart.LockedChart;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic;
import org.staywright.document.draw.Readings;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Svg;
import org.staywright.document.order.PartsListPdf;
import org.staywright.document.order.QuotationRequest;
import org.staywright.document.view.SideView;
import org.staywright.fit.SampleRange;
import org.staywright.fit.assess.SeatCurve;
import org.staywright.fit.job.SeatFigures;
import org.staywright.job.Chosen;
import org.staywright.job.Orders;
import org.staywright.job.order.PartsList;
import org.staywright.part.Family;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/** Documents and drawings of a seat on its column read back. */
class SeatDocumentsTest {

  private static final String STOOL =
      """
      {"name": "Workshop stool", "conditions": {"minC": 5, "maxC": 35},
       "load": {"type": "seat-column", "seatMassKg": 9, "sitterMassKg": {"min": 45, "max": 120},
                "heightTravelMm": 100}}
      """;

  private static final Chosen CHOSEN = Orders.best(STOOL, SampleRange.with(Family.SEAT_COLUMN));
  private static final PartsList LIST = Orders.list(CHOSEN);
  private static final Wording SEAT = ENGLISH.about("seat-column");

  @Test
  void theJobSheetSaysWhatItCarriesWhatIsMetAndHowAColumnIsSet() throws IOException {
    byte[] pdf = JobSheet.pdf(CHOSEN, LIST, ENGLISH);
    assertEquals(3, new PdfReader(pdf).getNumberOfPages());
    String text = Printed.text(pdf);
    for (String part :
        List.of(
            "Workshop stool",
            CHOSEN.part().number(),
            "Heaviest sitter",
            "Load on the lock beyond the open force",
            "Set the column into the foot",
            "no personal safety lock",
            "Signature")) {
      assertTrue(text.contains(part), part + " in " + text);
    }
    // (9 + 0.8·120) kg · 9.80665 m/s² = 1029.7 N
    assertTrue(
        text.contains(Printed.spaced(SEAT.text("seat.view.load", "120 kg", "1030 N"))), text);
    assertFalse(text.contains("end fitting on"), text);
    assertFalse(text.contains("missed"), text);
  }

  @Test
  void partsListAndRequestNameTheColumnAndNoFitting() throws IOException {
    for (byte[] pdf :
        List.of(PartsListPdf.of(LIST, ENGLISH), QuotationRequest.pdf(LIST, ENGLISH))) {
      String text = Printed.text(pdf);
      assertTrue(text.contains(CHOSEN.part().number()), text);
      assertFalse(text.contains("Ball socket"), text);
    }
    assertEquals(1, LIST.lines().size());
  }

  @Test
  void aColumnWithoutStrokeToSpareIsStillDrawn() {
    Drawing alone = SideView.of(CHOSEN.job().mechanism(), SEAT);
    Drawing fitted = SideView.of(CHOSEN.job(), CHOSEN.fit(), SEAT);
    assertTrue(fitted.shapes().size() > alone.shapes().size());
    assertTrue(Svg.of(fitted).contains("stroke left"));
    assertFalse(Svg.of(alone).contains("stroke left"));
  }

  @Test
  void theChartsAgreeWithTheFigures() {
    SeatFigures figures = CHOSEN.fit().seat().orElseThrow();
    SeatCurve curve = SeatCurve.of(CHOSEN.job(), CHOSEN.fit().part(), figures);
    SeatCurve.Give give = curve.give(CHOSEN.job(), CHOSEN.fit().part(), figures);
    int last = curve.height().length - 1;
    assertEquals(figures.bounce().low(), give.heavy()[0], 1e-9);
    assertEquals(figures.bounce().middle(), give.heavy()[last / 2], 1e-9);
    assertEquals(figures.bounce().high(), give.heavy()[last], 1e-9);
    // What the verdict says at most, no height of the curve exceeds.
    assertEquals(figures.greatestBounce(), Arrays.stream(give.heavy()).max().orElseThrow(), 1e-9);
    assertEquals(figures.travel(), curve.height()[last], 1e-12);
    // Fully out it pushes least: there it is that it must lift the empty seat, 9 kg · g.
    assertEquals(figures.risesEmpty(), curve.risingWeak()[last] / (9 * 9.80665), 1e-9);
    for (int i = 0; i <= last; i++) {
      assertTrue(curve.risingWeak()[i] < curve.rising()[i], "at " + i);
      assertTrue(curve.rising()[i] < curve.sinking()[i], "at " + i);
      assertTrue(curve.sinking()[i] < curve.sinkingStrong()[i], "at " + i);
      // On its stop it gives no more, whoever sits.
      double left = figures.stroke() - curve.compression()[i];
      assertTrue(give.light()[i] < Math.min(give.heavy()[i], left) || left == 0, "at " + i);
      assertTrue(give.heavy()[i] <= give.settled()[i], "at " + i);
    }
    assertTrue(give.heavy()[last] < give.settled()[last]);
  }

  /** The most that it gives, where the curve is highest, is marked and told rounded up. */
  @Test
  void theMostThatItGivesIsMarked() {
    SeatFigures figures = CHOSEN.fit().seat().orElseThrow();
    SeatCurve curve = SeatCurve.of(CHOSEN.job(), CHOSEN.fit().part(), figures);
    double[] heavy = curve.give(CHOSEN.job(), CHOSEN.fit().part(), figures).heavy();
    double most = Arrays.stream(heavy).max().orElseThrow();
    String told = ENGLISH.quantity(most, Unit.MILLIMETRE, 1, RoundingMode.CEILING);
    for (List<FitCharts.Chart> charts :
        List.of(
            FitCharts.of(CHOSEN.job(), CHOSEN.fit(), SEAT),
            FitCharts.forPaper(CHOSEN.job(), CHOSEN.fit(), SEAT))) {
      Drawing give = charts.get(1).drawing();
      Readings.Mark mark = give.readings().marks().get(0);
      assertEquals(Unit.MILLIMETRE.of(most), mark.y(), 1e-9);
      assertTrue(mark.name().startsWith(told), mark.name());
      assertTrue(give.description().contains("at most " + told + " at once"), give.description());
      assertTrue(Svg.of(give).contains(">" + told + "<"), told);
    }
  }

  @Test
  void noLetterOfItsSheetIsMuchSmallerThanTheSmallPrint() throws IOException {
    double smallest = Printed.smallest(JobSheet.pdf(CHOSEN, LIST, ENGLISH));
    assertTrue(smallest >= 6, "" + smallest);
  }

  @Test
  void dashedCurvesOfALockedColumnTakeTheColourOfTheirPlace() {
    Drawing drawing = LockedChart.forces(CHOSEN.part(), ENGLISH);
    var pathsOf =
        drawing.shapes().stream()
            .filter(Graphic.Path.class::isInstance)
            .collect(Collectors.groupingBy(Graphic::role, Collectors.counting()));
    for (Role role : List.of(Role.CURVE_1, Role.CURVE_2, Role.CURVE_3)) {
      assertTrue(pathsOf.get(role) > 10, role + ": " + pathsOf.get(role));
    }
    assertFalse(pathsOf.containsKey(Role.FAST));
  }
}
