package org.staywright.document.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.document.Stocked.ENGLISH;
import static org.staywright.document.Stocked.GERMAN;

import java.io.IOException;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.staywright.document.Printed;
import org.staywright.document.Stocked;
import org.staywright.document.chart.HandForceChart;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Svg;
import org.staywright.document.order.OrderLines;
import org.staywright.document.order.PartsListCsv;
import org.staywright.document.order.PartsListPdf;
import org.staywright.document.order.QuotationRequest;
import org.staywright.document.view.SideView;
import org.staywright.fit.SampleRange;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.ideal.Ideal;
import org.staywright.form.Jobs;
import org.staywright.job.Chosen;
import org.staywright.job.Orders;
import org.staywright.job.order.PartsList;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.spring.Damper;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;

/** What acts beside the springs is drawn and named wherever they are. */
class BesidePapersTest {

  private static final Chosen DAMPED = lid(SampleRange.with(Family.DAMPER), Family.DAMPER, 1, 300);
  private static final Part DAMPER = DAMPED.job().beside().get(0).part();
  private static final String NAMED = "1 × " + DAMPER.number() + " (damper)";

  /** So strong that it opens by itself all the way. */
  private static final Chosen PAIRED = lid(Stocked.RANGE, Family.GAS_SPRING, 2, 330);

  @Test
  void theJobSheetNamesADamperInItsHeadItsMountsItsViewAndItsLines() throws IOException {
    String sheet = printed(JobSheet.pdf(DAMPED, Orders.list(DAMPED), ENGLISH));
    assertTrue(sheet.contains("Together with " + NAMED), sheet);
    assertTrue(sheet.contains("Beside: " + NAMED), sheet);
    assertTrue(sheet.contains("x 300.0, y −11.0"), sheet);
    Drawing view = SideView.of(DAMPED.job(), DAMPED.fit(), ENGLISH);
    assertTrue(Svg.of(view).contains(">damper<"));
    assertTrue(view.description().endsWith("Beside: " + NAMED + "."), view.description());
  }

  @Test
  void theSpecificationOfASpringForTheSameJobNamesItToo() throws IOException {
    Ideal ideal = Ideal.of(DAMPED.job(), DAMPED.range());
    String text = printed(Specification.pdf(DAMPED.job(), ideal, ENGLISH));
    assertTrue(text.contains("Together with " + NAMED), text);
    assertTrue(text.contains("Beside: " + NAMED), text);
  }

  @Test
  void listsQuotationsAndMailsOrderItByWhatItResistsWith() throws IOException {
    PartsList list = Orders.list(DAMPED);
    Damper damper = (Damper) DAMPER.spring();
    double speed = damper.compressing().speed();
    String resists =
        "resists with %s pushed in and %s coming out, at %s"
            .formatted(
                ENGLISH.measure(damper.force(speed), Unit.NEWTON, 0),
                ENGLISH.measure(-damper.force(-speed), Unit.NEWTON, 0),
                ENGLISH.measure(speed, Unit.MILLIMETRE_PER_SECOND, 0));
    for (String text :
        List.of(
            printed(PartsListPdf.of(list, ENGLISH)),
            printed(QuotationRequest.pdf(list, ENGLISH)),
            OrderLines.of(list, ENGLISH),
            PartsListCsv.of(list, ENGLISH))) {
      assertTrue(text.contains(DAMPER.number()), text);
      assertTrue(Printed.spaced(text).contains(Printed.spaced(resists)), resists + " in " + text);
    }
    String printed = printed(PartsListPdf.of(list, ENGLISH));
    assertTrue(printed.contains(" + " + NAMED), printed);
  }

  @Test
  void furtherSpringsAreNamedAndMayHoldWhatTheOnlyOneOfASetDoesNot() throws IOException {
    String pair = "2 × " + PAIRED.job().beside().get(0).part().number();
    PartsList list = Orders.list(PAIRED);
    String sheet = printed(JobSheet.pdf(PAIRED, list, ENGLISH));
    assertEquals(1, PAIRED.choice().count());
    assertTrue(sheet.contains("Together with " + pair + " (further spring)"), sheet);
    assertFalse(sheet.contains("nothing else holds"), sheet);
    assertTrue(sheet.contains("Should one spring fail, the others"), sheet);
    String german = printed(JobSheet.pdf(PAIRED, list, GERMAN));
    assertTrue(german.contains("Zusammen mit " + pair + " (weitere Feder)"), german);
  }

  @Test
  void whatOpensByItselfAllTheWayIsNotSaidToNeedAHand() throws IOException {
    double[] open = FitCurve.of(PAIRED.job(), PAIRED.fit()).openMost();
    double most = Arrays.stream(open).max().orElseThrow();
    assertTrue(most < 0, "" + most);
    int at = IntStream.range(0, open.length).filter(i -> open[i] == most).findFirst().orElseThrow();
    double q = FitCurve.of(PAIRED.job(), PAIRED.fit()).travel().q()[at];
    String said =
        "opening: by itself, with %s or more, least at %s, "
            .formatted(
                ENGLISH.quantity(-most, Unit.NEWTON, 0, RoundingMode.FLOOR),
                ENGLISH.quantity(q, Unit.DEGREE, 0));
    Drawing chart =
        HandForceChart.of(
            PAIRED.job(), PAIRED.fit(), PAIRED.fit().figures().orElseThrow(), ENGLISH);
    assertTrue(chart.description().contains(said), said + " in " + chart.description());
    assertTrue(chart.description().contains("Nominal at most 0"), chart.description());
    String sheet = printed(JobSheet.pdf(PAIRED, Orders.list(PAIRED), ENGLISH));
    assertTrue(sheet.contains(Printed.spaced(said)), sheet);
    assertTrue(sheet.contains("the flap opens by itself all the way"), sheet);
    assertFalse(sheet.contains("at worst −"), sheet);
  }

  /** The lid with the first of a family that spans its travel on mounts of its own. */
  private static Chosen lid(Range range, Family family, int count, int x) {
    for (int row = 0; row < range.size(); row++) {
      if (range.family(row) == family) {
        try {
          return Orders.best(
              Jobs.LID.replace(
                  "\"springCounts\"",
                  """
                  "beside": [{"partNumber": "%s", "count": %d, "mounts":
                    {"frameMm": {"x": 15, "y": -65}, "movingMm": {"x": %d, "y": -11}}}],
                  "springCounts\""""
                      .formatted(range.number(row), count, x)),
              range);
        } catch (Refusal tooShort) {
          // The next one may span it.
        }
      }
    }
    throw new AssertionError("none spans the travel");
  }

  /** Numbers broken at their dash are put together again. */
  private static String printed(byte[] pdf) throws IOException {
    return Printed.text(pdf).replace("- ", "-");
  }
}
