package org.staywright.document.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.document.Stocked.ENGLISH;
import static org.staywright.document.Stocked.GERMAN;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.staywright.document.Printed;
import org.staywright.document.Sampled;
import org.staywright.document.draw.Box;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic;
import org.staywright.document.draw.Readings;
import org.staywright.document.draw.Role;
import org.staywright.document.view.SideView;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Extreme;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.mechanism.Mechanism.Movement;
import org.staywright.mechanism.Point;
import org.staywright.unit.Unit;
import org.staywright.wording.CornerText;
import org.staywright.wording.Wording;

/** The chart of the hand force beside the curves and figures it is drawn from. */
class HandForceChartTest {

  static List<Sampled> sampled() {
    return Sampled.all();
  }

  @ParameterizedTest
  @MethodSource("sampled")
  void marksTheWorstPointOfEitherWayAndNothingLiesAboveIt(Sampled of) {
    FitCurve curve = FitCurve.of(of.job(), of.fit());
    Figures.Hand hand = of.fit().figures().orElseThrow().hand();
    assertEquals(greatest(curve.openMost()), hand.openWorst().value(), 1e-9);
    assertEquals(greatest(curve.closeMost()), hand.closeWorst().value(), 1e-9);
    Drawing chart =
        HandForceChart.of(of.job(), of.fit(), of.fit().figures().orElseThrow(), of.words(ENGLISH));
    List<Point> marks = circles(chart, Role.MARK);
    assertEquals(2, marks.size());
    assertEquals(top(chart, Role.BAND_2), marks.get(0).y(), 1e-9);
    assertEquals(top(chart, Role.BAND_3), marks.get(1).y(), 1e-9);
    assertEquals(List.of(marks.get(0)), circles(chart, Role.CURVE_2));
    assertEquals(List.of(marks.get(1)), circles(chart, Role.CURVE_3));
    List<Readings.Mark> told = chart.readings().marks();
    assertEquals(hand.openWorst().value(), told.get(0).y());
    assertEquals(hand.closeWorst().value(), told.get(1).y());
    for (Readings.Mark mark : told) {
      assertTrue(chart.description().contains(mark.name()), mark.name());
    }
  }

  @ParameterizedTest
  @MethodSource("sampled")
  void saysPlaceNewtonsAndCornerOfBothOnScreenAndPaper(Sampled of) {
    Wording words = of.words(ENGLISH);
    Figures.Hand hand = of.fit().figures().orElseThrow().hand();
    for (Drawing chart :
        List.of(
            HandForceChart.of(of.job(), of.fit(), of.fit().figures().orElseThrow(), words),
            HandForceChart.forPaper(of.job(), of.fit(), of.fit().figures().orElseThrow(), words))) {
      for (Extreme worst : List.of(hand.openWorst(), hand.closeWorst())) {
        Unit way =
            of.job().mechanism().movement() == Movement.TURNS ? Unit.DEGREE : Unit.MILLIMETRE;
        String said =
            "at worst "
                + words.quantity(worst.value(), Unit.NEWTON, 0, RoundingMode.CEILING)
                + " at "
                + words.quantity(worst.travel(), way, 0)
                + ", "
                + CornerText.of(worst.corner(), words);
        assertTrue(texts(chart).stream().anyMatch(text -> text.text().endsWith(said)), said);
        assertTrue(chart.description().contains(said), chart.description());
      }
      assertTrue(chart.description().contains("Nominal at most"), chart.description());
    }
  }

