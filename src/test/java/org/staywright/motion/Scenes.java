package org.staywright.motion;

import java.util.List;
import java.util.Random;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.StraightLift;
import org.staywright.mechanism.Travel;
import org.staywright.spring.Cylinder;
import org.staywright.spring.Damper;
import org.staywright.spring.Digression;
import org.staywright.spring.GasSpring;

/** Mechanisms and springs to let go; all invented. */
final class Scenes {

  private static final Mounts ANYWHERE =
      new Mounts(new Point(0, -0.1), new Point(0.3, 0), 0, Mounts.RodEnd.EITHER);

  private Scenes() {}

  static GasSpring spring(double force, double stroke) {
    double bore = 15.6e-3;
    double oil = 4.5e-6;
    return new GasSpring(
        new Cylinder(
            8e-3,
            18e-3,
            bore,
            stroke,
            2 * stroke + 60e-3,
            stroke + 60e-3,
            11 + 0.02 * force,
            1.5,
            Math.PI / 4 * bore * bore * (stroke + 8e-3) - oil,
            oil),
        force);
  }

  /** As delivered, with an orifice, rod down or not as the course says. */
  static Strut strut(GasSpring spring, double kelvin) {
    double ring = spring.cylinder().boreArea() - spring.cylinder().rodArea();
    return new Strut(
        spring.charged(),
        kelvin,
        new Orifice(0.6e-3, 2e-3, 4, ring),
        OilZones.of(
            spring.stroke(), spring.cylinder().oilVolume(), ring, spring.cylinder().boreArea()),
        3);
  }

  /** Without orifice or heat. */
  static Strut bare(GasSpring spring) {
    return new Strut(spring.charged(), 293.15, null, OilZones.NONE, Double.POSITIVE_INFINITY);
  }

  /** The lid of the documentation with its springs: mass 18 kg, 0.8 m wide. */
  static HingedFlap lid(double mass) {
    return new HingedFlap(
        new Masses(mass, mass, mass),
        new Point(0.41, 0.015),
        new Point(0.8, 0),
        1,
        Math.toRadians(80),
        0,
        0.5,
        new Mounts(new Point(0.015, -0.065), new Point(0.36, -0.011), 0, Mounts.RodEnd.EITHER));
  }

  static MotionSetup scene(Mechanism mechanism, Strut strut, int springs, double extended) {
    Travel travel = mechanism.travel(mechanism.end());
    TravelSpline course = new TravelSpline(travel, travel.load(), Drag.NONE);
    return new MotionSetup(
        course,
        mechanism.inertia().orElse(1),
        strut,
        springs,
        extended,
        q -> -mechanism.rise(q).orElse(Double.NaN),
        Hand.NONE,
        course.end(),
        MotionSetup.PATIENCE);
  }

  /** Straight down over a height, no spring at work. */
  static MotionSetup fall(double mass, double height) {
    StraightLift lift =
        new StraightLift(new Masses(mass, mass, mass), height, Math.PI / 2, 0, ANYWHERE);
    return scene(lift, bare(spring(400, 0.16)), 0, 0.38);
  }

  /** The same with something beside that resists in proportion to the speed. */
  static MotionSetup dragged(double mass, double height, double resistance) {
    StraightLift lift =
        new StraightLift(new Masses(mass, mass, mass), height, Math.PI / 2, 0, ANYWHERE);
    Travel travel = lift.travel(lift.end());
    MotionSetup plain = fall(mass, height);
    return new MotionSetup(
        new TravelSpline(travel, travel.load(), (q, speed) -> resistance * Math.abs(speed)),
        mass,
        plain.strut(),
        0,
        plain.extended(),
        plain.rodRise(),
        Hand.NONE,
        height,
        MotionSetup.PATIENCE);
  }

  /** A rod hung at its end, let go at an angle from hanging down; its travel ends there. */
  static MotionSetup pendulum(double length, double degrees) {
    HingedFlap rod =
        new HingedFlap(
            new Masses(1, 1, 1),
            new Point(0, -length / 2),
            new Point(0, -length),
            1,
            Math.toRadians(degrees),
            0,
            0,
            ANYWHERE);
    return scene(rod, bare(spring(400, 0.16)), 0, 0.38);
  }

  /** A mass on a plain spring: a table of forces in proportion to the way. */
  static MotionSetup oscillator(double mass, double rate, double amplitude) {
    ForceProfile table =
        new ForceProfile(
            List.of(
                new ForceProfile.Point(1 - 2 * amplitude, -2 * rate * amplitude),
                new ForceProfile.Point(1 + 2 * amplitude, 2 * rate * amplitude)));
    MotionSetup plain = scene(table, bare(spring(400, 0.16)), 0, 0.38);
    return new MotionSetup(
        plain.course(),
        mass,
        plain.strut(),
        0,
        plain.extended(),
        plain.rodRise(),
        Hand.NONE,
        1 + amplitude,
        5);
  }

  /** A mass that one force drives over the first half of a metre and another over the second. */
  static MotionSetup humped(double mass, double first, double second) {
    ForceProfile table =
        new ForceProfile(
            List.of(
                new ForceProfile.Point(1, -first),
                new ForceProfile.Point(1.45, -first),
                new ForceProfile.Point(1.55, -second),
                new ForceProfile.Point(2.5, -second)));
    MotionSetup plain = scene(table, bare(spring(400, 0.16)), 0, 0.38);
    Drag rubber = (q, speed) -> 30 * Math.abs(speed);
    Travel travel = table.travel(table.end());
    return new MotionSetup(
        new TravelSpline(travel, travel.load(), rubber),
        mass,
        plain.strut(),
        0,
        plain.extended(),
        plain.rodRise(),
        Hand.NONE,
        1,
        MotionSetup.PATIENCE);
  }

  /** The same with a linear damper along the way. */
  static MotionSetup damped(double mass, double rate, double resistance, double amplitude) {
    Digression linear = new Digression(resistance, 1, 1);
    Damper damper =
        new Damper(
            new Cylinder(8e-3, 18e-3, 15e-3, 0.5, 1.2, 0.7, 0, 1, 0, 5e-6), 0, linear, linear);
    Strut strut = new Strut(damper.law(), 293.15, null, OilZones.NONE, 1);
    MotionSetup plain = oscillator(mass, rate, amplitude);
    return new MotionSetup(
        plain.course(), mass, strut, 1, 1.2, plain.rodRise(), Hand.NONE, plain.start(), 2);
  }

  /** Anything somebody might let go. */
  static MotionSetup random(Random random) {
    GasSpring spring = spring(between(random, 100, 700), between(random, 0.15, 0.2));
    Strut strut = strut(spring, between(random, 253, 333));
    MotionSetup scene =
        scene(
            random.nextBoolean() ? lid(between(random, 8, 30)) : lift(random),
            strut,
            random.nextInt(3),
            0.34 + spring.stroke());
    double force = random.nextInt(3) == 0 ? between(random, -150, 150) : 0;
    Hand hand = random.nextBoolean() ? new Hand.PushesOn(force) : new Hand.LetsGo(force);
    double start = random.nextBoolean() ? scene.course().start() : scene.course().end();
    return scene.from(start).with(scene.springs(), hand);
  }

  private static StraightLift lift(Random random) {
    double mass = between(random, 5, 60);
    return new StraightLift(
        new Masses(mass, mass, mass),
        0.12,
        Math.toRadians(between(random, 20, 90)),
        between(random, 0, 10),
        new Mounts(new Point(0, 0), new Point(0.33, 0.1), 0, Mounts.RodEnd.EITHER));
  }

  private static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }
}
