package org.staywright.fit.assess;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Requirements;
import org.staywright.gas.BeyondEquation;
import org.staywright.motion.Gain;
import org.staywright.motion.Hand;
import org.staywright.motion.Motion;
import org.staywright.motion.Motion.End;
import org.staywright.motion.MotionSetup;

/**
 * A load opened from shut by a hand that has its limit and lets go, as springs and load may turn
 * out.
 *
 * @param cases one a corner
 * @param hand lever of the hand, m or 1
 */
public record Opening(List<Case> cases, double hand) {

  /**
   * @param corner of springs and load
   * @param motion from shut
   */
  public record Case(Corner corner, Motion motion) {}

  /**
   * @param value of a figure, SI; infinite where it never comes to that
   * @param corner in which it is the greatest
   */
  public record Worst(double value, Corner corner) {}

  /** What a job asks in time and a fit misses. */
  static List<Blocker> missed(Job job, Fit fit) {
    return kept(job, fit).stream().filter(each -> !each.met()).map(Opening::blocker).toList();
  }

  /** What a job asks in time, each kept or not; nothing where nobody knows what moves. */
  public static List<Kept> kept(Job job, Fit fit) {
    if (!asksOf(job)) {
      return List.of();
    }
    Requirements asked = job.requirements();
    InTime inTime = new InTime(job, fit);
    List<Case> cases = new ArrayList<>();
    for (Corner corner : Corner.ALL) {
      try {
        cases.add(new Case(corner, Motion.of(pushed(job, inTime.shut(corner)))));
      } catch (BeyondEquation beyond) {
        return beyond(asked, corner);
      }
    }
    return new Opening(cases, inTime.hand()).kept(asked);
  }

  /** Whether nothing is missed: known as soon as it is missed once, most likely where it gains. */
  public static boolean keeps(Job job, Fit fit) {
    if (!asksOf(job)) {
      return true;
    }
    Requirements asked = job.requirements();
    InTime inTime = new InTime(job, fit);
    Map<Corner, MotionSetup> scenes = new HashMap<>();
    Corner.ALL.forEach(corner -> scenes.put(corner, pushed(job, inTime.shut(corner))));
    List<Corner> hardestFirst =
        scenes.keySet().stream()
            .sorted(Comparator.comparingDouble(corner -> -Gain.most(scenes.get(corner), true)))
            .toList();
    for (Corner corner : hardestFirst) {
      try {
        Case one = new Case(corner, Motion.of(scenes.get(corner)));
        if (!met(new Opening(List.of(one), inTime.hand()).kept(asked))) {
          return false;
        }
      } catch (BeyondEquation beyond) {
        return met(beyond(asked, corner));
      }
    }
    return true;
  }

  private static boolean met(List<Kept> all) {
    return all.stream().allMatch(Kept::met);
  }

  /** By a hand at its limit. */
  public static MotionSetup pushed(Job job, MotionSetup scene) {
    return scene.with(scene.springs(), new Hand.LetsGo(job.requirements().handOpenLimit()));
  }

  private static boolean asksOf(Job job) {
    return InTime.handed(job) && job.requirements().asksInTime();
  }

  /** So fast that the gas leaves what can be computed. */
  private static List<Kept> beyond(Requirements asked, Corner corner) {
    Worst fast = new Worst(Double.POSITIVE_INFINITY, corner);
    return kept(asked, fast, fast, new Worst(0, corner));
  }

  /** Speed of the handle when it meets the stop, m/s. */
  public Worst stopSpeed() {
    return worst(each -> each.end() == End.STOP ? Math.abs(each.endSpeed()) * hand : 0);
  }

  /** Energy at the stop, J. */
  public Worst stopEnergy() {
    return worst(Motion::stopEnergy);
  }

  /** Time to open, s; infinite where it does not come to its open end. */
  public Worst time() {
    return worst(each -> opened(each) ? each.endTime() : Double.POSITIVE_INFINITY);
  }

  private static boolean opened(Motion motion) {
    return motion.end() == End.STOP && motion.endSpeed() > 0;
  }

  private Worst worst(ToDoubleFunction<Motion> figure) {
    return cases.stream()
        .map(each -> new Worst(figure.applyAsDouble(each.motion()), each.corner()))
        .max(Comparator.comparingDouble(Worst::value))
        .orElseThrow();
  }

  /** The requirements in time that a job makes, each kept or not. */
  public List<Kept> kept(Requirements asked) {
    return kept(asked, stopSpeed(), stopEnergy(), time());
  }

  private static List<Kept> kept(Requirements asked, Worst speed, Worst energy, Worst time) {
    List<Kept> kept = new ArrayList<>();
    add(kept, asked, Criterion.STOP_SPEED, speed);
    add(kept, asked, Criterion.STOP_ENERGY, energy);
    add(kept, asked, Criterion.OPENING_TIME, time);
    return kept;
  }

  private static void add(List<Kept> kept, Requirements asked, Criterion criterion, Worst worst) {
    if (asked.asks(criterion)) {
      kept.add(new Kept(criterion, asked.limit(criterion), worst.value(), worst.corner()));
    }
  }

  private static Blocker blocker(Kept kept) {
    boolean never = Double.isInfinite(kept.has());
    return new Blocker(
        kept.criterion(),
        kept.needed(),
        never ? Double.NaN : kept.has(),
        never ? kept.has() : kept.has() / kept.needed() - 1);
  }
}
