package org.staywright.caution.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.caution.fit.Trial.figure;
import static org.staywright.caution.fit.Trial.has;
import static org.staywright.caution.fit.Trial.named;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Severity;
import org.staywright.fit.SampleRange;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.rank.Ranking;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.StraightLift;
import org.staywright.wording.CautionText;
import org.staywright.wording.Wording;

/** What holds or falls, with all springs and with one failed, as cautions. */
class StayingCautionsTest {

  private static final Job LID = Samples.lid();

  private final Trial trial = new Trial();

  @Test
  void severalSpringsTwistTheFlapWhenOneFails() {
    trial.count = 2;
    assertEquals(700, figure(trial.of(LID), "twist", 0));
  }

  @Test
  void oneSpringAtOneSideTwistsAFlapAlways() {
    assertEquals(700, figure(trial.of(LID), "one-sided", 0));
    assertFalse(has(trial.of(lift(0)), "one-sided"));
    trial.count = 2;
    assertFalse(has(trial.of(LID), "one-sided"));
  }

  @Test
  void whatAFewNewtonsHoldOpenIsTold() {
    trial.heldOpen = 5;
    assertFalse(has(trial.of(LID), "barely-held"));
    trial.heldOpen = 4.9;
    Caution barely = named(trial.of(LID), "barely-held");
    assertEquals(4.9, barely.figures().get(0).si());
    assertEquals(Severity.WARNING, barely.severity());
    assertTrue(flap(barely).contains("only 4.9 N at the handle"), flap(barely));
    assertTrue(flap(barely).contains("cold and aged, heavy load"), flap(barely));
  }

  @Test
  void whatDoesNotStayOpenByItselfIsADanger() {
    trial.heldOpen = -12;
    Caution leaves = named(trial.of(LID), "barely-held");
    assertEquals(Severity.DANGER, leaves.severity());
    assertTrue(flap(leaves).startsWith("Does not stay open by itself"), flap(leaves));
    assertTrue(flap(leaves).contains("with 12 N at the handle"), flap(leaves));
    trial.heldOpen = 0;
    assertTrue(flap(named(trial.of(LID), "barely-held")).startsWith("Does not stay open"));
  }

  @Test
  void whatAFewNewtonsKeepShutIsToldOnlyWhereItMust() {
    Job shut = LID.asking(LID.requirements().with(Criterion.STAYS_SHUT, 0.0));
    trial.latchPush = -2;
    assertFalse(has(trial.of(shut), "barely-shut"));
    trial.latchPush = -1.5;
    assertEquals(1.5, figure(trial.of(shut), "barely-shut", 0));
    assertFalse(has(trial.of(LID), "barely-shut"));
    trial.latchPush = 1;
    assertFalse(has(trial.of(shut), "barely-shut"));
    assertTrue(has(trial.of(shut), "latch-pressure"));
  }

  /** Whatever the ranking offers where less than a hold is asked. */
  @Test
  void whatFitsIsCalledBarelyHeldExactlyWhereItsFiguresSaySo() {
    Job eased = LID.asking(LID.requirements().with(Criterion.HOLD_RATIO, 0.5)).showing(200);
    List<Fit> fits = Ranking.of(SampleRange.read(), eased).fits();
    long told = 0;
    for (Fit fit : fits) {
      double newtons = Figure.HOLD_OPEN.value(fit);
      List<Caution> cautions = Cautions.of(eased, fit);
      assertEquals(newtons < 5, has(cautions, "barely-held"), fit.part().number());
      boolean leaves =
          cautions.stream().anyMatch(one -> flap(one).startsWith("Does not stay open by itself"));
      assertEquals(newtons <= 0, leaves, fit.part().number());
      assertEquals(fit.count() == 1, has(cautions, "one-sided"), fit.part().number());
      told += newtons < 5 ? 1 : 0;
    }
    assertTrue(told > 20 && told < fits.size(), told + " of " + fits.size());
  }

