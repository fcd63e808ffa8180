package org.staywright.fit;

import java.util.List;
import java.util.Random;
import java.util.Set;
import org.staywright.fit.job.Beside;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.FittingChoice;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.Requirements;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.Seal;
import org.staywright.mechanism.StraightLift;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.part.Range;

/** Jobs of every kind that gravity helps or hinders, drawn at random; all invented. */
enum RandomFlaps {
  /** Level when shut, lifted. */
  LID(0, 50, 85),
  /** Level when shut, opened past the vertical. */
  PAST_THE_VERTICAL(0, 90, 110),
  /** Overhead and level when shut, let down. */
  HATCH_OPENING_DOWNWARDS(0, -80, -40),
  /** Upright when shut, let down to level. */
  LET_DOWN(90, -95, -60),
  /** Upright and leaning back when shut, pulled up and over. */
  LEANING(100, -100, -70),
  /** Hangs when shut, lifted outwards. */
  HANGING(-90, 60, 95),
  LIFT(0, 0, 0),
  PROFILE(0, 0, 0);

  private final double closed;
  private final double least;
  private final double most;

  /**
   * @param closed angle of the flap against level, its hinge at the left, °
   * @param least angle that it opens by, counterclockwise, °
   * @param most likewise
   */
  RandomFlaps(double closed, double least, double most) {
    this.closed = closed;
    this.least = least;
    this.most = most;
  }

  /** A job of this kind, tilted, sealed or damped now and then. */
  Job draw(Random random, Range range) {
    Mechanism mechanism =
        switch (this) {
          case LIFT -> lift(random);
          case PROFILE -> profile(random);
          default -> flap(random);
        };
    Requirements asked =
        Requirements.of(
            between(random, 60, 250),
            random.nextInt(3) == 0 ? between(random, 0.3, 1) : between(random, 1, 1.2),
            between(random, 2, 6) / 1000,
            between(random, 2, 6) / 1000,
            Job.OpenStop.FLAP_STOP);
    if (random.nextInt(4) == 0) {
      asked = asked.with(Criterion.HOLD_OPEN, between(random, 0, 15));
    }
    if (random.nextInt(4) == 0) {
      asked = asked.with(Criterion.STAYS_SHUT, 0);
    }
    Job plain = Samples.job(mechanism, Job.OpenStop.FLAP_STOP, RankBy.BALANCED);
    Job job =
        new Job(
            name(),
            mechanism,
            List.of(1, 2),
            plain.rodEnd(),
            plain.tubeEnd(),
            new Job.Conditions(
                263.15 + random.nextInt(20), 293.15, 303.15 + random.nextInt(20), 5, 1000),
            asked,
            new Job.Filters(
                Set.of(Family.GAS_SPRING, Family.TRACTION_SPRING, Family.COIL_SPRING), null, false),
            RankBy.BALANCED,
            8);
    return mechanism instanceof HingedFlap flap && random.nextInt(4) == 0
        ? damped(random, job, flap, range)
        : job;
  }

  private HingedFlap flap(Random random) {
    double width = between(random, 0.35, 1.1);
    double mass = between(random, 3, 30);
    double tolerance = between(random, 0, 0.1);
    double opens = between(random, least, most);
    int sense = opens > 0 ? 1 : -1;
    double turned = Math.toRadians(closed + between(random, -5, 5));
    // Along the flap and behind it: the mounts sit where a flap of this size has room.
    double along = between(random, 0.12, 0.5) * width;
    Point moving = new Point(along, -sense * between(random, 0, 0.05)).turned(turned);
    Point frame =
        random.nextInt(3) > 0
            ? new Point(between(random, -0.1, 0.3) * width, -sense * between(random, 0.1, 0.45))
                .turned(turned)
            : new Point(between(random, -0.7, 0.7) * width, between(random, -0.7, 0.7) * width);
    return new HingedFlap(
        new Masses(mass, mass * (1 + tolerance), mass * (1 - tolerance) * between(random, 0.8, 1)),
        new Point(between(random, 0.4, 0.55) * width, between(random, -0.02, 0.02)).turned(turned),
        new Point(width, 0).turned(turned),
        sense,
        Math.toRadians(Math.abs(opens)),
        random.nextInt(3) == 0 ? Math.toRadians(between(random, -12, 12)) : 0,
        between(random, 0, 1.5),
        new Mounts(frame, moving, 0, RodEnd.EITHER),
        null,
        random.nextInt(4) == 0
            ? new Seal(between(random, -6, 8), Math.toRadians(between(random, 2, 10)))
            : Seal.NONE);
  }

  private static StraightLift lift(Random random) {
    double mass = between(random, 3, 40);
    double direction = Math.toRadians(between(random, -90, 270));
    return new StraightLift(
        new Masses(mass, mass * 1.05, mass * between(random, 0.7, 0.95)),
        between(random, 0.08, 0.35),
        direction,
        between(random, 0, 20),
        new Mounts(
            new Point(0, 0),
            new Point(between(random, 0.2, 0.5), between(random, -0.1, 0.1)).turned(direction),
            0,
            RodEnd.EITHER));
  }

  private static ForceProfile profile(Random random) {
    double length = between(random, 0.25, 0.5);
    double force = between(random, 60, 500);
    double travel = between(random, 0.06, 0.2);
    return new ForceProfile(
        List.of(
            new ForceProfile.Point(length, force * between(random, 0.95, 1.3)),
            new ForceProfile.Point(length + travel, force)));
  }

  /** With a damper beside the springs, where the range has one that reaches. */
  private static Job damped(Random random, Job job, HingedFlap flap, Range range) {
    for (int i = 0; i < 40; i++) {
      Part damper = range.part(random.nextInt(range.size()));
      if (damper.family() != Family.DAMPER) {
        continue;
      }
      var rods = FittingChoice.of(range.fittings(), job.rodEnd(), damper.ends().rod());
      var tubes = FittingChoice.of(range.fittings(), job.tubeEnd(), damper.ends().tube());
      if (rods.isEmpty() || tubes.isEmpty()) {
        continue;
      }
      Beside beside = new Beside(damper, 1, rods.get(0), tubes.get(0), flap);
      if (beside.fault().isEmpty()) {
        return job.with(List.of(beside));
      }
    }
    return job;
  }

  private static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }
}
