package org.staywright.fit;

import java.util.function.DoubleUnaryOperator;
import org.staywright.mechanism.Travel;
import org.staywright.part.Part;
import org.staywright.spring.ForceLaw;

/**
 * What the hand does in one case, by virtual work: n·F(L)·dL/dq + Q in balance with the hand.
 *
 * @param spring force of one spring without friction at each sample, N
 * @param moment n·F_gas·L′ + Q, the frictionless balance, positive where it opens, N·m or N
 * @param open hand force opening slowly, negative where it rises by itself, N
 * @param close hand force closing slowly, negative where it falls by itself, N
 */
record HandForces(double[] spring, double[] moment, double[] open, double[] close) {

  static HandForces of(Job job, Travel travel, Part part, int count, double extended, Load load) {
    double kelvin = load.kelvin(job.conditions());
    ForceLaw spring = load.law(part, Load.gasLeft(job.conditions(), part.wear()));
    DoubleUnaryOperator slow = spring.slow(kelvin);
    double rub = spring.spring().friction(kelvin);
    int n = travel.q().length;
    HandForces result = new HandForces(new double[n], new double[n], new double[n], new double[n]);
    for (int i = 0; i < n; i++) {
      double lever = travel.lever()[i];
      double force = slow.applyAsDouble(extended - travel.length()[i]);
      double balance = count * force * lever + load.load(travel)[i];
      double friction = count * rub * Math.abs(lever) + travel.friction();
      result.spring[i] = force;
      result.moment[i] = balance;
      // F_open = −(n(F − f·sgn L′)L′ + Q − M_f)/r, F_close = (n(F + f·sgn L′)L′ + Q + M_f)/r
      result.open[i] = -(balance - friction) / travel.hand();
      result.close[i] = (balance + friction) / travel.hand();
    }
    return result;
  }
}
