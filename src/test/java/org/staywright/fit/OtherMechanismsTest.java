package org.staywright.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.staywright.Effort;
import org.staywright.fit.assess.Blocker;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.rank.Ranking;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.StraightLift;
import org.staywright.mechanism.Travel;
import org.staywright.part.Range;
import org.staywright.spring.ForceLaw;

/** Straight lift and force profile judged: in closed form, and one mechanism as another. */
class OtherMechanismsTest {

  /** Fixed, as the least buckling factor of other samples may fall on the other side of a bound. */
  private static final long SEED = 20261125;

  private final long seed = Long.getLong("staywright.seed", SEED);

  private static final Range RANGE = RandomRange.of(new Random(7), 3000);

  /** What nothing but the hand force could tell apart is left to the hand. */
  private static final double ANY_HAND = 1e6;

  /**
   * Straight up, the spring along the line: the hand lifts what the weight and both frictions take
   * beyond the gas, F_open = m·g + M_f − n·(F_gas(x₀ − q) − f), and lowers the reverse.
   */
  @Test
  void aVerticalLiftWithItsSpringAlongTheLineIsWeightLessSpring() {
    StraightLift lift =
        new StraightLift(
            new Masses(20, 21, 17),
            0.2,
            Math.PI / 2,
            12,
            new Mounts(new Point(0, 0), new Point(0, 0.45), 0, RodEnd.EITHER));
    Job job = job(lift, RankBy.LOWEST_COST, ANY_HAND, 0);
    List<Fit> fits = Ranking.of(RANGE, job).fits();
    assertTrue(!fits.isEmpty());
    for (Fit fit : fits) {
      FitCurve curve = FitCurve.of(job, fit);
      ForceLaw spring = fit.part().spring().law();
      double kelvin = job.conditions().nominal();
      double rub = spring.spring().friction(kelvin);
      for (int i = 0; i <= 60; i++) {
        double x = fit.figures().orElseThrow().lengths().extended() - 0.45 - 0.2 * i / 60;
        double gas = spring.force(x, kelvin);
        double up = 20 * 9.80665 + 12 - fit.count() * (gas - rub);
        double down = fit.count() * (gas + rub) - 20 * 9.80665 + 12;
        assertEquals(up, curve.nominal().open()[i], 1e-6);
        assertEquals(down, curve.nominal().close()[i], 1e-6);
      }
      double weak = fit.count() * gasForceWeak(job, fit, 0.65) / (21 * 9.80665);
      assertEquals(weak, fit.figures().orElseThrow().hold().ratio().value(), 1e-9);
      assertEquals(
          20 * 9.80665
              - fit.count()
                  * spring.force(fit.figures().orElseThrow().lengths().extended() - 0.45, kelvin),
          fit.figures().orElseThrow().hold().closed(),
          1e-6);
    }
  }

  private static double gasForceWeak(Job job, Fit fit, double length) {
    double left =
        fit.part().wear().gasLeft(job.conditions().years(), job.conditions().cyclesPerYear());
    double filled = 1 - fit.part().forceTolerance() / fit.part().spring().force();
    return fit.part()
        .spring()
        .law(filled, left)
        .force(
            fit.figures().orElseThrow().lengths().extended() - length, job.conditions().coldest());
  }

  @Test
  void aLevelLiftHasNothingToHold() {
    StraightLift lift =
        new StraightLift(
            new Masses(20, 21, 17),
            0.2,
            0,
            12,
            new Mounts(new Point(0, 0), new Point(0.45, 0), 0, RodEnd.EITHER));
    Job job = job(lift, RankBy.LOWEST_COST, ANY_HAND, 1.1);
    Ranking ranking = Ranking.of(RANGE, job);
    // Friction of 12 N holds it and any hand moves it: a spring could only make it harder.
    assertFalse(ranking.springNeeded());
    assertEquals(12, ranking.bare().hand().worst(), 1e-9);
    assertEquals(0, ranking.fitsTotal());
    assertTrue(ranking.nearTotal() > 0);
    for (Fit near : ranking.near()) {
      assertNull(near.figures().orElseThrow().hold().ratio());
      assertTrue(
          near.blockedBy().stream().anyMatch(by -> by.criterion() == Criterion.NO_GAIN),
          near.blockedBy().toString());
    }
  }

  /**
   * A table of −Q/L′ over L, taken from a flap whose spring lengthens all the way, asks of the
   * springs what the flap asks: every part meets the same verdict for the same reason, in the same
   * order by cost or time, with the same hold ratio, lengths, pressure, mount load and buckling.
   * Only what the hand feels differs, by the lever: F_profile = F_flap·r/L′ (hinge friction 0).
   */
  @Test
  void aProfileMadeFromAFlapGivesTheFlapsOwnRanking() {
    System.out.println("OtherMechanismsTest seed " + seed);
    int compared = 0;
    int fits = 0;
    for (int i = 0; compared < Effort.of(12, 2); i++) {
      Random random = new Random(seed + i);
      HingedFlap flap = lengthening(random);
      if (flap == null) {
        continue;
      }
      ForceProfile profile = profile(flap);
      for (RankBy order : List.of(RankBy.LOWEST_COST, RankBy.SOONEST)) {
        Ranking own = Ranking.of(RANGE, job(flap, order, ANY_HAND, 1.1));
        Ranking made = Ranking.of(RANGE, job(profile, order, ANY_HAND, 1.1));
        String where = "seed " + (seed + i) + ", " + order;
        assertEquals(own.rejected(), made.rejected(), where);
        assertEquals(own.fitsTotal(), made.fitsTotal(), where);
        assertEquals(own.nearTotal(), made.nearTotal(), where);
        same(flap, own.fits(), made.fits(), where);
        // What is near is ordered by the score in the end, which the hand has a share in.
        same(flap, named(own.near()), named(made.near()), where);
        fits += own.fits().size();
      }
      compared++;
    }
    if (seed == SEED && Effort.FULL) {
      assertTrue(fits > 20, "only " + fits + " fits to compare");
    }
  }

