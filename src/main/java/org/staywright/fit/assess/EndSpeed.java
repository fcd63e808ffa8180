package org.staywright.fit.assess;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Job.OpenStop;
import org.staywright.fit.job.MovingPart;
import org.staywright.fit.job.SpringState;
import org.staywright.mechanism.Travel;
import org.staywright.motion.Drag;
import org.staywright.motion.Strut;
import org.staywright.motion.Throttle;
import org.staywright.part.Part;
import org.staywright.spring.SpeedLaw;

/**
 * How fast damping lets a load come to its open end: the speed at which gas or oil in the orifice,
 * and what damps beside, take up the force that friction leaves there. A balance, not a motion; a
 * load that has the way for it ends at that speed.
 */
public final class EndSpeed {

  /** Nothing that damps lets a mechanism come near this, rad/s or m/s. */
  private static final double FASTEST = 1e4;

  private static final double ACCURACY = 1e-7;
  private static final int EVALUATIONS = 100;

  private EndSpeed() {}

  /** Both figures of a landing, for springs on a path of their job. */
  static Figures.Landing landing(Job job, Path path, Hung hung) {
    return new Figures.Landing(of(job, path, hung), undampedStop(job, path.travel(), hung.part()));
  }

  /**
   * Of the handle, greatest over the corners of springs and load.
   *
   * @return m/s, 0 where nothing is left that would move it; null where nothing damps
   */
  public static Double of(Job job, Path path, Hung hung) {
    double fastest = 0;
    for (SpringState state : new SpringState[] {SpringState.WEAK, SpringState.STRONG}) {
      double speed = speed(job, path, hung, state);
      if (Double.isInfinite(speed)) {
        return null;
      }
      fastest = Math.max(fastest, speed);
    }
    return fastest;
  }

  /** Infinite where nothing damps. The faster the more the load opens, so one load decides. */
  private static double speed(Job job, Path path, Hung hung, SpringState state) {
    Travel travel = path.travel();
    int end = travel.last();
    double q = travel.q()[end];
    double lever = travel.lever()[end];
    double kelvin = state.kelvin(job.conditions());
    Strut strut = MovingPart.strut(hung.part(), state.law(hung.part(), job.conditions()), kelvin);
    double compression = hung.extended() - travel.length()[end];
    boolean oiled = strut.oiled(compression, lever > 0, rodRise(job, q));
    Strut.Stand stand = strut.stand(compression, oiled);
    double springs = hung.count() * Math.abs(lever);
    double friction =
        springs * strut.friction() + travel.friction() + path.alongside().friction(state)[end];
    double left =
        hung.count() * stand.push() * lever
            + path.alongside().push(state)[end]
            + Math.max(travel.heavy()[end], travel.light()[end])
            - friction;
    Drag drag = job.drag(kelvin);
    boolean alone = job.beside().isEmpty() && !(hung.part().spring() instanceof SpeedLaw);
    if (alone) {
      return stand.throttle() == null || springs == 0
          ? Double.POSITIVE_INFINITY
          : travel.hand()
              * stand.throttle().speedAt(Math.max(0, left) / springs, lever < 0)
              / Math.abs(lever);
    }
    return travel.hand()
        * balance(
            speed -> {
              Throttle throttle = stand.throttle();
              double orifice = throttle == null ? 0 : throttle.force(-lever * speed);
              double each = orifice + strut.resistance(-lever * speed);
              return springs * each + drag.at(q, speed);
            },
            Math.max(0, left));
  }

  /** Where what resists comes up to what is left, rad/s or m/s; infinite where it never does. */
  private static double balance(UnivariateFunction resistance, double left) {
    double high = 1;
    while (resistance.value(high) < left || resistance.value(high) == 0) {
      high *= 2;
      if (high > FASTEST) {
        return Double.POSITIVE_INFINITY;
      }
    }
    return left == 0
        ? 0
        : new BrentSolver(ACCURACY)
            .solve(EVALUATIONS, speed -> resistance.value(speed) - left, 0, high);
  }

  private static double rodRise(Job job, double q) {
    return InTime.rodRise(job.mechanism(), Assessment.rodEnd(job)).applyAsDouble(q);
  }

  /**
   * Whether the spring is the stop and comes to it undamped: no zone of oil at the end of extending
   * where it is needed, and nothing that damps by its speed.
   */
  static boolean undampedStop(Job job, Travel travel, Part part) {
    if (job.requirements().openStop() != OpenStop.SPRING_STOP
        || part.spring() instanceof SpeedLaw) {
      return false;
    }
    double q = travel.q()[travel.last()];
    boolean besides = job.drag(SpringState.NOMINAL.kelvin(job.conditions())).at(q, 1) > 0;
    boolean oil =
        part.endZone() > 0
            && MovingPart.strut(part, part.limits().hottest())
                .oiled(0, travel.lever()[travel.last()] > 0, rodRise(job, q));
    return !besides && !oil;
  }
}
