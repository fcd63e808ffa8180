package org.staywright.motion;

import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.ode.AbstractIntegrator;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.events.EventHandler.Action;
import org.jspecify.annotations.Nullable;

/**
 * What ends or breaks one phase of a motion: a stop, a reversal, oil, breaking loose, or a hand
 * that changes its grip.
 */
final class Phase {

  /** Events are looked for at least this often, s, and found this well. */
  private static final double LOOK = 0.02;

  private static final double ACCURACY = 1e-9;
  private static final int MOST_TRIALS = 100;

  /** Slower than this is creeping, rad/s or m/s, and nearer than that is settled, K. */
  private static final double CREEP = 1e-5;

  private static final double SETTLED = 0.02;

  private final MotionSetup scene;
  private final int direction;
  private final Grip grip;
  private Motion.@Nullable End end;
  private @Nullable Grip next;

  /**
   * @param direction of the motion, 0 for rest
   * @param grip of the hand
   */
  Phase(MotionSetup scene, int direction, Grip grip) {
    this.scene = scene;
    this.direction = direction;
    this.grip = grip;
  }

  /** What ended the motion, null where it goes on. */
  Motion.@Nullable End end() {
    return end;
  }

  /** How the hand goes on in the midst of the motion, null where it came to rest or an end. */
  @Nullable Grip next() {
    return next;
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
    if (scene.hand() instanceof Hand.LetsGo hand && direction == Math.signum(hand.force())) {
      addHand(integrator, Math.abs(hand.force()) * scene.course().hand());
    }
  }

  private void addHand(AbstractIntegrator integrator, double most) {
    if (grip == Grip.PUSHING) {
      double pace = Hand.LetsGo.PACE / scene.course().hand();
      add(
          integrator,
          y -> direction * y[Run.SPEED] - pace,
          (rising, y) -> rising ? gripped(Grip.at(asked(y), most)) : Action.CONTINUE);
    } else if (grip == Grip.STEERING) {
      add(integrator, this::asked, (rising, y) -> gripped(Grip.GONE));
      add(integrator, y -> asked(y) - most, (rising, y) -> gripped(Grip.PUSHING));
    }
  }

  private Action gripped(Grip by) {
    next = by;
    return Action.STOP;
  }

  /** What it takes to keep the speed, in the direction of the motion, N·m or N. */
  private double asked(double[] y) {
    Strut.Instant now = scene.instant(y[Run.Q], y[Run.SPEED], y[Run.KELVIN]);
    return scene.resistance(y[Run.Q], y[Run.SPEED], now) - direction * scene.drive(y[Run.Q], now);
  }

  private Action ended(Motion.End by) {
    end = by;
    return Action.STOP;
  }

  /** Above zero where what drives it is more than what holds it. */
  private double loose(double[] y) {
    double drive = scene.pushed(y[Run.Q], scene.instant(y[Run.Q], 0, y[Run.KELVIN]));
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
    add(integrator, at, (rising, y) -> then.apply(rising));
  }

  private static void add(
      AbstractIntegrator integrator,
      ToDoubleFunction<double[]> at,
      BiFunction<Boolean, double[], Action> then) {
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
            return then.apply(rising, y);
          }

          @Override
          public void resetState(double t, double[] y) {}
        },
        LOOK,
        ACCURACY,
        MOST_TRIALS);
  }
}
