package org.staywright.motion;

import static org.staywright.unit.Unit.ATMOSPHERE;

import org.apache.commons.math3.exception.MaxCountExceededException;
import org.apache.commons.math3.ode.ContinuousOutputModel;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.jspecify.annotations.Nullable;

/**
 * One motion being computed: phases of one direction each, or of rest, joined where the mechanism
 * turns round, sticks or breaks loose.
 *
 * <p>Integrator: Dormand and Prince, order 8, with step control and events (E. Hairer, S. P.
 * Nørsett, G. Wanner, Solving Ordinary Differential Equations I, II.10).
 */
final class Run {

  static final int Q = 0;
  static final int SPEED = 1;
  static final int KELVIN = 2;
  private static final int FRICTION = 3;
  private static final int DAMPING = 4;
  private static final int KEPT = 5;
  private static final int WALL = 6;
  private static final int PUSH = 7;
  private static final int HAND = 8;
  private static final int SIZE = 9;

  /** Absolute errors of one step allowed: rad or m, and their rates, K, J. */
  private static final double[] ABSOLUTE = {1e-8, 1e-7, 1e-4, 1e-5, 1e-5, 1e-5, 1e-5, 1e-5, 1e-5};

  private static final double[] RELATIVE = {1e-8, 1e-7, 1e-8, 1e-7, 1e-7, 1e-7, 1e-7, 1e-7, 1e-7};
  private static final double SHORTEST_STEP = 1e-13;
  private static final double LONGEST_STEP = 0.1;

  /** More than this and it is given up. */
  private static final int MOST_EVALUATIONS = 150_000;

  private static final int MOST_PHASES = 200;

  /** A start from rest, small against everything and above zero, rad/s or m/s. */
  private static final double NUDGE = 1e-9;

  private final MotionSetup scene;
  private final TravelSpline course;
  private final ContinuousOutputModel path = new ContinuousOutputModel();
  private final MotionExtremes watch;
  private final double[] y = new double[SIZE];
  private double time;
  private int evaluations;

  /** What the hand does in the midst of a motion, null while all is at rest. */
  private @Nullable Grip grip;

  Run(MotionSetup scene) {
    this.scene = scene;
    course = scene.course();
    watch = new MotionExtremes(scene);
    y[Q] = scene.start();
    y[KELVIN] = scene.strut().kelvin();
  }

  Motion motion() {
    Motion.@Nullable End end = null;
    boolean exhausted = false;
    try {
      for (int phase = 0; end == null && phase < MOST_PHASES; phase++) {
        end = phase();
      }
    } catch (MaxCountExceededException tooMuch) {
      exhausted = true;
    }
    return result(end == null ? Motion.End.TIME : end, exhausted || end == null);
  }

  /** Runs to the next rest or grip; what ended the motion, or null where it goes on. */
  private Motion.@Nullable End phase() {
    if (grip == null) {
      y[SPEED] = 0;
      double drive = scene.pushed(y[Q], scene.instant(y[Q], 0, y[KELVIN]));
      int loose = Math.abs(drive) > scene.friction(y[Q]) ? (int) Math.signum(drive) : 0;
      if (loose == 0 || againstStop(loose)) {
        return rest(loose);
      }
      y[SPEED] = loose * NUDGE;
      grip = Grip.PUSHING;
    }
    int direction = (int) Math.signum(y[SPEED]);
    Phase phase = new Phase(scene, direction, grip);
    advance(new Moving(direction, grip), phase);
    grip = phase.next();
    return phase.end() != null || time < scene.timeLimit() ? phase.end() : Motion.End.TIME;
  }

  private boolean againstStop(int direction) {
    return direction > 0 ? y[Q] >= course.end() : y[Q] <= course.start();
  }

  /** Held by friction or a stop: for good, unless the gas comes to its senses and breaks loose. */
  private Motion.@Nullable End rest(int direction) {
    Strut strut = scene.strut();
    double settled = scene.pushed(y[Q], scene.instant(y[Q], 0, strut.kelvin()));
    boolean stuck = Math.abs(settled) <= scene.friction(y[Q]);
    boolean pressed = direction != 0 && Math.signum(settled) == direction;
    if (stuck || pressed || Double.isInfinite(strut.wallTime())) {
      return Motion.End.REST;
    }
    advance(new Moving(0, Grip.PUSHING), new Phase(scene, 0, Grip.PUSHING));
    return time >= scene.timeLimit() ? Motion.End.REST : null;
  }

