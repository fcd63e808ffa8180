package org.staywright.motion;

import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;
import org.staywright.gas.Isotherm;

/** Keeps the extremes of a motion: at the ends of every step, where events put them too. */
final class MotionExtremes implements StepHandler {

  private final MotionSetup scene;
  private double peakLoad;
  private double hottest;
  private boolean choked;

  MotionExtremes(MotionSetup scene) {
    this.scene = scene;
    hottest = scene.strut().kelvin();
    see(new double[] {scene.start(), 0, scene.strut().kelvin()});
  }

  double peakLoad() {
    return peakLoad;
  }

  double hottest() {
    return hottest;
  }

  boolean choked() {
    return choked;
  }

  @Override
  public void init(double t0, double[] y0, double t) {
    see(y0);
  }

  @Override
  public void handleStep(StepInterpolator step, boolean last) {
    step.setInterpolatedTime(step.getCurrentTime());
    see(step.getInterpolatedState());
  }

  private void see(double[] y) {
    Isotherm.requireTemperature(y[Run.KELVIN]);
    double speed = y[Run.SPEED];
    Strut.Instant now = scene.instant(y[Run.Q], speed, y[Run.KELVIN]);
    double along = Math.signum(-scene.course().lever(y[Run.Q]) * speed);
    if (scene.springs() == 0) {
      return;
    }
    double load = now.push() + along * (now.damping() + scene.strut().friction());
    peakLoad = Math.max(peakLoad, Math.abs(load));
    hottest = Math.max(hottest, y[Run.KELVIN]);
    choked |= now.mach() >= 1;
  }
}
