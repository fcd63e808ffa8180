package org.staywright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.document.Stocked.ENGLISH;
import static org.staywright.document.Stocked.GERMAN;
import static org.staywright.document.Stocked.RANGE;

import java.io.IOException;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.staywright.document.job.JobSheet;
import org.staywright.document.job.Specification;
import org.staywright.document.order.PartsListPdf;
import org.staywright.document.order.QuotationRequest;
import org.staywright.fit.assess.Criteria;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.assess.Kept;
import org.staywright.fit.ideal.Ideal;
import org.staywright.fit.ideal.Ideal.Advice;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.job.Chosen;
import org.staywright.job.Orders;
import org.staywright.job.order.OrderLine;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Mechanism.Movement;
import org.staywright.mechanism.StraightLift;
import org.staywright.unit.Unit;
import org.staywright.wording.CornerText;
import org.staywright.wording.FigureText;
import org.staywright.wording.Wording;

/**
 * What papers say in numbers, held against the curves of the hand alone. Half of closing less
 * opening is what the springs and the load leave at the handle, (S + Q)/r: friction and hinge fall
 * out of it.
 */
class SaidFiguresTest {

  /** What a paper says most and least, in the words of each mechanism. */
  private record Words(String open, String close, String held, String latch, String shuts) {

    static Words of(Job job) {
      return switch (job.mechanism().code()) {
        case StraightLift.CODE ->
            new Words(
                "at most %s to lift",
                "at most %s to lower",
                "against its stop with at least %s (%s)",
                "%s along its way rest on the latch",
                "with %s along its way at worst");
        case ForceProfile.CODE ->
            new Words(
                "at most %s too little",
                "at most %s too much",
                "At the longest the set pushes at least %s more than asked (%s)",
                "the springs push %s more than asked at the shortest",
                "with %s along its way at worst");
        default ->
            new Words(
                "at most %s to open",
                "at most %s to close",
                "with at least %s at the handle (%s)",
                "%s at the handle rest on the latch",
                "with %s at the handle at worst");
      };
    }
  }

  private static final Chosen NEAR = Orders.nearLid(RANGE);

  private static final Map<String, String> SHEETS = new ConcurrentHashMap<>();

  static List<Sampled> sampled() {
    return Sampled.some();
  }

  @ParameterizedTest
  @MethodSource("sampled")
  void theHeadSaysTheGreatestOfTheCurvesWithPlaceAndCorner(Sampled of) throws IOException {
    FitCurve curve = FitCurve.of(of.job(), of.fit());
    Words words = Words.of(of.job());
    String text = sheet(of);
    WorstOfCurves.Worst open = WorstOfCurves.greatest(curve, FitCurve.Hand::open);
    WorstOfCurves.Worst close = WorstOfCurves.greatest(curve, FitCurve.Hand::close);
    said(text, words.open, most(open.value()));
    said(text, words.close, most(close.value()));
    boolean opening = open.value() >= close.value();
    WorstOfCurves.Worst most = opening ? open : close;
    Unit way = of.job().mechanism().movement() == Movement.TURNS ? Unit.DEGREE : Unit.MILLIMETRE;
    String place = ENGLISH.quantity(curve.travel().q()[most.sample()], way, 0);
    String where = ", at " + place + ", " + corner(of, most.corner());
    said(text, (opening ? words.open : words.close) + "%s", most(most.value()), where);
  }

  @ParameterizedTest
  @MethodSource("sampled")
  void theHeadSaysTheLeastThatHoldsItOpenOrThatItLeaves(Sampled of) throws IOException {
    FitCurve curve = FitCurve.of(of.job(), of.fit());
    int last = curve.travel().last();
    WorstOfCurves.Worst held = WorstOfCurves.leastHeld(curve, last);
    Words words = Words.of(of.job());
    String text = sheet(of);
    if (held.value() <= 0) {
      said(text, "up to %s push it off its stop, friction aside", most(-held.value()));
      said(text, "the load leaves it with %s", most(-held.value()));
    } else {
      boolean rests = text.contains("nothing closes the flap");
      String key = rests ? "%s at the handle hold it against its stop (%s)" : words.held;
      said(text, key, least(held.value()), corner(of, held.corner()));
    }
    assertEquals(held.value() <= 0, text.contains("Does not stay"), text);
    boolean barely = held.value() > 0 && held.value() < 5;
    assertEquals(
        barely, text.contains("Barely stays open") || text.contains("Barely stays at its"));
  }

