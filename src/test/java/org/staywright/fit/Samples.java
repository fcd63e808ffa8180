package org.staywright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.job.Still;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.Rigid;
import org.staywright.mechanism.StraightLift;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.FittingType;

/** Jobs for the tests of choosing; all invented. */
public final class Samples {

  private Samples() {}

  /** The lid of the contract's example. */
  public static Job lid() {
    return job(
        new HingedFlap(
            new Masses(18, 18.9, 17.1),
            new Point(0.41, 0.015),
            new Point(0.8, 0),
            1,
            Math.toRadians(80),
            0,
            0.5,
            new Mounts(new Point(0.015, -0.065), new Point(0.36, -0.011), 0, RodEnd.EITHER)),
        Job.OpenStop.FLAP_STOP,
        RankBy.BALANCED);
  }

  public static Job job(Mechanism mechanism, Job.OpenStop stop, RankBy rankBy) {
    return new Job(
        "test",
        mechanism,
        List.of(1, 2),
        new Job.FittingWish(FittingType.BALL_SOCKET, null),
        new Job.FittingWish(FittingType.BALL_SOCKET, null),
        new Job.Conditions(263.15, 293.15, 313.15, 5, 1000),
        Requirements.of(50, 1.1, 5e-3, 4e-3, stop),
        new Job.Filters(Set.of(Family.GAS_SPRING), null, false),
        rankBy,
        20);
  }

  /** A flap somebody might build, and some that nobody would. */
  public static Job randomJob(Random random) {
    double width = between(random, 0.3, 1.4);
    int sense = random.nextBoolean() ? 1 : -1;
    double mass = between(random, 3, 40);
    double tolerance = between(random, 0, 0.15);
    HingedFlap flap =
        new HingedFlap(
            new Masses(mass, mass * (1 + tolerance), mass * (1 - tolerance)),
            new Point(sense * width * between(random, 0.4, 0.6), between(random, -0.03, 0.03)),
            new Point(sense * width, 0),
            sense,
            Math.toRadians(between(random, 40, 110)),
            Math.toRadians(random.nextInt(3) == 0 ? between(random, -90, 90) : 0),
            between(random, 0, 2),
            new Mounts(
                new Point(sense * between(random, -0.05, 0.1), -between(random, 0.03, 0.35)),
                new Point(sense * width * between(random, 0.1, 0.6), -between(random, 0, 0.05)),
                random.nextInt(4) == 0 ? between(random, 0, 0.05) : 0,
                RodEnd.values()[random.nextInt(3)]));
    return randomJob(random, flap, Job.OpenStop.values()[random.nextInt(2)]);
  }

  /** A load on a guide, steep or nearly level, up or down. */
  public static Job randomLift(Random random) {
    double mass = between(random, 3, 60);
    double tolerance = between(random, 0, 0.15);
    double direction = Math.toRadians(between(random, -20, 200));
    double travel = between(random, 0.05, 0.4);
    Point start = new Point(between(random, 0.2, 0.6), between(random, -0.1, 0.1));
    StraightLift lift =
        new StraightLift(
            new Masses(mass, mass * (1 + tolerance), mass * (1 - tolerance)),
            travel,
            direction,
            between(random, 0, 20),
            new Mounts(
                new Point(0, 0),
                start.turned(direction),
                random.nextInt(4) == 0 ? between(random, 0, 0.05) : 0,
                RodEnd.values()[random.nextInt(3)]));
    return randomJob(random, lift, Job.OpenStop.values()[random.nextInt(2)]);
  }

  /** A table of forces that may rise, fall and change its sign. */
  public static Job randomProfile(Random random) {
    List<ForceProfile.Point> points = new ArrayList<>();
    double length = between(random, 0.2, 0.6);
    for (int i = 2 + random.nextInt(8); i > 0; i--) {
      points.add(new ForceProfile.Point(length, between(random, -50, 600)));
      length += between(random, 0.001, 0.1);
    }
    return randomJob(random, new ForceProfile(points), Job.OpenStop.FLAP_STOP);
  }

  private static Job randomJob(Random random, Mechanism mechanism, Job.OpenStop stop) {
    Job plain = job(mechanism, stop, RankBy.values()[random.nextInt(RankBy.values().length)]);
    return new Job(
        plain.name(),
        mechanism,
        random.nextBoolean() ? List.of(1, 2) : List.of(2, 3, 4),
        plain.rodEnd(),
        random.nextInt(5) == 0 ? new Job.FittingWish(FittingType.EYELET, null) : plain.tubeEnd(),
        plain.conditions(),
        randomRequirements(random, plain.requirements().openStop(), mechanism),
        new Job.Filters(
            Set.of(Family.GAS_SPRING),
            random.nextInt(5) == 0 ? Finish.STAINLESS : null,
            random.nextInt(4) == 0),
        plain.rankBy(),
        1 + random.nextInt(30));
  }

  /** The same mechanism with another mass, its centre off, and other mounts. */
  public static Rigid moved(Rigid meant, double mass, double x, double y, Mounts mounts) {
    double nominal = mass * meant.masses().nominal();
    Masses masses = new Masses(nominal, nominal, nominal);
    if (meant instanceof HingedFlap flap) {
      Point centre = flap.centreOfMass();
      return new HingedFlap(
          masses,
          new Point(centre.x() + x, centre.y() + y),
          flap.handle(),
          flap.sense(),
          flap.end(),
          flap.tilt(),
          flap.friction(),
          mounts);
    }
    StraightLift lift = (StraightLift) meant;
    return new StraightLift(masses, lift.end(), lift.direction(), lift.friction(), mounts);
  }

  /** The same job that also asks for a hold in newtons, or to stay with one spring failed. */
  public static Job holding(Random random, Job job) {
    Requirements asked = job.requirements();
    if (random.nextInt(3) == 0) {
      asked = asked.with(Criterion.HOLD_OPEN, between(random, 0, 20));
    }
    if (random.nextInt(5) == 0) {
      asked = asked.with(Criterion.ONE_FAILED, 0);
    }
    return job.asking(asked);
  }

  private static Requirements randomRequirements(
      Random random, Job.OpenStop stop, Mechanism mechanism) {
    Requirements asked =
        Requirements.of(between(random, 20, 120), between(random, 0.9, 1.3), 5e-3, 4e-3, stop);
    if (random.nextInt(4) == 0) {
      asked = asked.with(Criterion.STAYS_SHUT, 0);
    }
    return random.nextInt(3) == 0 ? behaving(random, mechanism, asked) : asked;
  }

  /** One to three of the things that may be asked besides. */
  private static Requirements behaving(Random random, Mechanism mechanism, Requirements plain) {
    double way = mechanism.end() - mechanism.start();
    Requirements asked = plain;
    for (int i = 1 + random.nextInt(3); i > 0; i--) {
      asked =
          switch (random.nextInt(6)) {
            case 0 -> asked.with(Criterion.HAND_OPEN, between(random, 20, 150));
            case 1 -> asked.with(Criterion.HAND_CLOSE, between(random, 20, 150));
            case 2 -> asked.with(Criterion.RISES, mechanism.start() + way * random.nextDouble());
            case 3 ->
                asked.with(
                    new Still(
                        mechanism.start() + way * random.nextDouble() / 2,
                        mechanism.start() + way * (1 + random.nextDouble()) / 2));
            case 4 ->
                asked.with(
                    Criterion.LATCH_PUSH, random.nextBoolean() ? 0 : between(random, 0, 100));
            default ->
                asked.with(Criterion.OVER_CENTRE, mechanism.start() + way * random.nextDouble());
          };
    }
    return asked;
  }

  private static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }
}
