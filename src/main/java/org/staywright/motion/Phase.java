package org.staywright.motion;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.ode.AbstractIntegrator;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.events.EventHandler.Action;

/** What ends or breaks one phase of a motion: a stop, a reversal, oil, or breaking loose. */
final class Phase {

  /** Events are looked for at least this often, s, and found this well. */
  private static final double LOOK = 0.02;

  private static final double ACCURACY = 1e-9;
  private static final int MOST_TRIALS = 100;

  /** Slower than this is creeping, rad/s or m/s, and nearer than that is settled, K. */
  private static final double CREEP = 1e-5;

  private static final double SETTLED = 0.02;

  private final Scene scene;
  private final int direction;
  private Motion.End end;

  /**
   * @param direction of the motion, 0 for rest
   */
  Phase(Scene scene, int direction) {
    this.scene = scene;
    this.direction = direction;
  }

  /** What ended the motion, null where it goes on. */
  Motion.End end() {
    return end;
  }

  void addTo(AbstractIntegrator integrator) {
    if (direction == 0) {
      add(integrator, this::loose, rising -> Action.STOP);
      return;
    }
    double bound = direction > 0 ? scene.course().end() : scene.course().start();
    add(integrator, y -> direction * (y[Run.Q] - bound), rising -> ended(Motion.End.STOP));
    add(integrator, y -> direction * y[Run.SPEED], rising -> Action.STOP);
    add(integrator, this::settling, rising -> rising ? Action.CONTINUE : ended(Motion.End.REST));
    if (scene.strut().damped()) {
      add(integrator, this::oil, rising -> Action.RESET_DERIVATIVES);
    }
  }

  private Action ended(Motion.End by) {
    end = by;
    return Action.STOP;
  }

  /** Above zero where what drives it is more than what holds it. */
  private double loose(double[] y) {
    double drive = scene.drive(y[Run.Q], scene.instant(y[Run.Q], 0, y[Run.KELVIN]));
    return Math.abs(drive) - scene.friction(y[Run.Q]);
  }

  /** Below zero where it only creeps after gas that has come to the wall's temperature. */
  private double settling(double[] y) {
    double warmth = Math.abs(y[Run.KELVIN] - scene.strut().kelvin()) / SETTLED;
    return Math.max(warmth, Math.abs(y[Run.SPEED]) / CREEP) - 1;
  }

  private double oil(double[] y) {
    return scene.oilDepth(y[Run.Q], direction * scene.course().lever(y[Run.Q]) > 0);
  }

  /** A change of sign that matters, and what then. */
  private static void add(
      AbstractIntegrator integrator,
      ToDoubleFunction<double[]> at,
      Function<Boolean, Action> then) {
    integrator.addEventHandler(
        new EventHandler() {
          @Override
          public void init(double t0, double[] y0, double t) {}

          @Override
          public double g(double t, double[] y) {
            return at.applyAsDouble(y);
          }

          @Override
          public Action eventOccurred(double t, double[] y, boolean rising) {
            return then.apply(rising);
          }

          @Override
          public void resetState(double t, double[] y) {}
        },
        LOOK,
        ACCURACY,
        MOST_TRIALS);
  }
}