  @ParameterizedTest
  @MethodSource("sampled")
  void theCautionsSayWhatPushesAtTheLatchAndWhatShuts(Sampled of) throws IOException {
    FitCurve curve = FitCurve.of(of.job(), of.fit());
    String text = sheet(of);
    Words words = Words.of(of.job());
    WorstOfCurves.Worst held = WorstOfCurves.leastHeld(curve, 0);
    double push = WorstOfCurves.greatestHeld(curve, 0);
    if (push > 0) {
      said(text, words.latch, most(push));
    } else {
      assertFalse(text.contains("on the latch"), text);
    }
    if (held.value() < 0) {
      said(text, words.shuts, most(-held.value()));
    } else {
      assertFalse(text.contains("by itself, with"), text);
    }
  }

  @ParameterizedTest
  @MethodSource("sampled")
  void theCautionOfOneSpringFailedSaysWhatOneSpringFewerLeaves(Sampled of) throws IOException {
    String text = sheet(of);
    if (of.fit().count() == 1) {
      return;
    }
    Fit fit = of.fit();
    Fit fewer =
        new Fit(
            fit.part(),
            fit.count() - 1,
            fit.rodFitting(),
            fit.tubeFitting(),
            fit.rodEndAt(),
            fit.outcome(),
            List.of(),
            null,
            0,
            0);
    FitCurve curve = FitCurve.of(of.job(), fewer);
    double held = WorstOfCurves.leastHeld(curve, curve.travel().last()).value();
    WorstOfCurves.Worst open = WorstOfCurves.greatest(curve, FitCurve.Hand::open);
    WorstOfCurves.Worst close = WorstOfCurves.greatest(curve, FitCurve.Hand::close);
    String hand = most(Math.max(open.value(), close.value()));
    if (held < 0) {
      said(text, "at worst it leaves its open stop with %s at the handle", most(-held));
      said(text, "and up to %s come on the hand", hand);
    } else {
      said(text, "hold the open flap with %s at the handle at worst", least(held));
      said(text, "up to %s then come on the hand", hand);
    }
  }

  @ParameterizedTest
  @MethodSource("sampled")
  void everyRequirementIsSaidWithItsCaseAndMetAsItsFiguresAre(Sampled of) throws IOException {
    for (Chosen chosen : List.of(of.chosen(), NEAR)) {
      String text = Printed.text(JobSheet.pdf(chosen, Orders.list(chosen), ENGLISH));
      Wording words = ENGLISH.about(chosen.job().mechanism().code());
      FigureText figures = FigureText.in(words);
      boolean missed = false;
      for (Kept kept : Criteria.kept(chosen.job(), chosen.fit())) {
        Unit unit = kept.criterion().unit(chosen.job().mechanism().movement());
        String worst = kept.corner() == null ? "" : CornerText.of(kept.corner(), words);
        String row =
            figures.label(kept.criterion())
                + figures.asked(kept, unit)
                + figures.has(kept, unit)
                + worst
                + (kept.met() ? "met" : "missed");
        assertTrue(text.replace(" ", "").contains(spaceless(row)), row + " in " + text);
        missed |= !kept.met();
      }
      assertEquals(missed, text.contains("missed"), text);
      assertEquals(missed, chosen.misfit() != null);
    }
  }

  /** Both ways, with the best of stock, with what would be made, and with none. */
  @ParameterizedTest
  @MethodSource("sampled")
  void aSpecificationSaysWhatEachAsksOfTheHand(Sampled of) throws IOException {
    Ideal ideal = of.ideal();
    String text = Printed.text(Specification.pdf(of.job(), ideal, ENGLISH));
    FitCurve made = FitCurve.of(of.job(), ideal.made());
    FitCurve stock = FitCurve.of(of.job(), ideal.stock());
    ToDoubleFunction<FitCurve> opening =
        curve -> WorstOfCurves.greatest(curve, FitCurve.Hand::open).value();
    ToDoubleFunction<FitCurve> closing =
        curve -> WorstOfCurves.greatest(curve, FitCurve.Hand::close).value();
    double bareOpen = ideal.bare().hand().openWorst().value();
    double bareClose = ideal.bare().hand().closeWorst().value();
    said(text, "%s", row(of, opening.applyAsDouble(made), opening.applyAsDouble(stock), bareOpen));
    said(text, "%s", row(of, closing.applyAsDouble(made), closing.applyAsDouble(stock), bareClose));
    double gain = WorstOfCurves.rms(stock) - WorstOfCurves.rms(made);
    said(text, "nominal%s%s", tenths(WorstOfCurves.rms(made)), tenths(WorstOfCurves.rms(stock)));
    boolean make = ideal.advice() == Advice.MAKE;
    assertEquals(make, text.startsWith("Specification of a spring to be made"), text);
    assertEquals(make, gain >= 0.5 || !ideal.stock().fits(), "" + gain);
    assertEquals(!make && gain > 0, text.contains("would gain less than 0.5 N"), text);
    assertEquals(!make && gain <= 0, text.contains("would gain nothing"), text);
  }

