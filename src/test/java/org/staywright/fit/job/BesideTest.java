package org.staywright.fit.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Comparator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.assess.InTime;
import org.staywright.fit.rank.Ranking;
import org.staywright.fit.time.Chance;
import org.staywright.fit.time.Uncertainties;
import org.staywright.form.Jobs;
import org.staywright.form.job.JobForm;
import org.staywright.motion.Hand;
import org.staywright.motion.Motion;
import org.staywright.motion.MotionSetup;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.spring.Damper;
import org.staywright.unit.Refusal;

class BesideTest {

  private static final Range RANGE = SampleRange.damped();
  private static final Job BARE = JobForm.read(Jobs.lid());

  private static ObjectNode lid(String damper, int count) {
    ObjectNode lid = Jobs.lid();
    ObjectNode mounts =
        lid.putArray("beside")
            .addObject()
            .put("partNumber", damper)
            .put("count", count)
            .putObject("mounts");
    mounts.putObject("frameMm").put("x", 15).put("y", -65);
    mounts.putObject("movingMm").put("x", 300).put("y", -11);
    return lid;
  }

  /** The strongest that spans the travel, with or without gas apart. */
  private static Part damper(boolean gas) {
    return dampers()
        .filter(part -> part.spring().force() > 0 == gas)
        .filter(part -> spans(part.number()))
        .max(
            Comparator.comparingDouble((Part part) -> ((Damper) part.spring()).extending().force())
                .thenComparing(Part::number))
        .orElseThrow();
  }

  private static Stream<Part> dampers() {
    return IntStream.range(0, RANGE.size())
        .filter(row -> RANGE.family(row) == Family.DAMPER)
        .mapToObj(RANGE::part);
  }

  private static boolean spans(String number) {
    try {
      JobForm.read(lid(number, 1), RANGE);
      return true;
    } catch (Refusal refusal) {
      return false;
    }
  }

  private static Fit fit(Job job) {
    Fit best = Ranking.of(RANGE, BARE).fits().get(0);
    return Assessment.of(job, RANGE, best.part(), best.count()).fit();
  }

  /** By virtual work: n·f·|dL/dq|/r more both ways, and n·F·dL/dq/r less to open. */
  @Test
  void addsItsGasAndItsFrictionToTheHand() {
    Part part = damper(true);
    Job job = JobForm.read(lid(part.number(), 2), RANGE);
    FitCurve bare = FitCurve.of(BARE, fit(BARE));
    FitCurve damped = FitCurve.of(job, fit(job));
    Beside beside = job.beside().get(0);
    for (int i = 0; i < 61; i++) {
      double q = Math.toRadians(80) * i / 60;
      double step = 1e-6;
      double lever =
          (beside.mechanism().length(q + step) - beside.mechanism().length(q - step)) / (2 * step);
      double x = beside.extended() - beside.mechanism().length(q);
      double push = 2 * part.spring().law().force(x, 293.15) * lever / 0.8;
      double rubbing = 2 * part.spring().friction() * Math.abs(lever) / 0.8;
      double open = damped.nominal().open()[i];
      double close = damped.nominal().close()[i];
      assertEquals(bare.nominal().open()[i] - push + rubbing, open, 1e-4);
      assertEquals(bare.nominal().close()[i] + push + rubbing, close, 1e-4);
    }
  }

  @Test
  void slowsTheFlapAndItsBooksStillClose() {
    Part part = damper(false);
    Job job = JobForm.read(lid(part.number(), 1), RANGE);
    Motion bare = fall(BARE);
    Motion damped = fall(job);
    assertTrue(damped.endTime() > bare.endTime() * 1.2, damped.endTime() + " s");
    assertTrue(damped.greatestSpeed() < bare.greatestSpeed());
    assertTrue(damped.energy().damping() > bare.energy().damping());
    assertTrue(damped.energy().imbalance() < 1e-3, damped.energy().toString());
  }

  /** With every spring failed. */
  private static Motion fall(Job job) {
    MotionSetup scene = new InTime(job, fit(job)).scene(Corner.NOMINAL, 293.15);
    return Motion.of(scene.with(0, Hand.NONE));
  }

  @Test
  void judgesTheChanceWithTheDamperOnIt() {
    Job job = JobForm.read(lid(damper(true).number(), 8), RANGE);
    Fit fit = fit(job);
    Uncertainties none = new Uncertainties(0, 0, 0, 0, 0, 0, 0);
    Chance chance = Chance.of(job, fit, none, 1, 1);
    boolean within = Math.max(weakless(job, fit), 0) <= job.requirements().maxHandForce();
    assertEquals(within ? 1 : 0, chance.handWithinLimit(), 0);
  }

  /** Greatest nominal force at the hand, N. */
  private static double weakless(Job job, Fit fit) {
    FitCurve curve = FitCurve.of(job, fit);
    double most = 0;
    for (int i = 0; i < 61; i++) {
      most = Math.max(most, Math.max(curve.nominal().open()[i], curve.nominal().close()[i]));
    }
    return most;
  }

  @Test
  void refusesWhatCannotActThere() {
    assertEquals("no-such-part-beside", code(lid("NO-SUCH", 1)));
    String shortest =
        dampers()
            .min(Comparator.comparingDouble((Part part) -> part.spring().stroke()))
            .orElseThrow()
            .number();
    assertEquals("beside-out-of-reach", code(lid(shortest, 1)));
    ObjectNode profile = Jobs.tree(Jobs.PROFILE);
    profile.putArray("beside").addObject().put("partNumber", shortest);
    assertEquals("nothing-beside-here", code(profile));
    assertFalse(spans(shortest));
  }

  private static String code(ObjectNode job) {
    Refusal refusal = assertThrows(Refusal.class, () -> JobForm.read(job, RANGE));
    return refusal.faults().get(0).code();
  }
}
