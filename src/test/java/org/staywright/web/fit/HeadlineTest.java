package org.staywright.web.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.staywright.fit.SampleRange;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.assess.SeatCurve;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.LoadState;
import org.staywright.fit.job.SeatFigures;
import org.staywright.fit.job.SpringState;
import org.staywright.fit.job.Stay;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.job.JobForm;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.Mechanism;
import org.staywright.part.Family;
import org.staywright.part.Range;
import org.staywright.unit.Unit;
import org.staywright.web.query.Bench;
import org.staywright.web.start.Way;
import org.staywright.wording.Wording;

/**
 * A headline and the chart below it are one: its numbers are read back from its sentences, in
 * English and in German, and held against the curves, for every start card and every sample job.
 */
class HeadlineTest {

  private static final Range RANGE = SampleRange.with(Family.SEAT_COLUMN);

  /** What a page shows first. */
  private static final int ROWS = 8;

  private static final Pattern NUMBER = Pattern.compile("(\\d+(?:[.,]\\d+)?)\u00a0(N|mm)");

  /** How a language says it. */
  private record Tongue(
      Locale locale, String most, String at, Map<String, String> ways, Map<Object, String> states) {

    /** "at most 44 N to open, at 12°, hot and new, light load", its place told or not. */
    Pattern hand(String code, boolean opening, boolean placed) {
      String way = ways.get((opening ? "open." : "close.") + code);
      String place = ", " + at + " (\\d+)(?:°|\u00a0mm), ([^;.]+)[;.]";
      return Pattern.compile(most + " (\\d+)\u00a0N " + way + (placed ? place : ""));
    }

    String corner(Corner corner, boolean loaded) {
      String spring = states.get(corner.spring());
      return loaded ? spring + states.get(corner.load()) : spring;
    }
  }

  private static final Tongue ENGLISH =
      new Tongue(
          Locale.ENGLISH,
          "at most",
          "at",
          Map.of(
              "open.hinged-flap", "to open",
              "close.hinged-flap", "to close",
              "open.straight-lift", "to lift",
              "close.straight-lift", "to lower",
              "open.force-profile", "too little",
              "close.force-profile", "too much"),
          Map.of(
              SpringState.WEAK, "cold and aged",
              SpringState.STRONG, "hot and new",
              LoadState.HEAVY, ", heavy load",
              LoadState.LIGHT, ", light load"));

  private static final Tongue GERMAN =
      new Tongue(
          Locale.GERMAN,
          "höchstens",
          "bei",
          Map.of(
              "open.hinged-flap", "zum Öffnen",
              "close.hinged-flap", "zum Schließen",
              "open.straight-lift", "zum Heben",
              "close.straight-lift", "zum Senken",
              "open.force-profile", "zu wenig",
              "close.force-profile", "zu viel"),
          Map.of(
              SpringState.WEAK, "kalt und gealtert",
              SpringState.STRONG, "heiß und neu",
              LoadState.HEAVY, ", Last schwer",
              LoadState.LIGHT, ", Last leicht"));

  /** The greatest of a curve in any corner: one of all places where it comes to that. */
  private record Peak(double newtons, double travel, Corner corner) {

    static Peak of(FitCurve curve, boolean opening) {
      Peak peak = null;
      for (FitCurve.Hand hand : curve.corners()) {
        double[] forces = opening ? hand.open() : hand.close();
        for (int i = 0; i < forces.length; i++) {
          if (peak == null || forces[i] > peak.newtons) {
            peak = new Peak(forces[i], curve.travel().q()[i], hand.corner());
          }
        }
      }
      return peak;
    }
  }

  @TestFactory
  Stream<DynamicTest> agreesWithItsCurves() throws IOException {
    return jobs().stream()
        .flatMap(
            json ->
                Stream.of(ENGLISH, GERMAN)
                    .map(
                        tongue ->
                            DynamicTest.dynamicTest(
                                json.get("name").asText() + ", " + tongue.locale,
                                () -> agrees(JobForm.read(json), tongue))));
  }

  private static void agrees(Job job, Tongue tongue) {
    Ranking ranking = Ranking.of(RANGE, job);
    List<Fit> fits = ranking.fits().subList(0, Math.min(ROWS, ranking.fits().size()));
    assertTrue(!fits.isEmpty(), "nothing fits");
    for (Fit fit : fits) {
      Wording wording = Wording.of(tongue.locale).about(job.mechanism().code());
      FitWords words = FitWords.of(job, fit, wording);
      List<String> said = words.sentences();
      System.out.println(tongue.locale + " " + job.name() + ": " + said);
      if (fit.outcome() instanceof Figures) {
        FitCurve curve = FitCurve.of(job, fit);
        hand(job, curve, said.get(0), tongue);
        stays(open(curve), said.get(1));
        if (job.requirements().asks(Criterion.STAYS_SHUT)) {
          stays(shut(curve), said.get(2));
        }
        boolean asked = job.requirements().asks(Criterion.STAYS_SHUT);
        assertEquals(asked ? 3 : 2, said.size());
        boolean weak = open(curve) < Stay.LEAST_OPEN || asked && shut(curve) < Stay.LEAST_SHUT;
        assertEquals(weak ? "near" : "fits", words.verdict(), "the light beside " + said);
      } else {
        gives(job, fit, said);
      }
    }
  }