  @ParameterizedTest
  @MethodSource("sampled")
  void anAlternateIsToldByTheGreatestOfItsOwnCurves(Sampled of) throws IOException {
    Chosen chosen = of.chosen();
    OrderLine line = Orders.list(chosen).lines().get(0);
    Job shelf = chosen.job().fromShelf(chosen.choice().count(), 200);
    Fit other =
        Ranking.of(RANGE, shelf).fits().stream()
            .filter(fit -> fit.part().number().equals(line.alternate().part()))
            .findFirst()
            .orElseThrow();
    FitCurve curve = FitCurve.of(chosen.job(), other);
    double open = WorstOfCurves.greatest(curve, FitCurve.Hand::open).value();
    double close = WorstOfCurves.greatest(curve, FitCurve.Hand::close).value();
    String way =
        switch (chosen.job().mechanism().code()) {
          case StraightLift.CODE -> "at worst %s lifting and %s lowering";
          case ForceProfile.CODE -> "at worst %s too little and %s too much";
          case HingedFlap.CODE -> "at worst %s opening and %s closing";
          default -> throw new AssertionError();
        };
    String list = Printed.text(PartsListPdf.of(Orders.list(chosen), ENGLISH));
    said(list, way, most(Math.max(0, open)), most(Math.max(0, close)));
  }

  /** Of a job that is named in English nothing else is. */
  @ParameterizedTest
  @MethodSource("sampled")
  void noEnglishIsLeftInGermanPapers(Sampled of) throws IOException {
    Chosen chosen = of.chosen();
    for (byte[] pdf :
        List.of(
            JobSheet.pdf(chosen, Orders.list(chosen), GERMAN),
            PartsListPdf.of(Orders.list(chosen), GERMAN),
            QuotationRequest.pdf(Orders.list(chosen), GERMAN),
            Specification.pdf(of.job(), of.ideal(), GERMAN))) {
      String text = Printed.text(pdf).replace(chosen.job().name(), "").toLowerCase(Locale.ROOT);
      for (String english :
          List.of("spring", "stroke", "damped", "ball ", "stud", "clip", "zinc", "load", " the ")) {
        assertFalse(text.contains(english), english + " in " + text);
      }
    }
  }

  /** Printed once. */
  private static String sheet(Sampled of) throws IOException {
    String text = SHEETS.get(of.name());
    if (text == null) {
      Chosen chosen = of.chosen();
      text = Printed.text(JobSheet.pdf(chosen, Orders.list(chosen), ENGLISH));
      SHEETS.put(of.name(), text);
    }
    return text;
  }

  /** Cells stand apart by place alone. */
  private static String spaceless(String row) {
    return Printed.spaced(row).replace(" ", "");
  }

  private static void said(String text, String pattern, Object... gaps) {
    String said = Printed.spaced(String.format(pattern, gaps));
    assertTrue(text.contains(said), said + " in " + text);
  }

  private static String row(Sampled of, double made, double stock, double none) {
    return hand(of, made) + hand(of, stock) + hand(of, none);
  }

  private static String hand(Sampled of, double newtons) {
    boolean profile = of.job().mechanism() instanceof ForceProfile;
    return newtons > 0 ? most(newtons) : profile ? "none" : "by itself";
  }

  private static String corner(Sampled of, Corner corner) {
    return CornerText.of(corner, of.words(ENGLISH));
  }

  private static String most(double newtons) {
    return ENGLISH.quantity(newtons, Unit.NEWTON, 0, RoundingMode.CEILING);
  }

  private static String least(double newtons) {
    return ENGLISH.quantity(newtons, Unit.NEWTON, 0, RoundingMode.FLOOR);
  }

  private static String tenths(double newtons) {
    return ENGLISH.quantity(newtons, Unit.NEWTON, 1, RoundingMode.CEILING);
  }
}
