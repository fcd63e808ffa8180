package org.staywright.fit;

import static org.staywright.unit.Unit.ROOM;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.staywright.gas.BeyondEquation;
import org.staywright.mechanism.SeatColumn;
import org.staywright.motion.Hand;
import org.staywright.motion.Motion;
import org.staywright.motion.Motion.End;
import org.staywright.motion.Scene;

/**
 * A load opened by a hand at its limit all the way, at every temperature of its job.
 *
 * @param motions coldest, 20 °C, hottest
 * @param hand lever of the hand, m or 1
 */
public record Opening(List<Motion> motions, double hand) {

  /** The temperatures at which motions are looked at, K. */
  static List<Double> temperatures(Job.Conditions conditions) {
    return Stream.of(conditions.coldest(), ROOM, conditions.hottest()).distinct().sorted().toList();
  }

  static Motion at(Job job, Fit fit, double kelvin) {
    Scene scene = InTime.scene(job, fit, kelvin, Double.NaN);
    Scene shut = scene.from(scene.course().start());
    return Motion.of(shut.with(fit.count(), new Hand.PushesOn(job.requirements().maxHandForce())));
  }

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
    try {
      List<Motion> motions =
          temperatures(job.conditions()).stream().map(kelvin -> at(job, fit, kelvin)).toList();
      return new Opening(motions, hand(job)).kept(asked);
    } catch (BeyondEquation beyond) {
      return beyond(asked);
    }
  }

  /** Whether nothing is missed: known as soon as it is missed once, and most often hot. */
  static boolean keeps(Job job, Fit fit) {
    if (!asksOf(job)) {
      return true;
    }
    Requirements asked = job.requirements();
    List<Double> kelvin = temperatures(job.conditions());
    try {
      for (int i = kelvin.size() - 1; i >= 0; i--) {
        Opening one = new Opening(List.of(at(job, fit, kelvin.get(i))), hand(job));
        if (!one.kept(asked).stream().allMatch(Kept::met)) {
          return false;
        }
      }
      return true;
    } catch (BeyondEquation beyond) {
      return beyond(asked).stream().allMatch(Kept::met);
    }
  }

  private static boolean asksOf(Job job) {
    return !(job.mechanism() instanceof SeatColumn)
        && job.mechanism().inertia().isPresent()
        && job.requirements().asksInTime();
  }

  private static double hand(Job job) {
    return job.mechanism().travel(job.mechanism().end()).hand();
  }

  /** So fast that the gas leaves what can be computed. */
  private static List<Kept> beyond(Requirements asked) {
    return kept(asked, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 0);
  }

  /** Greatest speed of the handle when it meets the stop, m/s. */
  public double stopSpeed() {
    return most(each -> each.end() == End.STOP ? Math.abs(each.endSpeed()) : 0) * hand;
  }

  /** Greatest energy at the stop, J. */
  public double stopEnergy() {
    return most(Motion::stopEnergy);
  }

  /** Longest time to open, s; infinite where it does not come to its open end. */
  public double time() {
    return most(each -> opened(each) ? each.endTime() : Double.POSITIVE_INFINITY);
  }

  private static boolean opened(Motion motion) {
    return motion.end() == End.STOP && motion.endSpeed() > 0;
  }

  private double most(ToDoubleFunction<Motion> figure) {
    return motions.stream().mapToDouble(figure).max().orElse(0);
  }

  /** The requirements in time that a job makes, each kept or not. */
  public List<Kept> kept(Requirements asked) {
    return kept(asked, stopSpeed(), stopEnergy(), time());
  }

  private static List<Kept> kept(Requirements asked, double speed, double energy, double time) {
    List<Kept> kept = new ArrayList<>();
    add(kept, asked, Criterion.STOP_SPEED, speed);
    add(kept, asked, Criterion.STOP_ENERGY, energy);
    add(kept, asked, Criterion.OPENING_TIME, time);
    return kept;
  }

  private static void add(List<Kept> kept, Requirements asked, Criterion criterion, double has) {
    if (asked.asks(criterion)) {
      kept.add(new Kept(criterion, asked.limit(criterion), has));
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
