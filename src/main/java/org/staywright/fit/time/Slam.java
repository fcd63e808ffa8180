package org.staywright.fit.time;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.InTime;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Requirements;
import org.staywright.gas.BeyondEquation;
import org.staywright.motion.Gain;
import org.staywright.motion.Hand;
import org.staywright.motion.Motion;
import org.staywright.motion.MotionSetup;

/**
 * How hard a load meets an end of its travel in the worst corner of springs and load: sent there by
 * a hand that lets go of it, or let go at rest at the other end.
 *
 * @param opening which end
 * @param corner of springs and load
 * @param energy with which it meets the end, J
 * @param speed of the handle, m/s
 */
public record Slam(boolean opening, Corner corner, double energy, double speed) {

  /** From here on it slams, J: our choice, no source. */
  public static final double HARD = 4;

  /**
   * @param bound no motion of it comes to more, J
   */
  private record Try(Corner corner, MotionSetup scene, double bound) {}

  /** Empty where it meets that end softly, or nobody knows what moves. */
  public static Optional<Slam> of(Job job, Fit fit, boolean opening) {
    if (!InTime.handed(job)) {
      return Optional.empty();
    }
    InTime inTime = new InTime(job, fit);
    List<Try> hardestFirst =
        Corner.ALL.stream()
            .flatMap(corner -> tries(job, inTime, corner, opening))
            .sorted(Comparator.comparingDouble(Try::bound).reversed())
            .toList();
    Slam hardest = new Slam(opening, Corner.ALL.get(0), 0, 0);
    for (Try each : hardestFirst) {
      if (each.bound() < Math.max(HARD, hardest.energy())) {
        break;
      }
      Slam next = moved(each, opening);
      hardest = next.energy() > hardest.energy() ? next : hardest;
    }
    return hardest.energy() < HARD ? Optional.empty() : Optional.of(hardest);
  }

  /** Without a hand it may be the faster: what starts slowly has warmer gas on its way. */
  private static Stream<Try> tries(Job job, InTime inTime, Corner corner, boolean opening) {
    Requirements asked = job.requirements();
    double force = opening ? asked.handOpenLimit() : -asked.handCloseLimit();
    MotionSetup alone = opening ? inTime.shut(corner) : inTime.scene(corner);
    MotionSetup sent = alone.with(alone.springs(), new Hand.LetsGo(force));
    boolean moves = alone.resting(alone.start()) * force > 0;
    return (moves ? Stream.of(sent, alone) : Stream.of(sent))
        .map(scene -> new Try(corner, scene, Gain.most(scene, opening)));
  }

  private static Slam moved(Try each, boolean opening) {
    double hand = each.scene().course().hand();
    try {
      Motion motion = Motion.of(each.scene());
      boolean there = motion.end() == Motion.End.STOP && motion.endSpeed() > 0 == opening;
      double energy = there ? motion.stopEnergy() : 0;
      return new Slam(opening, each.corner(), energy, Math.abs(motion.endSpeed()) * hand);
    } catch (BeyondEquation beyond) {
      // Nobody knows how fast it is then; what it cannot exceed is said instead.
      double speed = Math.sqrt(2 * each.bound() / each.scene().inertia());
      return new Slam(opening, each.corner(), each.bound(), speed * hand);
    }
  }
}