  private static void same(HingedFlap flap, List<Fit> own, List<Fit> made, String where) {
    assertEquals(names(own), names(made), where);
    for (int i = 0; i < own.size(); i++) {
      Figures a = own.get(i).figures().orElseThrow();
      Figures b = made.get(i).figures().orElseThrow();
      assertEquals(
          a.hold().ratio().value(),
          b.hold().ratio().value(),
          1e-9 * a.hold().ratio().value(),
          where);
      assertEquals(a.lengths().closed(), b.lengths().closed(), 1e-12, where);
      assertEquals(a.lengths().open(), b.lengths().open(), 1e-12, where);
      assertEquals(a.lengths().compressedReserve(), b.lengths().compressedReserve(), 1e-12, where);
      assertEquals(a.lengths().extendedReserve(), b.lengths().extendedReserve(), 1e-12, where);
      assertEquals(a.peakPressure(), b.peakPressure(), 1e-9 * a.peakPressure(), where);
      assertEquals(
          a.strength().peakMountLoad(),
          b.strength().peakMountLoad(),
          1e-9 * a.strength().peakMountLoad(),
          where);
      // The least of another 61 lengths.
      assertEquals(a.bucklingFactor(), b.bucklingFactor(), 1e-3 * a.bucklingFactor(), where);
      Travel travel = flap.travel(flap.end());
      assertEquals(a.hold().closed(), b.hold().closed() * travel.lever()[0], 1e-6, where);
      hands(flap, own.get(i), made.get(i), where);
    }
  }

  /** At both ends, which both sample. */
  private static void hands(HingedFlap flap, Fit own, Fit made, String where) {
    FitCurve a = FitCurve.of(job(flap, RankBy.SOONEST, ANY_HAND, 1.1), own);
    FitCurve b = FitCurve.of(job(profile(flap), RankBy.SOONEST, ANY_HAND, 1.1), made);
    Travel travel = a.travel();
    for (int i : new int[] {0, travel.last()}) {
      double ratio = travel.hand() / travel.lever()[i];
      assertEquals(a.nominal().open()[i] * ratio, b.nominal().open()[i], 1e-6, where);
      assertEquals(a.nominal().close()[i] * ratio, b.nominal().close()[i], 1e-6, where);
      assertEquals(a.openMost()[i] * ratio, b.openMost()[i], 1e-6, where);
      assertEquals(a.closeMost()[i] * ratio, b.closeMost()[i], 1e-6, where);
    }
  }

  private static ForceProfile profile(HingedFlap flap) {
    Travel travel = flap.travel(flap.end());
    List<ForceProfile.Point> points = new ArrayList<>();
    for (int i = 0; i <= travel.last(); i++) {
      points.add(new ForceProfile.Point(travel.length()[i], -travel.load()[i] / travel.lever()[i]));
    }
    return new ForceProfile(points);
  }

  /** A flap of one mass and no friction, its spring lengthening and gravity closing it; or null. */
  private static HingedFlap lengthening(Random random) {
    double width = 0.4 + 0.6 * random.nextDouble();
    double mass = 4 + 25 * random.nextDouble();
    HingedFlap flap =
        new HingedFlap(
            new Masses(mass, mass, mass),
            new Point(0.5 * width, 0.02),
            new Point(width, 0),
            1,
            Math.toRadians(40 + 40 * random.nextDouble()),
            0,
            0,
            new Mounts(
                new Point(0.08 * random.nextDouble(), -0.05 - 0.3 * random.nextDouble()),
                new Point(width * (0.2 + 0.4 * random.nextDouble()), -0.01),
                0,
                RodEnd.FRAME));
    if (!flap.faults().isEmpty()) {
      return null;
    }
    Travel travel = flap.travel(flap.end());
    for (int i = 0; i <= travel.last(); i++) {
      if (travel.lever()[i] < 0.01 || travel.load()[i] >= 0) {
        return null;
      }
    }
    return flap;
  }

  private static List<Fit> named(List<Fit> fits) {
    return fits.stream()
        .sorted(Comparator.comparing((Fit fit) -> fit.part().number()).thenComparing(Fit::count))
        .toList();
  }

  private static List<String> names(List<Fit> fits) {
    return fits.stream()
        .map(
            fit ->
                fit.count()
                    + " × "
                    + fit.part().number()
                    + " "
                    + fit.rodFitting().number()
                    + " "
                    + fit.tubeFitting().number()
                    + " "
                    + fit.blockedBy().stream().map(Blocker::criterion).toList())
        .toList();
  }

  private static Job job(Mechanism mechanism, RankBy order, double hand, double hold) {
    Job plain = Samples.job(mechanism, Job.OpenStop.FLAP_STOP, order);
    return new Job(
        plain.name(),
        mechanism,
        plain.springCounts(),
        plain.rodEnd(),
        plain.tubeEnd(),
        plain.conditions(),
        Requirements.of(hand, hold, 5e-3, 4e-3, Job.OpenStop.FLAP_STOP),
        plain.filters(),
        order,
        5000);
  }
}
