package org.staywright.fit.time;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.InTime;
import org.staywright.fit.assess.Opening;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Job;
import org.staywright.gas.BeyondEquation;
import org.staywright.motion.Hand;
import org.staywright.motion.Motion;
import org.staywright.motion.MotionSetup;
import org.staywright.motion.Stroke;
import org.staywright.motion.TravelSpline;

/**
 * What a fit does in time: opened by a hand that has its limit and lets go, taken over its travel
 * slowly and quickly, and let go open with one spring failed.
 *
 * @param cases one a corner of springs and load
 * @param strokes by a hand, nominal
 * @param hand lever of the hand, m or 1
 * @param failedForce that the hand must hold up when one spring has failed, at worst, N; not above
 *     zero where nothing falls
 */
public record TimeFigures(List<Case> cases, List<Taken> strokes, double hand, double failedForce) {

  /** Slower than this at the handle it sinks and does not fall, m/s: our choice, no source. */
  public static final double SINKING = 0.25;

  /** A slam and an easing, s. */
  public static final double SLAM = 0.5;

  public static final double EASING = 10;

  /**
   * @param corner of springs and load
   * @param opening from the closed end, by the hand
   * @param failing from the open end, one spring failed, no hand
   */
  public record Case(Corner corner, Motion opening, Motion failing) {}

  /**
   * The whole travel by hand.
   *
   * @param seconds infinite for slowly
   * @param opening largest force of the hand, N
   * @param closing largest force of the hand, N
   * @param choked whether the orifice came to the speed of sound
   */
  public record Taken(double seconds, double opening, double closing, boolean choked) {}

  /** What becomes of the load when one spring fails. */
  public enum Failing {
    STAYS,
    SINKS,
    FALLS
  }

  /** Empty where nobody knows what moves, no hand does, or the gas leaves what can be computed. */
  public static Optional<TimeFigures> of(Job job, Fit fit) {
    if (!InTime.handed(job)) {
      return Optional.empty();
    }
    try {
      return Optional.of(computed(job, fit));
    } catch (BeyondEquation beyond) {
      return Optional.empty();
    }
  }

  private static TimeFigures computed(Job job, Fit fit) {
    InTime inTime = new InTime(job, fit);
    List<Case> cases =
        Corner.ALL.stream()
            .map(corner -> new Case(corner, opened(job, inTime, corner), failing(inTime, corner)))
            .toList();
    MotionSetup scene = inTime.scene(Corner.NOMINAL);
    List<Taken> strokes = new ArrayList<>();
    for (double seconds : new double[] {Double.POSITIVE_INFINITY, EASING, SLAM}) {
      Stroke opening = Stroke.of(scene, true, seconds);
      Stroke closing = Stroke.of(scene, false, seconds);
      strokes.add(
          new Taken(seconds, opening.most(), closing.most(), opening.choked() || closing.choked()));
    }
    double failed =
        Corner.ALL.stream().mapToDouble(corner -> heldUp(failed(inTime, corner))).max().orElse(0);
    return new TimeFigures(cases, strokes, inTime.hand(), failed);
  }

  private static Motion opened(Job job, InTime inTime, Corner corner) {
    return Motion.of(Opening.pushed(job, inTime.shut(corner)));
  }

  private static Motion failing(InTime inTime, Corner corner) {
    return Motion.of(failed(inTime, corner));
  }

  private static MotionSetup failed(InTime inTime, Corner corner) {
    MotionSetup scene = inTime.scene(corner);
    return scene.with(scene.springs() - 1, Hand.NONE);
  }

  /** What the hand must hold up at the worst place, friction helping, N. */
  private static double heldUp(MotionSetup scene) {
    TravelSpline course = scene.course();
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= 60; i++) {
      double q = course.start() + (course.end() - course.start()) * i / 60;
      most = Math.max(most, -scene.resting(q) / course.hand());
    }
    return most;
  }

  /** Opened by the hand. */
  public Opening opening() {
    return new Opening(
        cases.stream().map(each -> new Opening.Case(each.corner(), each.opening())).toList(), hand);
  }

  /** What happens at worst when one spring fails. */
  public Failing failing() {
    return cases.stream()
        .map(each -> failing(each.failing()))
        .max(Enum::compareTo)
        .orElse(Failing.STAYS);
  }

  /** What happens in one case. */
  public Failing failing(Motion motion) {
    if (!motion.moved() || motion.endSpeed() > 0) {
      return Failing.STAYS;
    }
    return motion.greatestSpeed() * hand <= SINKING ? Failing.SINKS : Failing.FALLS;
  }

  /** Where it goes worst when one spring fails; nominal where it stays open in every corner. */
  public Corner worstFailing() {
    return cases.stream()
        .filter(each -> failing(each.failing()) != Failing.STAYS)
        .max(
            Comparator.<Case, Failing>comparing(each -> failing(each.failing()))
                .thenComparing(each -> each.failing().stopEnergy()))
        .map(Case::corner)
        .orElse(Corner.NOMINAL);
  }

  /** Least time until it lies shut or rests when one spring has failed, s. */
  public double failingTime() {
    return cases.stream()
        .filter(each -> each.failing().moved())
        .mapToDouble(each -> each.failing().endTime())
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Greatest speed of the handle when one spring has failed, m/s. */
  public double failingSpeed() {
    return most(each -> each.failing().greatestSpeed()) * hand;
  }

  /** Greatest energy with which it falls shut when one spring has failed, J. */
  public double failingEnergy() {
    return most(each -> each.failing().stopEnergy());
  }

  /** Largest load of one spring on its mounts in all these motions, N. */
  public double peakLoad() {
    return most(each -> Math.max(each.opening().peakLoad(), each.failing().peakLoad()));
  }

  /** Whether the gas came to the speed of sound anywhere. */
  public boolean choked() {
    return strokes.stream().anyMatch(Taken::choked)
        || cases.stream().anyMatch(each -> each.opening().choked() || each.failing().choked());
  }

  private double most(ToDoubleFunction<Case> figure) {
    return cases.stream().mapToDouble(figure).max().orElse(0);
  }
}
