package org.staywright.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.Travel;
import org.staywright.part.Range;

/** What a designer may ask besides hand force, hold and reserves. */
class BehaviourTest {

  private static final Range RANGE = Samples.randomRange(new Random(11), 3000);

  private static Job asking(Behaviour behaviour) {
    return asking(Samples.lid(), behaviour);
  }

  private static Job asking(Job job, Behaviour behaviour) {
    Job.Requirements plain = job.requirements();
    return new Job(
        job.name(),
        job.mechanism(),
        job.springCounts(),
        job.rodEnd(),
        job.tubeEnd(),
        job.conditions(),
        new Job.Requirements(
            plain.maxHandForce(),
            plain.minHoldRatio(),
            plain.compressedReserve(),
            plain.extendedReserve(),
            plain.openStop(),
            plain.staysShut(),
            behaviour,
            Job.InTime.ANY),
        job.filters(),
        job.rankBy(),
        job.limit());
  }

  private static List<Fit> all(Job job) {
    Ranking ranking = Ranking.of(RANGE, job);
    assertTrue(
        ranking.fitsTotal() > 0 && ranking.nearTotal() > 0,
        ranking.fitsTotal() + " fit, " + ranking.nearTotal() + " near");
    return Stream.concat(ranking.fits().stream(), ranking.near().stream()).toList();
  }

  private static boolean misses(Fit fit, Blocker.Code code) {
    return fit.blockedBy().stream().anyMatch(blocker -> blocker.code() == code);
  }

  @Test
  void eachDirectionHasItsOwnLimitWhereOneIsGiven() {
    for (Fit fit : all(asking(new Behaviour(70.0, 35.0, null, null, null, null, null)))) {
      FitCurve curve = FitCurve.of(Samples.lid(), fit);
      assertEquals(max(curve.openWeak()) > 70, misses(fit, Blocker.Code.HAND_OPEN), fit.toString());
      assertEquals(
          max(curve.closeStrong()) > 35, misses(fit, Blocker.Code.HAND_CLOSE), fit.toString());
    }
  }

  @Test
  void itRisesByItselfWhereTheWeakestSpringNeedsNoHandToTheEnd() {
    double from = Math.toRadians(68);
    for (Fit fit : all(asking(new Behaviour(null, null, from, null, null, null, null)))) {
      FitCurve curve = FitCurve.of(Samples.lid(), fit);
      boolean rises = true;
      for (int i = 0; i < curve.openWeak().length; i++) {
        // 80° in 60 steps: 68° is the fifty-first.
        rises &= i < 51 || curve.openWeak()[i] < 0;
      }
      assertEquals(!rises, misses(fit, Blocker.Code.RISES), fit.toString());
    }
  }

  @Test
  void itStaysPutWhereTheHandMustWorkEitherWay() {
    Behaviour asked =
        new Behaviour(null, null, null, Math.toRadians(20), Math.toRadians(60), null, null);
    HingedFlap flap = (HingedFlap) Samples.lid().mechanism();
    Job stiff =
        Samples.job(
            new HingedFlap(
                flap.masses(),
                flap.centreOfMass(),
                flap.handle(),
                1,
                flap.end(),
                0,
                12,
                flap.mounts()),
            Job.OpenStop.FLAP_STOP,
            RankBy.BALANCED);
    for (Fit fit : all(asking(stiff, asked))) {
      FitCurve curve = FitCurve.of(stiff, fit);
      boolean stays = true;
      for (int i = 15; i <= 45; i++) {
        stays &= curve.open()[i] > 0 && curve.close()[i] > 0;
      }
      assertEquals(!stays, misses(fit, Blocker.Code.STAYS_PUT), fit.toString());
      assertEquals(stays, fit.figures().staysPut() > 0);
    }
    assertNull(all(Samples.lid()).get(0).figures().staysPut());
  }

  @Test
  void thePushOnTheLatchIsTheMomentOfTheStrongestSpringAtTheHandle() {
    for (Fit fit : all(asking(new Behaviour(null, null, null, null, null, 5.0, null)))) {
      double push = -fit.figures().closedHoldStrong() / 0.8;
      assertEquals(push, fit.figures().latchPush(), 1e-9);
      assertEquals(push > 5, misses(fit, Blocker.Code.LATCH_PUSH), fit.toString());
    }
  }

  /** The dead centre by eye: there both mounts and the hinge lie on one line. */
  @Test
  void aSpringGoesOverCentreWhereBothMountsAndTheHingeLieOnOneLine() {
    Point frame = new Point(0.15, -0.02);
    double dead = Math.toRadians(18);
    Point moving = new Point(3 * frame.x(), 3 * frame.y()).turned(-dead);
    HingedFlap flap = (HingedFlap) Samples.lid().mechanism();
    HingedFlap over =
        new HingedFlap(
            flap.masses(),
            flap.centreOfMass(),
            flap.handle(),
            1,
            flap.end(),
            0,
            0.5,
            new Mounts(frame, moving, 0, RodEnd.EITHER));
    Travel travel = over.travel(over.end());
    double step = travel.q()[1];
    // There the spring is shortest: what pushes presses the flap shut before and opens it after.
    assertEquals(dead + step / 2, Figuring.overCentre(travel, 1), step / 2 + 1e-12);
    assertNull(Figuring.overCentre(travel, -1), "what pulls opens it at first");
  }

  private static double max(double[] values) {
    double most = values[0];
    for (double value : values) {
      most = Math.max(most, value);
    }
    return most;
  }
}
