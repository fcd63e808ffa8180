package org.staywright.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.assess.InTime;
import org.staywright.fit.job.Beside;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Extreme;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.fit.time.Chance;
import org.staywright.fit.time.Uncertainties;
import org.staywright.form.job.JobForm;
import org.staywright.form.schema.JsonText;
import org.staywright.mechanism.SeatColumn;
import org.staywright.mechanism.Travel;
import org.staywright.motion.Motion;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.part.Range;

/**
 * A verdict says no more than its figures: what fits is held against its own curves, its motion and
 * its chance, in every corner; two ways to the same truth must agree. Another draw with
 * -Dstaywright.seed=….
 */
class VerdictTest {

  private static final long SEED = 20_261_130;
  private static final int JOBS = 30;

  /** Of each job so many fits are moved and drawn. */
  private static final int LOOKED_AT = 3;

  private static final Range RANGE = range();

  private final long seed = Long.getLong("staywright.seed", SEED);

  private static Range range() {
    List<Part> parts = new ArrayList<>();
    for (Family family :
        List.of(Family.GAS_SPRING, Family.TRACTION_SPRING, Family.COIL_SPRING, Family.DAMPER)) {
      parts.addAll(SampleRange.parts(family));
    }
    return Range.of(1, parts, SampleRange.read().fittings());
  }

  @ParameterizedTest
  @EnumSource
  void whatFitsDoesInEveryCorner(RandomFlaps kind) {
    int fits = 0;
    for (int i = 0; i < JOBS; i++) {
      Random random = new Random(seed + i);
      Job job = kind.draw(random, RANGE);
      if (job.mechanism().faults().isEmpty()) {
        fits += holdsWhatItSays(job, kind + ", seed " + (seed + i));
      }
    }
    System.out.println("VerdictTest " + kind + " seed " + seed + ": " + fits + " fits");
    // Whether a draw brings anything about is asked of the fixed one alone.
    assertTrue(fits > 0 || seed != SEED, "nothing fits");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "hinge-at-top",
        "hinge-at-bottom",
        "level-lid",
        "overhead",
        "folding-bed",
        "upright-guard",
        "lift-on-a-line"
      })
  void soDoesWhatTheStartCardsFind(String way) throws IOException {
    try (var in = VerdictTest.class.getResourceAsStream("/ways/" + way + ".json")) {
      Job job = JobForm.read(JsonText.read(in.readAllBytes()).tree(), RANGE);
      assertTrue(holdsWhatItSays(job, way) > 0, "nothing fits");
    }
  }

  @Test
  void soDoesWhatTheSampleJobsFind() throws IOException {
    try (var in = VerdictTest.class.getResourceAsStream("/catalog-data/sample-jobs.json")) {
      for (JsonNode tree : new ObjectMapper().readTree(in)) {
        Job job = JobForm.read(tree, RANGE);
        if (!(job.mechanism() instanceof SeatColumn)) {
          holdsWhatItSays(job, job.name());
        }
      }
    }
  }

  /**
   * @return how many fit
   */
  private static int holdsWhatItSays(Job job, String where) {
    Ranking ranking = Ranking.of(RANGE, job);
    for (Fit fit : ranking.fits()) {
      String what = where + ": " + fit.count() + " × " + fit.part().number();
      curvesKeepTheirLimits(job, fit, what);
      staysShutWhereAsked(job, fit, what);
    }
    boolean held =
        job.requirements().limit(Criterion.HOLD_RATIO) >= 1
            && job.mechanism().inertia().isPresent();
    if (held) {
      for (Fit fit : ranking.fits().subList(0, Math.min(LOOKED_AT, ranking.fits().size()))) {
        String what = where + ": " + fit.count() + " × " + fit.part().number();
        staysOpenByItself(job, fit, what);
        holdsByChance(job, fit, what);
      }
    }
    return ranking.fitsTotal();
  }

  /** The headline's numbers are the greatest of the curves, and where they say. */
  private static void curvesKeepTheirLimits(Job job, Fit fit, String what) {
    FitCurve curve = FitCurve.of(job, fit);
    Figures.Hand hand = fit.figures().orElseThrow().hand();
    greatest(curve, true, hand.openWorst(), job.requirements().handOpenLimit(), what);
    greatest(curve, false, hand.closeWorst(), job.requirements().handCloseLimit(), what);
  }

  private static void greatest(
      FitCurve curve, boolean opening, Extreme said, double limit, String what) {
    double most = Double.NEGATIVE_INFINITY;
    double there = Double.NaN;
    for (FitCurve.Hand corner : curve.corners()) {
      double[] forces = opening ? corner.open() : corner.close();
      for (int i = 0; i < forces.length; i++) {
        assertTrue(forces[i] <= limit, what + " needs " + forces[i] + ", " + limit + " allowed");
        most = Math.max(most, forces[i]);
        if (corner.corner().equals(said.corner()) && curve.travel().q()[i] == said.travel()) {
          there = forces[i];
        }
      }
    }
    assertEquals(most, said.value(), 1e-9 * Math.max(1, Math.abs(most)), what);
    assertEquals(most, there, 1e-9 * Math.max(1, Math.abs(most)), what + " elsewhere");
  }

  /** The moment of the springs and of the load at the start, from nothing but the force law. */
  private static void staysShutWhereAsked(Job job, Fit fit, String what) {
    if (!job.requirements().asks(Criterion.STAYS_SHUT)) {
      return;
    }
    Travel travel = job.mechanism().travel(job.mechanism().end());
    for (Corner corner : Corner.ALL) {
      double kelvin = corner.spring().kelvin(job.conditions());
      double opening = corner.load().of(travel)[0];
      opening +=
          push(
                  fit.part(),
                  fit.count(),
                  fit.figures().orElseThrow().lengths().extended(),
                  corner,
                  job)
              .at(travel.length()[0], travel.lever()[0], kelvin);
      for (Beside beside : job.beside()) {
        opening +=
            push(beside.part(), beside.count(), beside.extended(), corner, job)
                .at(beside.mechanism().length(0), beside.mechanism().lever(0), kelvin);
      }
      assertTrue(opening < 0, what + " is pushed open with " + opening + " in " + corner);
    }
  }

  private interface Push {
    double at(double length, double lever, double kelvin);
  }

  private static Push push(Part part, int count, double extended, Corner corner, Job job) {
    return (length, lever, kelvin) ->
        count
            * corner.spring().law(part, job.conditions()).force(extended - length, kelvin)
            * lever;
  }

  /** Let go open, by nobody's hand, it must not leave its stop in any corner. */
  private static void staysOpenByItself(Job job, Fit fit, String what) {
    InTime moving = new InTime(job, fit);
    for (Corner corner : Corner.ALL) {
      Motion motion = Motion.of(moving.scene(corner));
      double end = job.mechanism().end();
      assertEquals(end, motion.endQ(), 1e-6, what + " leaves its stop in " + corner);
    }
  }

  /** Strayed by what the corners stray by: nineteen of twenty hold. */
  private static void holdsByChance(Job job, Fit fit, String what) {
    Uncertainties usual = Uncertainties.usual(job, fit.part());
    Uncertainties corners =
        new Uncertainties(usual.force(), 0, usual.mass(), 0, 0, usual.temperature(), 0);
    double holds = Chance.of(job, fit, corners, 1000, 1).holds();
    assertTrue(holds >= 0.95, what + " holds by " + holds);
  }
}