  @Test
  void whatStillStaysWithoutItsOnlySpringIsNotCalledUnheld() {
    trial.handWithOneFailed = 57;
    trial.heldWithOneFailed = 38;
    List<Caution> rests = trial.of(LID);
    assertEquals(57, figure(rests, "stays-without-spring", 0));
    assertEquals(38, figure(rests, "stays-without-spring", 1));
    assertFalse(has(rests, "only-spring-fails"));
    trial.heldWithOneFailed = -20;
    assertEquals(20, figure(trial.of(LID), "only-spring-fails", 1));
  }

  @Test
  void whatTheOthersStillHoldIsTold() {
    trial.count = 2;
    trial.handWithOneFailed = 80;
    trial.heldWithOneFailed = -7;
    List<Caution> falls = trial.of(LID);
    assertEquals(80, figure(falls, "one-of-several-fails", 0));
    assertEquals(7, figure(falls, "one-of-several-fails", 1));
    trial.heldWithOneFailed = 14;
    List<Caution> held = trial.of(LID);
    assertEquals(80, figure(held, "others-still-hold", 0));
    assertEquals(14, figure(held, "others-still-hold", 1));
    assertFalse(has(held, "one-of-several-fails"));
  }

  @Test
  void aFlapThatWouldFallNeedsASecondHold() {
    // m·g·(height of the centre open − closed): 18.9 kg, centre at (410, 15) mm turned by 80°.
    double rise = 0.410 * Math.sin(Math.toRadians(80)) + 0.015 * Math.cos(Math.toRadians(80));
    double energy = 18.9 * 9.80665 * (rise - 0.015);
    List<Caution> cautions = trial.of(LID);
    assertEquals(energy, figure(cautions, "second-hold", 0), 1e-3 * energy);
    assertEquals(Severity.DANGER, named(cautions, "second-hold").severity());
  }

  @Test
  void aFlapThatRestsOpenNeedsNoSecondHold() {
    HingedFlap lid = (HingedFlap) LID.mechanism();
    HingedFlap over =
        new HingedFlap(
            lid.masses(),
            lid.centreOfMass(),
            lid.handle(),
            lid.sense(),
            Math.toRadians(110),
            lid.tilt(),
            lid.friction(),
            lid.mounts());
    Job job = Samples.job(over, Job.OpenStop.FLAP_STOP, RankBy.BALANCED);
    assertFalse(has(trial.of(job), "second-hold"));
    trial.handWithOneFailed = 40;
    assertEquals(40, figure(trial.of(job), "only-spring-fails", 0));
  }

  @Test
  void aLoadThatWeighsNothingAlongItsWayNeedsNobodyToHoldIt() {
    Job level = lift(0);
    assertFalse(has(trial.of(level), "only-spring-fails"));
    assertFalse(has(trial.of(level), "second-hold"));
    Job upright = lift(Math.PI / 2);
    assertEquals(10 * 9.80665 * 0.2, figure(trial.of(upright), "second-hold", 0), 1e-9);
  }

  @Test
  void aFlapThatShutsByItselfSaysHowHard() {
    trial.shuts = 10;
    List<Caution> cautions = trial.of(LID);
    assertEquals(10, figure(cautions, "shuts", 0));
    assertTrue(named(cautions, "shuts").source().contains("ISO 13854"));
    assertFalse(has(cautions, "pinch-points"));
  }

  private static String flap(Caution caution) {
    CautionText text = CautionText.in(Wording.english().about(HingedFlap.CODE));
    return text.sentence(caution).replace('\u00a0', ' ');
  }

  private static Job lift(double direction) {
    Mounts mounts = new Mounts(new Point(0, 0), new Point(0.1, 0.3), 0, RodEnd.FRAME);
    return Samples.job(
        new StraightLift(new Masses(10, 10, 10), 0.2, direction, 0, mounts),
        Job.OpenStop.FLAP_STOP,
        RankBy.BALANCED);
  }
}
