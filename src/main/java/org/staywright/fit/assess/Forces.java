package org.staywright.fit.assess;

import java.util.function.DoubleUnaryOperator;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.SpringState;
import org.staywright.mechanism.Travel;
import org.staywright.spring.ForceLaw;

/**
 * What the springs of a job bring to its mechanism in one state, by virtual work: n·F(L)·dL/dq and
 * what acts along with them.
 *
 * @param each force of one spring without friction at each sample, N
 * @param moment of all without friction, positive where it opens, N·m or N
 * @param friction of all and of the mechanism, N·m or N
 */
public record Forces(double[] each, double[] moment, double[] friction) {

  public static Forces of(Job job, Path path, Hung hung, SpringState state) {
    double kelvin = state.kelvin(job.conditions());
    ForceLaw law = state.law(hung.part(), job.conditions());
    DoubleUnaryOperator slow = law.slow(kelvin);
    Travel travel = path.travel();
    double[] each = new double[travel.q().length];
    for (int i = 0; i < each.length; i++) {
      each[i] = slow.applyAsDouble(hung.extended() - travel.length()[i]);
    }
    return of(path, state, hung.count(), each, law.spring().friction(kelvin));
  }

  /** Of no spring at all. */
  static Forces none(Path path, SpringState state) {
    return of(path, state, 0, new double[path.travel().q().length], 0);
  }

  private static Forces of(Path path, SpringState state, int count, double[] each, double rub) {
    Travel travel = path.travel();
    double[] moment = new double[each.length];
    double[] friction = new double[each.length];
    double[] pushed = path.alongside().push(state);
    double[] rubbed = path.alongside().friction(state);
    for (int i = 0; i < each.length; i++) {
      double lever = travel.lever()[i];
      moment[i] = count * each[i] * lever + pushed[i];
      friction[i] = count * rub * Math.abs(lever) + rubbed[i] + travel.friction();
    }
    return new Forces(each, moment, friction);
  }

  /** The same with one spring fewer than there are. */
  Forces without(Travel travel, double rub) {
    double[] fewer = new double[each.length];
    double[] rubbing = new double[each.length];
    for (int i = 0; i < each.length; i++) {
      fewer[i] = moment[i] - each[i] * travel.lever()[i];
      rubbing[i] = friction[i] - rub * Math.abs(travel.lever()[i]);
    }
    return new Forces(each, fewer, rubbing);
  }

  /** F_open = −(n(F − f·sgn L′)L′ + Q − M_f)/r: below zero where it rises by itself, N. */
  double open(Travel travel, double[] load, int i) {
    return (friction[i] - moment[i] - load[i]) / travel.hand();
  }

  /** F_close = (n(F + f·sgn L′)L′ + Q + M_f)/r: below zero where it falls by itself, N. */
  double close(Travel travel, double[] load, int i) {
    return (friction[i] + moment[i] + load[i]) / travel.hand();
  }
}