  private void advance(Moving equations, Phase phase) {
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(SHORTEST_STEP, LONGEST_STEP, ABSOLUTE, RELATIVE);
    integrator.setMaxEvaluations(Math.max(1, MOST_EVALUATIONS - evaluations));
    ContinuousOutputModel steps = new ContinuousOutputModel();
    integrator.addStepHandler(steps);
    integrator.addStepHandler(watch);
    phase.addTo(integrator);
    try {
      time = integrator.integrate(equations, time, y, scene.timeLimit(), y);
    } finally {
      evaluations += integrator.getEvaluations();
      if (steps.getFinalTime() > steps.getInitialTime()) {
        path.append(steps);
      }
    }
  }

  private Motion result(Motion.End end, boolean exhausted) {
    boolean moved = path.getFinalTime() > path.getInitialTime();
    int samples = moved ? Motion.SAMPLES : 1;
    double[] times = new double[samples];
    double[][] sampled = new double[3][samples];
    for (int i = 0; i < samples; i++) {
      double[] state = y;
      if (moved) {
        times[i] = path.getFinalTime() * i / (samples - 1);
        path.setInterpolatedTime(times[i]);
        state = path.getInterpolatedState();
      }
      for (int k = 0; k < sampled.length; k++) {
        sampled[k][i] = state[k];
      }
    }
    if (moved) {
      path.setInterpolatedTime(path.getFinalTime());
      System.arraycopy(path.getInterpolatedState(), 0, y, 0, SIZE);
    }
    double kinetic = scene.inertia() * y[SPEED] * y[SPEED] / 2;
    return new Motion(
        times,
        sampled[Q],
        sampled[SPEED],
        sampled[KELVIN],
        end,
        end == Motion.End.STOP ? kinetic : 0,
        watch.peakLoad(),
        watch.hottest(),
        watch.choked(),
        exhausted,
        energy(kinetic));
  }

  private Energy energy(double kinetic) {
    Strut strut = scene.strut();
    int n = scene.springs();
    double before = scene.compression(scene.start());
    double after = scene.compression(y[Q]);
    double given = strut.energy(before, strut.kelvin()) - strut.energy(after, y[KELVIN]);
    return new Energy(
        kinetic,
        course.work(y[Q]) - course.work(scene.start()),
        y[HAND],
        y[FRICTION],
        y[DAMPING],
        strut.hasGas() ? n * given : y[PUSH],
        n * y[WALL],
        n * ATMOSPHERE * (strut.volume(before) - strut.volume(after)),
        y[KEPT]);
  }

  /** The equations of motion in one direction, or of the gas alone while it rests. */
  private final class Moving implements FirstOrderDifferentialEquations {

    private final int direction;
    private final Grip grip;

    Moving(int direction, Grip grip) {
      this.direction = direction;
      this.grip = grip;
    }

    @Override
    public int getDimension() {
      return SIZE;
    }

    @Override
    public void computeDerivatives(double t, double[] state, double[] rate) {
      double q = state[Q];
      double speed = direction == 0 ? 0 : state[SPEED];
      double lever = course.lever(q);
      int n = scene.springs();
      Strut.Instant now = scene.instant(q, speed, state[KELVIN]);
      double friction = scene.friction(q);
      double damping = scene.damping(q, speed, now);
      double pull = scene.drive(q, now) - direction * (friction + damping);
      double hand =
          switch (grip) {
            case PUSHING -> scene.hand().force() * course.hand();
            case STEERING -> -pull;
            case GONE -> 0;
          };
      rate[Q] = speed;
      rate[SPEED] = direction == 0 ? 0 : (pull + hand) / scene.inertia();
      rate[KELVIN] = now.heating();
      rate[FRICTION] = friction * direction * speed;
      rate[DAMPING] = damping * direction * speed;
      rate[KEPT] = n * now.warming();
      rate[WALL] = now.fromWall();
      rate[PUSH] = n * now.push() * lever * speed;
      rate[HAND] = hand * speed;
    }
  }
}
