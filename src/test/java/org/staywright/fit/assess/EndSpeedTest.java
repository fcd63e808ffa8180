package org.staywright.fit.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;
import org.staywright.fit.Samples;
import org.staywright.fit.job.Beside;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.LoadState;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.SpringState;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.StraightLift;
import org.staywright.motion.Motion;
import org.staywright.motion.MotionSetup;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Part;
import org.staywright.spring.Cylinder;
import org.staywright.spring.Damper;
import org.staywright.spring.Digression;

/**
 * The speed at which damping takes up what is left, against motions that have the way for it: two
 * ways to the same truth.
 */
class EndSpeedTest {

  private static final double STOP_RESERVE = 4e-3;
  private static final double TINY = 1;

  /** Oil is stiff: with less the integrator would creep. */
  private static final double SMALL = 20;

  private static final Part GAS =
      SampleRange.parts(Family.GAS_SPRING).stream()
          .filter(part -> part.spring().stroke() >= 0.2 && part.endZone() > 0.02)
          .min(Comparator.comparingDouble(part -> Math.abs(part.spring().force() - 300)))
          .orElseThrow();

  /** The gas as warm as the wall, as the balance takes it. */
  private static Part warm(Part part) {
    Part.Damping own = part.damping();
    return with(
        part,
        new Part.Damping(
            own.endZone(),
            own.orificeDiameter(),
            own.orificeLength(),
            own.compressionFlowFactor(),
            0.03));
  }

  private static Part with(Part part, Part.Damping damping) {
    return new Part(
        part.number(),
        part.description(),
        part.family(),
        part.finish(),
        part.spring(),
        part.forceTolerance(),
        part.ends(),
        damping,
        part.limits(),
        part.wear(),
        part.mass(),
        part.mounting(),
        part.offer(),
        part.derived());
  }

  /** Straight up along its spring, so that the lever is 1 all the way. */
  private static Job lift(Part part, double mass, double direction, RodEnd rodEnd) {
    double way = part.spring().stroke() - 10e-3;
    double shut = part.spring().extendedLength() - STOP_RESERVE - way;
    Point start = new Point(shut * Math.cos(direction), shut * Math.sin(direction));
    return Samples.job(
        new StraightLift(
            new Masses(mass, 1.05 * mass, 0.95 * mass),
            way,
            direction,
            3,
            new Mounts(new Point(0, 0), start, 0, rodEnd)),
        Job.OpenStop.FLAP_STOP,
        RankBy.BALANCED);
  }

  private static Fit fit(Job job, Part part, int count) {
    double extended = part.spring().extendedLength();
    Figures figures =
        new Figures(
            new Figures.Lengths(0, job.mechanism().end(), 0, 0, 0, 0, 0, extended),
            null,
            null,
            null,
            null,
            null,
            null);
    return new Fit(part, count, null, null, Assessment.rodEnd(job), figures, List.of(), null, 0, 0);
  }

  private static Hung hung(Part part, int count) {
    double extended = part.spring().extendedLength();
    return new Hung(part, count, part.spring().compressedLength(), extended, 0);
  }

  private static Double closed(Job job, Part part, int count) {
    Path path = new Paths(job).of(part.spring().extendedLength());
    return EndSpeed.of(job, path, hung(part, count));
  }

  /** Let go shut with next to no inertia: it is as fast as damping lets it be at once. */
  private static double moved(Job job, Part part, int count, double inertia) {
    InTime inTime = new InTime(job, fit(job, part, count), inertia);
    double fastest = 0;
    for (Corner corner : Corner.ALL) {
      MotionSetup scene = inTime.scene(corner);
      Motion motion = Motion.of(scene.from(scene.course().start()));
      assertEquals(Motion.End.STOP, motion.end());
      fastest = Math.max(fastest, motion.endSpeed());
    }
    return fastest;
  }

  @Test
  void aLongRunThroughGasEndsAtIt() {
    Part part = warm(GAS);
    Job job = lift(part, 10, Math.PI / 2, RodEnd.MOVING);
    double closed = closed(job, part, 1);
    assertTrue(closed > 0.05, closed + " m/s");
    assertEquals(closed, moved(job, part, 1, TINY), 0.01 * closed);
  }

  @Test
  void rodDownItEndsAtThatOfOil() {
    Part part = warm(GAS);
    Job down = lift(part, 10, Math.PI / 2, RodEnd.FRAME);
    double oil = closed(down, part, 1);
    assertEquals(oil, moved(down, part, 1, SMALL), 0.01 * oil);
    double gas = closed(lift(part, 10, Math.PI / 2, RodEnd.MOVING), part, 1);
    assertTrue(oil < gas / 2, oil + " m/s against " + gas);
  }

