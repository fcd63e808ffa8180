package org.staywright.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.staywright.fit.assess.Figuring;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.Still;
import org.staywright.fit.rank.Ranking;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.Travel;
import org.staywright.part.Range;

/** What a designer may ask besides hand force, hold and reserves. */
class BehaviourTest {

  private static final Range RANGE = RandomRange.of(new Random(11), 3000);

  private static Job asking(Criterion criterion, double limit) {
    return Samples.lid().asking(Samples.lid().requirements().with(criterion, limit));
  }

  private static List<Fit> all(Job job) {
    Ranking ranking = Ranking.of(RANGE, job);
    assertTrue(
        ranking.fitsTotal() > 0 && ranking.nearTotal() > 0,
        ranking.fitsTotal() + " fit, " + ranking.nearTotal() + " near");
    return Stream.concat(ranking.fits().stream(), ranking.near().stream()).toList();
  }

  private static boolean misses(Fit fit, Criterion criterion) {
    return fit.blockedBy().stream().anyMatch(blocker -> blocker.criterion() == criterion);
  }

  @Test
  void eachDirectionHasItsOwnLimitWhereOneIsGiven() {
    for (Fit fit :
        all(
            Samples.lid()
                .asking(
                    Samples.lid()
                        .requirements()
                        .with(Criterion.HAND_OPEN, 70)
                        .with(Criterion.HAND_CLOSE, 35)))) {
      FitCurve curve = FitCurve.of(Samples.lid(), fit);
      assertEquals(max(curve.openMost()) > 70, misses(fit, Criterion.HAND_OPEN), fit.toString());
      assertEquals(max(curve.closeMost()) > 35, misses(fit, Criterion.HAND_CLOSE), fit.toString());
    }
  }

  @Test
  void itRisesByItselfWhereNoCornerNeedsAHandToTheEnd() {
    double from = Math.toRadians(68);
    for (Fit fit : all(asking(Criterion.RISES, from))) {
      FitCurve curve = FitCurve.of(Samples.lid(), fit);
      boolean rises = true;
      for (int i = 0; i < curve.openMost().length; i++) {
        // 80° in 60 steps: 68° is the fifty-first.
        rises &= i < 51 || curve.openMost()[i] < 0;
      }
      assertEquals(!rises, misses(fit, Criterion.RISES), fit.toString());
    }
  }

  @Test
  void itStaysPutWhereTheHandMustWorkEitherWay() {
    Still asked = new Still(Math.toRadians(20), Math.toRadians(60));
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
    for (Fit fit : all(stiff.asking(stiff.requirements().with(asked)))) {
      FitCurve curve = FitCurve.of(stiff, fit);
      boolean stays = true;
      for (int i = 15; i <= 45; i++) {
        stays &= curve.nominal().open()[i] > 0 && curve.nominal().close()[i] > 0;
      }
      assertEquals(!stays, misses(fit, Criterion.STAYS_PUT), fit.toString());
      assertEquals(stays, fit.figures().orElseThrow().hand().staysPut() > 0);
    }
    assertNull(all(Samples.lid()).get(0).figures().orElseThrow().hand().staysPut());
  }

  @Test
  void thePushOnTheLatchIsTheWorstMomentOfSpringsAndLoadAtTheHandle() {
    for (Fit fit : all(asking(Criterion.LATCH_PUSH, 5))) {
      double push = -fit.figures().orElseThrow().hold().closedLeast().value() / 0.8;
      assertEquals(push, fit.figures().orElseThrow().hold().latchPush(), 1e-9);
      assertEquals(push > 5, misses(fit, Criterion.LATCH_PUSH), fit.toString());
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
