package org.staywright.motion;

import java.util.Arrays;
import org.apache.commons.math3.ode.ContinuousOutputModel;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince54Integrator;
import org.staywright.unit.Bound;

/**
 * What a hand feels that takes the mechanism over its whole travel at an even speed: between a
 * stroke so slow that the gas keeps the wall's temperature and one so fast that no heat passes.
 * What it takes to set the load going is not in it.
 *
 * @param q over the travel in the order of the stroke, rad or m
 * @param hand force in the direction of the stroke, above zero where the hand must work, N
 * @param gasKelvin temperature of the gas, K
 * @param choked whether the orifice came to the speed of sound
 */
public record Stroke(double[] q, double[] hand, double[] gasKelvin, boolean choked) {

  private static final int SAMPLES = 61;
  private static final double ACCURACY = 1e-6;

  /**
   * @param scene whose hand and start are left aside
   * @param opening which way
   * @param seconds for the whole travel; infinite for a slow stroke
   */
  public static Stroke of(MotionSetup scene, boolean opening, double seconds) {
    Bound.above(0, Double.POSITIVE_INFINITY, "s").require("seconds", seconds);
    TravelSpline course = scene.course();
    double from = opening ? course.start() : course.end();
    double to = opening ? course.end() : course.start();
    double speed = (to - from) / seconds;
    double[] kelvin = warmth(scene, from, speed, seconds);
    double[] q = new double[SAMPLES];
    double[] hand = new double[SAMPLES];
    boolean choked = false;
    for (int i = 0; i < SAMPLES; i++) {
      q[i] = from + (to - from) * i / (SAMPLES - 1);
      Strut.Instant now = scene.instant(q[i], speed, kelvin[i]);
      double resists = scene.resistance(q[i], speed, now);
      hand[i] = (resists - (opening ? 1 : -1) * scene.drive(q[i], now)) / course.hand();
      choked |= now.mach() >= 1;
    }
    return new Stroke(q, hand, kelvin, choked);
  }

  /** The largest force that the hand must bring up, N; below zero where it need not. */
  public double most() {
    double most = Double.NEGATIVE_INFINITY;
    for (double force : hand) {
      most = Math.max(most, force);
    }
    return most;
  }

  private static double[] warmth(MotionSetup scene, double from, double speed, double seconds) {
    double[] kelvin = new double[SAMPLES];
    Arrays.fill(kelvin, scene.strut().kelvin());
    if (Double.isInfinite(seconds)) {
      return kelvin;
    }
    DormandPrince54Integrator integrator =
        new DormandPrince54Integrator(seconds * 1e-12, seconds / 10, ACCURACY, ACCURACY);
    ContinuousOutputModel path = new ContinuousOutputModel();
    integrator.addStepHandler(path);
    double[] y = {kelvin[0]};
    integrator.integrate(new Warming(scene, from, speed), 0, y, seconds, y);
    for (int i = 0; i < SAMPLES; i++) {
      path.setInterpolatedTime(seconds * i / (SAMPLES - 1));
      kelvin[i] = path.getInterpolatedState()[0];
    }
    return kelvin;
  }

  private record Warming(MotionSetup scene, double from, double speed)
      implements FirstOrderDifferentialEquations {

    @Override
    public int getDimension() {
      return 1;
    }

    @Override
    public void computeDerivatives(double t, double[] y, double[] rate) {
      rate[0] = scene.instant(from + speed * t, speed, y[0]).heating();
    }
  }
}