  @ParameterizedTest
  @MethodSource("sampled")
  void labelsStayClearOfEachOtherAndInTheDrawing(Sampled of) {
    for (Wording wording : List.of(ENGLISH, GERMAN)) {
      Wording words = of.words(wording);
      for (Drawing chart :
          List.of(
              HandForceChart.of(of.job(), of.fit(), of.fit().figures().orElseThrow(), words),
              HandForceChart.forPaper(
                  of.job(), of.fit(), of.fit().figures().orElseThrow(), words))) {
        List<Graphic.Text> texts = texts(chart);
        for (int i = 0; i < texts.size(); i++) {
          Box box = texts.get(i).bounds();
          assertTrue(chart.box().contains(new Point(box.left(), box.bottom())), texts.toString());
          assertTrue(chart.box().contains(new Point(box.right(), box.top())), texts.toString());
          for (int j = 0; j < i; j++) {
            assertFalse(box.meets(texts.get(j).bounds()), texts.get(i) + " " + texts.get(j));
          }
          for (Point mark : circles(chart, Role.MARK)) {
            assertFalse(box.contains(mark), texts.get(i).toString());
          }
        }
      }
    }
  }

  @Test
  void eitherWayHasItsLimitWhereTheyDiffer() {
    Sampled lid = Sampled.of("level-lid");
    Job two =
        lid.job()
            .asking(
                lid.job()
                    .requirements()
                    .with(Criterion.HAND_OPEN, 30.0)
                    .with(Criterion.HAND_CLOSE, 45.0));
    Drawing chart = HandForceChart.of(two, lid.fit(), lid.fit().figures().orElseThrow(), ENGLISH);
    assertEquals(
        List.of(30.0, 45.0),
        chart.readings().levels().stream().map(Readings.Level::value).sorted().toList());
    String said = Printed.spaced(chart.description());
    assertTrue(said.contains("the limit is 30 N / 45 N"), said);
  }

  @ParameterizedTest
  @MethodSource("sampled")
  void theSmallCurvesAreThoseOfTheirNumbers(Sampled of) {
    Wording words = of.words(ENGLISH);
    Drawing small = Sparkline.of(FitCurve.of(of.job(), of.fit()), 1000, words);
    Figures.Hand hand = of.fit().figures().orElseThrow().hand();
    assertTrue(small.description().startsWith("At worst "), small.description());
    for (Extreme worst : List.of(hand.openWorst(), hand.closeWorst())) {
      String newtons = words.quantity(worst.value(), Unit.NEWTON, 0, RoundingMode.CEILING);
      assertTrue(small.description().contains(newtons), small.description());
    }
    // A thousandth of the limit is so high; every other sample is drawn.
    double newton = 2.6 / 4 / 1000;
    double drawn = (top(small, Role.CURVE_2) - 1.3) / newton;
    assertTrue(drawn <= hand.openWorst().value() + 1e-9, small.description());
  }

  @Test
  void whatIsAskedOfAProfileIsPushedBetweenItsLeastAndItsMost() {
    Sampled roof = Sampled.of("Pop-up roof, forces from its linkage");
    List<Readings.Series> series =
        SideView.of(roof.job(), roof.fit(), roof.words(ENGLISH)).readings().series();
    for (String way : List.of("coming out", "pushed in")) {
      double[] least = named(series, way + ", least in any corner");
      double[] nominal = named(series, way + ", nominal");
      double[] most = named(series, way + ", most in any corner");
      for (int i = 0; i < nominal.length; i++) {
        assertTrue(least[i] < nominal[i] && nominal[i] < most[i], way + " at " + i);
      }
    }
  }

  private static double[] named(List<Readings.Series> series, String name) {
    return series.stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError(name + " not in " + series))
        .ys();
  }

  private static List<Graphic.Text> texts(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Graphic.Text.class::isInstance)
        .map(Graphic.Text.class::cast)
        .toList();
  }

  private static List<Point> circles(Drawing drawing, Role role) {
    List<Point> centres = new ArrayList<>();
    for (Graphic shape : drawing.shapes()) {
      if (shape instanceof Graphic.Circle circle && circle.role() == role) {
        centres.add(circle.centre());
      }
    }
    return centres;
  }

  /** Of all lines and areas of a role. */
  private static double top(Drawing drawing, Role role) {
    return drawing.shapes().stream()
        .filter(shape -> shape.role() == role && shape instanceof Graphic.Path)
        .mapToDouble(shape -> shape.bounds().top())
        .max()
        .orElseThrow();
  }

  private static double greatest(double[] forces) {
    return Arrays.stream(forces).max().orElseThrow();
  }
}
