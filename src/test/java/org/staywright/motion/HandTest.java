package org.staywright.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.unit.Unit.STANDARD_GRAVITY;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.StraightLift;
import org.staywright.mechanism.Travel;
import org.staywright.spring.ForceLaw;
import org.staywright.spring.GasSpring;

/**
 * A hand that lets go, against closed forms: kinematics of even acceleration and the work–energy
 * theorem (any text on mechanics, e.g. J. L. Meriam and L. G. Kraige, Dynamics, ch. 2 and 3).
 */
class HandTest {

  private static final double MASS = 4;
  private static final double HEIGHT = 0.5;
  private static final double PACE = Hand.LetsGo.PACE;
  private static final double WEIGHT = MASS * STANDARD_GRAVITY;

  /** No spring at work; something beside resists in proportion to the speed. */
  private static MotionSetup lift(double degrees, double friction, double resistance) {
    StraightLift lift =
        new StraightLift(
            new Masses(MASS, MASS, MASS),
            HEIGHT,
            Math.toRadians(degrees),
            friction,
            new Mounts(new Point(0, -0.1), new Point(0.3, 0), 0, Mounts.RodEnd.EITHER));
    Travel travel = lift.travel(lift.end());
    MotionSetup plain = Scenes.fall(MASS, HEIGHT);
    Drag drag = (q, speed) -> resistance * Math.abs(speed);
    return new MotionSetup(
        new TravelSpline(travel, travel.load(), drag),
        MASS,
        plain.strut(),
        0,
        plain.extended(),
        plain.rodRise(),
        Hand.NONE,
        0,
        MotionSetup.PATIENCE);
  }

  @Test
  void liftsAWeightAtAnEvenPaceOnceItHasIt() {
    double force = 60;
    double friction = 5;
    Motion motion = Motion.of(lift(90, friction, 0).with(0, new Hand.LetsGo(force)));
    double acceleration = (force - WEIGHT - friction) / MASS;
    double gathering = PACE * PACE / (2 * acceleration);
    double time = PACE / acceleration + (HEIGHT - gathering) / PACE;
    assertEquals(Motion.End.STOP, motion.end());
    assertEquals(time, motion.endTime(), 1e-6);
    assertEquals(PACE, motion.endSpeed(), 1e-6);
    // In balance the hand has weight and friction to bear, and no more: its work tells.
    double work = (WEIGHT + friction) * HEIGHT + MASS * PACE * PACE / 2;
    assertEquals(work, motion.energy().hand(), 1e-5);
    assertEquals(MASS * PACE * PACE / 2, motion.stopEnergy(), 1e-6);
  }

  @Test
  void keepsThePaceAgainstWhatGrowsWithIt() {
    double resistance = 40;
    Motion motion = Motion.of(lift(0, 0, resistance).with(0, new Hand.LetsGo(100)));
    assertEquals(PACE, motion.endSpeed(), 1e-6);
    // On the level F = c·v: nearly all of its work, but for the start.
    double gathering = MASS * PACE * PACE / 2;
    double damped = resistance * PACE * HEIGHT;
    assertTrue(motion.energy().hand() > 0.98 * (damped + gathering), motion.energy().toString());
    assertTrue(motion.energy().hand() < damped + gathering, motion.energy().toString());
  }

  @Test
  void comesToNoMoreSpeedThanItsForceAllows() {
    double resistance = 200;
    double force = 60;
    Motion motion = Motion.of(lift(0, 0, resistance).with(0, new Hand.LetsGo(force)));
    double time = motion.endTime();
    assertEquals(
        force / resistance * (1 - Math.exp(-resistance * time / MASS)), motion.endSpeed(), 1e-6);
    assertTrue(motion.endSpeed() < PACE);
    assertEquals(force * HEIGHT, motion.energy().hand(), 1e-5);
  }

  @Test
  void letsGoOfWhatFallsByItself() {
    double force = 20;
    MotionSetup scene = lift(90, 0, 0).from(HEIGHT).with(0, new Hand.LetsGo(-force));
    Motion motion = Motion.of(scene);
    double gathering = PACE * PACE / (2 * (STANDARD_GRAVITY + force / MASS));
    double speed = Math.sqrt(PACE * PACE + 2 * STANDARD_GRAVITY * (HEIGHT - gathering));
    assertEquals(-speed, motion.endSpeed(), 1e-6);
    assertEquals(force * gathering, motion.energy().hand(), 1e-6);
    // A hand that pushes on brings down more.
    Motion pushed = Motion.of(scene.with(0, new Hand.PushesOn(-force)));
    assertEquals((WEIGHT + force) * HEIGHT, pushed.stopEnergy(), 1e-5);
    assertTrue(pushed.stopEnergy() > motion.stopEnergy());
  }

  @Test
  void givesUpWhatIsTooHeavyForIt() {
    Motion motion = Motion.of(lift(90, 0, 0).with(0, new Hand.LetsGo(WEIGHT - 1)));
    assertEquals(Motion.End.REST, motion.end());
    assertEquals(0, motion.endQ(), 0);
  }

  @Test
  void holdsBackWhatComesAgainstIt() {
    double force = 15;
    Motion motion = Motion.of(lift(90, 0, 0).from(HEIGHT).with(0, new Hand.LetsGo(force)));
    assertEquals((WEIGHT - force) * HEIGHT, motion.stopEnergy(), 1e-5);
    assertEquals(-force * HEIGHT, motion.energy().hand(), 1e-5);
  }

  @Test
  void takesHoldAgainOfWhatComesToRestOnItsWay() {
    // The level lift of a table: first it goes by itself, then it must be pushed.
    MotionSetup scene = Scenes.humped(3, 40, -40);
    Motion motion = Motion.of(scene.with(0, new Hand.LetsGo(80)));
    assertEquals(Motion.End.STOP, motion.end());
    assertEquals(PACE, motion.endSpeed(), 1e-6);
    assertEquals(Motion.End.REST, Motion.of(scene).end());
    assertTrue(motion.energy().imbalance() < 1e-4);
  }

  /** Without heat and damping all that is gained after letting go is the net force's work. */
  @Test
  void afterLettingGoGainsTheWorkOfTheNetForce() {
    GasSpring spring = Scenes.spring(280, 0.16);
    MotionSetup scene =
        Scenes.scene(Scenes.lid(13), Scenes.bare(spring), 2, 0.43)
            .from(0)
            .with(2, new Hand.LetsGo(60));
    Motion motion = Motion.of(scene);
    TravelSpline course = scene.course();
    double closed = 0.43 - course.length(0);
    ForceLaw.Fast gas = spring.charged().fast(closed, 0, 293.15);
    DoubleUnaryOperator net =
        q ->
            2 * gas.force(0.43 - course.length(q)) * course.lever(q)
                + course.load(q)
                - scene.friction(q);
    // It goes faster by itself from where the net force is above zero.
    double alone = 0;
    while (net.applyAsDouble(alone) < 0) {
      alone += 1e-5;
    }
    double work = 0;
    int steps = 2000;
    for (int i = 0; i < steps; i++) {
      double q = alone + (course.end() - alone) * (i + 0.5) / steps;
      work += net.applyAsDouble(q) * (course.end() - alone) / steps;
    }
    double pace = PACE / course.hand();
    double energy = scene.inertia() * pace * pace / 2 + work;
    assertTrue(alone > 0.1 && alone < course.end() - 0.1, alone + " rad");
    assertEquals(energy, motion.stopEnergy(), 1e-3 * energy);
  }
}
