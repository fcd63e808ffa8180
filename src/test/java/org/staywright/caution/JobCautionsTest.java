package org.staywright.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.caution.Trial.figure;
import static org.staywright.caution.Trial.has;
import static org.staywright.caution.Trial.named;

import org.staywright.fit.Criterion;
import org.staywright.fit.Figure;
import org.staywright.fit.Fit;
import org.staywright.fit.Ranking;
import org.staywright.fit.Requirements;
import org.staywright.fit.SampleRange;
import org.staywright.wording.CautionText;
import org.staywright.wording.Wording;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.staywright.caution.Caution.Severity;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.fit.RankBy;
import org.staywright.fit.Ranking;
import org.staywright.fit.SampleRange;
import org.staywright.fit.Samples;
import org.staywright.fit.Slam;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.StraightLift;
import org.staywright.part.Range;
import org.staywright.wording.CautionText;
import org.staywright.wording.Wording;

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
  void aSpringThatIsAnUndampedStopIsTold() {
    assertFalse(has(trial.of(LID), "undamped-stop"));
    trial.undampedStop = true;
    assertEquals(Severity.WARNING, named(trial.of(LID), "undamped-stop").severity());
  }

  @Test
  void aFlapThatSlamsNamesItsEndItsEnergyItsSpeedAndTheCorner() {
    Range range = SampleRange.read();
    Fit fit =
        Ranking.of(range, LID).fits().stream()
            .filter(each -> Slam.of(LID, each, false).isPresent())
            .findFirst()
            .orElseThrow();
    Slam slam = Slam.of(LID, fit, false).orElseThrow();
    Caution caution =
        Cautions.of(LID, fit).stream()
            .filter(each -> each.code().equals("slams") && each.at().end().equals("shut"))
            .findFirst()
            .orElseThrow();
    assertEquals(Severity.DANGER, caution.severity());
    assertEquals(slam.energy(), caution.figures().get(0).si());
    assertEquals(slam.speed(), caution.figures().get(1).si());
    assertTrue(caution.source().contains("ISO 14120:2015, from memory"));
    String sentence = CautionText.in(Wording.english().about(HingedFlap.CODE)).sentence(caution);
    assertTrue(sentence.contains(" falls shut with up to "), sentence);
    assertTrue(sentence.contains("(cold and aged, heavy load)"), sentence);
    assertTrue(sentence.contains("For comparison only"), sentence);
  }

  @Test
  void whatComesSoftlyToBothItsEndsDoesNotSlam() {
    Range range = SampleRange.read();
    Fit soft =
        Ranking.of(range, LID).fits().stream()
            .filter(fit -> Slam.of(LID, fit, true).isEmpty())
            .findFirst()
            .orElseThrow();
    assertTrue(
        Cautions.of(LID, soft).stream()
            .filter(each -> each.code().equals("slams"))
            .noneMatch(each -> each.at().end().equals("open")));
  }

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
    Job shut = with(LID.requirements().with(Criterion.STAYS_SHUT, 0.0));
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
    Job eased = with(LID.requirements().with(Criterion.HOLD_RATIO, 0.5)).showing(200);
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
    return with(
        new Job.Conditions(
            plain.coldest(), plain.nominal(), plain.hottest(), plain.years(), cycles));
  }

  private static Job between(double coldest, double hottest) {
    return with(new Job.Conditions(coldest + 273.15, 293.15, hottest + 273.15, 5, 1000));
  }

  private static String flap(Caution caution) {
    CautionText text = CautionText.in(Wording.english().about(HingedFlap.CODE));
    return text.sentence(caution).replace('\u00a0', ' ');
  }

  private static Job with(Job.Conditions conditions) {
    return with(conditions, LID.requirements());
  }

  private static Job with(Requirements requirements) {
    return with(LID.conditions(), requirements);
  }

  private static Job with(Job.Conditions conditions, Requirements requirements) {
    return new Job(
        LID.name(),
        LID.mechanism(),
        LID.springCounts(),
        LID.rodEnd(),
        LID.tubeEnd(),
        conditions,
        requirements,
        LID.filters(),
        LID.rankBy(),
        LID.limit());
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

  private static Job lift(double direction) {
    Mounts mounts = new Mounts(new Point(0, 0), new Point(0.1, 0.3), 0, RodEnd.FRAME);
    return Samples.job(
        new StraightLift(new Masses(10, 10, 10), 0.2, direction, 0, mounts),
        Job.OpenStop.FLAP_STOP,
        RankBy.BALANCED);
  }
}