  /** A table whose force leaves the same of the strongest spring everywhere. */
  @Test
  void aRunAtAConstantNetForceHasItAllTheWay() {
    Part part = warm(GAS);
    Job lift = lift(part, 10, Math.PI / 2, RodEnd.MOVING);
    double hot = lift.conditions().hottest();
    DoubleUnaryOperator slow = SpringState.STRONG.law(part, lift.conditions()).slow(hot);
    double extended = part.spring().extendedLength();
    double from = extended - part.spring().stroke() + 10e-3;
    List<ForceProfile.Point> points = new ArrayList<>();
    for (int i = 0; i <= 60; i++) {
      double length = from + (extended - STOP_RESERVE - from) * i / 60;
      points.add(new ForceProfile.Point(length, slow.applyAsDouble(extended - length) - 60));
    }
    Mechanism table = new ForceProfile(points);
    Job job = Samples.job(table, Job.OpenStop.FLAP_STOP, RankBy.BALANCED);
    double closed = closed(job, part, 1);
    InTime inTime = new InTime(job, fit(job, part, 1), TINY);
    MotionSetup scene = inTime.scene(new Corner(SpringState.STRONG, LoadState.HEAVY));
    Motion motion = Motion.of(scene.from(scene.course().start()));
    assertEquals(closed, motion.endSpeed(), 0.01 * closed);
    // What is left of 60 N is the same everywhere; what lets it pass is the thinner gas alone.
    int half = motion.last() / 2;
    assertEquals(closed, motion.speed()[half], 0.35 * closed);
  }

  @Test
  void aDamperBesideSlowsIt() {
    Part part = warm(GAS);
    Job bare = lift(part, 10, Math.PI / 2, RodEnd.MOVING);
    Digression law = new Digression(150, 0.2, 0.7);
    Damper damper =
        new Damper(
            new Cylinder(
                8e-3, 18e-3, 15e-3, 0.5, 0.5 + part.spring().extendedLength(), 0.2, 4, 1, 0, 5e-6),
            0,
            law,
            law);
    Part other = with(GAS, null, damper);
    Fitting none =
        new Fitting(
            "N", null, FittingType.BALL_SOCKET, Finish.ZINC, "M8", 0, 1e4, 1, 0, 0, 0, null);
    Beside beside = new Beside(other, 2, none, none, (StraightLift) bare.mechanism());
    Job job = bare.with(List.of(beside));
    double closed = closed(job, part, 1);
    assertTrue(closed < 0.8 * closed(bare, part, 1), closed + " m/s");
    assertEquals(closed, moved(job, part, 1, TINY), 0.01 * closed);
  }

  private static Part with(Part part, Part.Damping damping, Damper spring) {
    return new Part(
        "D-" + part.number(),
        null,
        Family.DAMPER,
        part.finish(),
        spring,
        0,
        part.ends(),
        damping,
        part.limits(),
        Part.Wear.NONE,
        part.mass(),
        part.mounting(),
        part.offer(),
        List.of());
  }

  /**
   * Discharge through an orifice without its laminar part: half the hole, a quarter of the speed.
   */
  @Test
  void aWiderHoleLetsItComeFasterInProportionToItsArea() {
    Part.Damping own = GAS.damping();
    Part narrow = hole(own, 0.3e-3);
    Part wide = hole(own, 0.6e-3);
    Job job = lift(GAS, 10, Math.PI / 2, RodEnd.MOVING);
    double slow = closed(job, narrow, 1);
    double fast = closed(job, wide, 1);
    assertEquals(4, fast / slow, 0.2);
  }

  private static Part hole(Part.Damping own, double diameter) {
    return with(
        GAS,
        new Part.Damping(
            own.endZone(), diameter, 1e-5, own.compressionFlowFactor(), own.wallTimeConstant()));
  }

  @Test
  void whatFrictionHoldsArrivesAtNoSpeed() {
    assertEquals(0, closed(lift(GAS, 60, Math.PI / 2, RodEnd.FRAME), GAS, 1));
  }

  @Test
  void whatNothingDampsHasNone() {
    Part coil = SampleRange.parts(Family.COIL_SPRING).get(0);
    assertNull(closed(lift(coil, 1, Math.PI / 2, RodEnd.FRAME), coil, 1));
    assertNull(closed(lift(GAS, 10, Math.PI / 2, RodEnd.FRAME), with(GAS, null), 1));
  }

  @Test
  void onlyASpringThatIsTheStopAndHasNoOilThereIsUndamped() {
    Part damped = GAS;
    Part.Damping own = GAS.damping();
    Part bare =
        with(
            GAS,
            new Part.Damping(
                0,
                own.orificeDiameter(),
                own.orificeLength(),
                own.compressionFlowFactor(),
                own.wallTimeConstant()));
    Job down = stopped(lift(GAS, 10, Math.PI / 2, RodEnd.FRAME));
    Job up = stopped(lift(GAS, 10, Math.PI / 2, RodEnd.MOVING));
    assertFalse(undamped(down, damped));
    assertTrue(undamped(up, damped), "rod up the oil is at the other end");
    assertTrue(undamped(down, bare));
    assertFalse(undamped(lift(GAS, 10, Math.PI / 2, RodEnd.FRAME), bare), "it is not the stop");
  }

  private static boolean undamped(Job job, Part part) {
    return EndSpeed.undampedStop(job, job.mechanism().travel(job.mechanism().end()), part);
  }

  private static Job stopped(Job job) {
    return Samples.job(job.mechanism(), Job.OpenStop.SPRING_STOP, RankBy.BALANCED);
  }
}