  private static void hand(Job job, FitCurve curve, String said, Tongue tongue) {
    Peak open = Peak.of(curve, true);
    Peak close = Peak.of(curve, false);
    boolean opening = open.newtons >= close.newtons;
    String code = job.mechanism().code();
    Matcher worst = tongue.hand(code, opening, true).matcher(said);
    assertTrue(worst.find(), said);
    Peak most = opening ? open : close;
    assertEquals(Math.ceil(most.newtons - 1e-6), Double.parseDouble(worst.group(1)), said);
    Unit way =
        job.mechanism().movement() == Mechanism.Movement.TURNS ? Unit.DEGREE : Unit.MILLIMETRE;
    double place = Double.parseDouble(worst.group(2));
    assertEquals(Math.floor(way.of(most.travel) + 0.5), place, 1e-9, said);
    boolean loaded = !code.equals(ForceProfile.CODE);
    assertEquals(tongue.corner(most.corner, loaded), worst.group(3), said);
    Peak less = opening ? close : open;
    Matcher other = tongue.hand(code, !opening, false).matcher(said);
    assertEquals(less.newtons > 0, other.find(), said);
    if (less.newtons > 0) {
      assertEquals(Math.ceil(less.newtons - 1e-6), Double.parseDouble(other.group(1)), said);
    }
  }

  /**
   * Half of what pushing in takes more than letting out gives is free of all friction: S + Q at the
   * handle, the least of the corners.
   */
  private static double open(FitCurve curve) {
    int last = curve.travel().last();
    return least(curve, hand -> (hand.close()[last] - hand.open()[last]) / 2);
  }

  /** The same at the other end, the other way. */
  private static double shut(FitCurve curve) {
    return least(curve, hand -> (hand.open()[0] - hand.close()[0]) / 2);
  }

  private static double least(FitCurve curve, ToDoubleFunction<FitCurve.Hand> of) {
    return curve.corners().stream().mapToDouble(of).min().orElseThrow();
  }

  /** Never more than there is, and not a newton less; below zero, what pushes it off. */
  private static void stays(double newtons, String said) {
    BigDecimal told = first(said);
    boolean away = said.matches(".*(not stay|nicht von selbst|less than asked|weniger als).*");
    assertEquals(newtons < 0, away && !said.matches(".*(shortest|kleinsten).*"), said);
    RoundingMode rounding = newtons < 0 ? RoundingMode.CEILING : RoundingMode.FLOOR;
    double size = Math.abs(newtons);
    double noise = newtons < 0 ? -1e-7 : 1e-7;
    assertEquals(
        0,
        BigDecimal.valueOf(size + noise).setScale(told.scale(), rounding).compareTo(told),
        newtons + ": " + said);
  }

  private static void gives(Job job, Fit fit, List<String> said) {
    SeatFigures figures = fit.seat().orElseThrow();
    SeatCurve.Give give = SeatCurve.of(job, fit.part(), figures).give(job, fit.part(), figures);
    double most = Unit.MILLIMETRE.of(Arrays.stream(give.heavy()).max().orElseThrow());
    double told = first(said.get(1)).doubleValue();
    assertTrue(told >= most - 1e-6 && told < most + 0.1, told + " of " + most);
  }

  private static BigDecimal first(String said) {
    Matcher number = NUMBER.matcher(said);
    assertTrue(number.find(), said);
    return new BigDecimal(number.group(1).replace(',', '.'));
  }

  /** Of the start cards, the benches and the samples. */
  private static List<JsonNode> jobs() throws IOException {
    List<JsonNode> jobs = new ArrayList<>();
    for (Way way : Way.values()) {
      jobs.add(way.job());
    }
    for (Bench bench : Bench.values()) {
      jobs.add(read("/jobs" + bench.path() + ".json"));
    }
    read("/catalog-data/sample-jobs.json").forEach(jobs::add);
    return jobs;
  }

  private static JsonNode read(String file) throws IOException {
    try (InputStream in = HeadlineTest.class.getResourceAsStream(file)) {
      return new ObjectMapper().readTree(in);
    }
  }
}
