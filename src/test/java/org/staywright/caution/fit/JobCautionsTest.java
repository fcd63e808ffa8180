package org.staywright.caution.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.caution.fit.Trial.figure;
import static org.staywright.caution.fit.Trial.has;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.staywright.caution.Caution;
import org.staywright.fit.Samples;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.RankBy;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;

/** What the figures of a job call for, and when they do not. */
class JobCautionsTest {

  private static final Job LID = Samples.lid();

  private final Trial trial = new Trial();

  @BeforeEach
  void theLidAloneCallsForNoneOfThese() {
    List<Caution> calm = trial.of(LID);
    for (String code :
        List.of(
            "near-cold",
            "near-hot",
            "near-pressure",
            "near-buckling",
            "side-load",
            "twist",
            "barely-held",
            "barely-shut",
            "stays-without-spring",
            "latch-pressure",
            "long-rest",
            "rod-up",
            "shuts",
            "others-still-hold",
            "end-damping-idle",
            "end-damping-short")) {
      assertFalse(has(calm, code), code);
    }
  }

  @Test
  void aJobNearTheColdestOrHottestServiceIsTold() {
    // The part serves from −30 to 80 °C.
    assertFalse(has(trial.of(between(-19.9, 69.9)), "near-cold"));
    assertFalse(has(trial.of(between(-19.9, 69.9)), "near-hot"));
    List<Caution> cold = trial.of(between(-20.1, 69.9));
    assertEquals(253.05, figure(cold, "near-cold", 0), 1e-9);
    assertEquals(243.15, figure(cold, "near-cold", 1), 1e-9);
    List<Caution> hot = trial.of(between(-19.9, 75));
    assertEquals(348.15, figure(hot, "near-hot", 0), 1e-9);
    assertEquals(353.15, figure(hot, "near-hot", 1), 1e-9);
    assertFalse(has(hot, "near-cold"));
  }

  @Test
  void aStrokeNearThePartsHighestPressureIsTold() {
    double limit = trial.part.limits().pressure();
    trial.peakPressure = 0.89 * limit;
    assertFalse(has(trial.of(LID), "near-pressure"));
    trial.peakPressure = 0.95 * limit;
    assertEquals(0.95 * limit, figure(trial.of(LID), "near-pressure", 0), 1e-3);
  }

  @Test
  void aRodNearItsBucklingLoadIsTold() {
    trial.bucklingFactor = 3.76;
    assertFalse(has(trial.of(LID), "near-buckling"));
    trial.bucklingFactor = 3.2;
    assertEquals(3.2, figure(trial.of(LID), "near-buckling", 0));
    assertEquals(3, figure(trial.of(LID), "near-buckling", 1));
  }

  @Test
  void mountsThatStandApartPushSideways() {
    Job slanted = lid(new Mounts(new Point(0.015, -0.065), new Point(0.36, -0.011), 0.03, null));
    trial.swing = Math.toRadians(5);
    List<Caution> cautions = trial.of(slanted);
    assertEquals(0.03, figure(cautions, "side-load", 0));
    // 700 N · sin 5° = 61.0 N, by hand.
    assertEquals(61.01, figure(cautions, "side-load", 2), 0.01);
    assertFalse(has(cautions, "no-side-load"));
    assertTrue(has(trial.of(LID), "no-side-load"));
  }

  @Test
  void endDampingThatTheStopForestallsIsTold() {
    trial.part = Trial.damped();
    trial.lengthOpen = 0.5;
    trial.extended = 0.514;
    List<Caution> used = trial.of(LID);
    assertFalse(has(used, "end-damping-idle") || has(used, "end-damping-short"));
    trial.extended = 0.52;
    assertEquals(0.01, figure(trial.of(LID), "end-damping-short", 0), 1e-12);
    trial.extended = 0.535;
    List<Caution> idle = trial.of(LID);
    assertEquals(0.035, figure(idle, "end-damping-idle", 0), 1e-12);
    assertEquals(0.03, figure(idle, "end-damping-idle", 1), 1e-12);
    assertFalse(has(idle, "end-damping-short"));
    trial.part = Trial.PART;
    assertFalse(has(trial.of(LID), "end-damping-idle"));
  }

  @Test
  void aSpringThatSeldomMovesIsTold() {
    assertTrue(has(trial.of(used(52)), "sticking"));
    assertFalse(has(trial.of(used(52)), "long-rest"));
    List<Caution> rare = trial.of(used(10));
    assertEquals(36.5, figure(rare, "long-rest", 0), 1e-9);
    assertFalse(has(rare, "sticking"));
    assertEquals(365, figure(trial.of(used(0)), "long-rest", 0), 1e-9);
  }

  private static Job used(double cycles) {
    Job.Conditions plain = LID.conditions();
    return LID.under(
        new Job.Conditions(
            plain.coldest(), plain.nominal(), plain.hottest(), plain.years(), cycles));
  }

  private static Job between(double coldest, double hottest) {
    return LID.under(new Job.Conditions(coldest + 273.15, 293.15, hottest + 273.15, 5, 1000));
  }

  private static Job lid(Mounts mounts) {
    HingedFlap lid = (HingedFlap) LID.mechanism();
    HingedFlap other =
        new HingedFlap(
            lid.masses(),
            lid.centreOfMass(),
            lid.handle(),
            lid.sense(),
            lid.end(),
            lid.tilt(),
            lid.friction(),
            mounts);
    return Samples.job(other, Job.OpenStop.FLAP_STOP, RankBy.BALANCED);
  }
}
