package org.staywright.fit.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.Kept;
import org.staywright.fit.assess.Opening;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.rank.Ranking;
import org.staywright.part.Range;

class TimeFiguresTest {

  private static final Range RANGE = SampleRange.read();
  private static final Job LID = Samples.lid();
  private static final Fit FIT = Ranking.of(RANGE, LID).fits().get(0);
  private static final TimeFigures BEHAVIOUR = TimeFigures.of(LID, FIT).orElseThrow();

  @Test
  void slowStrokesAreThoseOfTheHandCurve() {
    TimeFigures.Taken slow = BEHAVIOUR.strokes().get(0);
    assertEquals(FIT.figures().orElseThrow().hand().open(), slow.opening(), 0.05);
    assertEquals(FIT.figures().orElseThrow().hand().close(), slow.closing(), 0.05);
  }

  @Test
  void aSlamAsksMoreThanAnEasing() {
    TimeFigures.Taken easing = BEHAVIOUR.strokes().get(1);
    TimeFigures.Taken slam = BEHAVIOUR.strokes().get(2);
    assertTrue(slam.closing() > easing.closing(), slam + " " + easing);
    assertTrue(easing.closing() >= BEHAVIOUR.strokes().get(0).closing());
  }

  @Test
  void aHandAtItsLimitOpensWhatFitsInEveryCorner() {
    assertEquals(4, BEHAVIOUR.cases().size());
    Opening opening = BEHAVIOUR.opening();
    assertTrue(Double.isFinite(opening.time().value()), opening.time() + " s");
    assertTrue(opening.stopSpeed().value() > 0 && opening.stopEnergy().value() > 0);
  }

  @Test
  void aLidOnOneSpringFallsWhenThatFails() {
    Fit one =
        Ranking.of(RANGE, LID).fits().stream().filter(fit -> fit.count() == 1).findFirst().get();
    TimeFigures behaviour = TimeFigures.of(LID, one).orElseThrow();
    assertEquals(TimeFigures.Failing.FALLS, behaviour.failing());
    assertTrue(behaviour.failingTime() > 0 && behaviour.failingTime() < 2);
    assertTrue(behaviour.failingSpeed() > TimeFigures.SINKING);
    // At its heaviest 18.9 kg at 0.41 m, held at 0.8 m, less the hinge's friction: most where its
    // centre is level.
    double arm = Math.hypot(0.41, 0.015);
    assertEquals((18.9 * 9.80665 * arm - 0.5) / 0.8, behaviour.failedForce(), 0.2);
  }

  @Test
  void requirementsInTimeAreKeptOrNot() {
    Requirements asked =
        LID.requirements().with(Criterion.STOP_SPEED, 1e-3).with(Criterion.STOP_ENERGY, 1e4);
    List<Kept> kept = BEHAVIOUR.opening().kept(asked);
    assertEquals(2, kept.size());
    assertFalse(kept.get(0).met());
    assertTrue(kept.get(1).met());
    assertTrue(BEHAVIOUR.opening().kept(LID.requirements()).isEmpty());
  }

  @Test
  void aTableOfForcesTellsNothingOfMotion() {
    Random random = new Random(3);
    Job profile = Samples.randomProfile(random);
    assertTrue(TimeFigures.of(profile, FIT).isEmpty());
  }
}
