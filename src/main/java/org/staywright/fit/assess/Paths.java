package org.staywright.fit.assess;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.staywright.fit.job.Bare;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Job.OpenStop;
import org.staywright.fit.job.Rejection;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Travel;

/** The paths of one job by the spring's extended length; what they share is worked out once. */
public final class Paths {

  /** A spring stop must come this close to the end of the travel, rad or m. */
  private static final double WINDOW_TURNING = Math.toRadians(5);

  private static final double WINDOW_SHIFTING = 10e-3;

  private static final int STEPS = 720;
  private static final double ACCURACY = 1e-12;

  private final Job job;
  private final Mechanism mechanism;
  private final Bare bare;
  private final Criteria criteria;
  private final double window;
  private final Path whole;

  /** Lengths over the travel and the window beyond it, null for a flap with a stop of its own. */
  private final double[] lengths;

  public Paths(Job job) {
    this.job = job;
    mechanism = job.mechanism();
    window = window(mechanism);
    whole = path(mechanism.end(), null);
    bare = mechanism.handMoves() ? BareLoad.of(job, whole.travel()) : null;
    criteria = new Criteria(job, bare);
    if (job.requirements().openStop() == OpenStop.FLAP_STOP) {
      lengths = null;
      return;
    }
    lengths = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      lengths[i] = mechanism.length(q(i));
    }
  }

  /** The load without a spring, null under a seat. */
  public Bare bare() {
    return bare;
  }

  /** What the job asks of every part. */
  public Criteria criteria() {
    return criteria;
  }

  /** How far from the end of the travel a spring may stop it, rad or m. */
  public static double window(Mechanism mechanism) {
    return mechanism.movement() == Mechanism.Movement.TURNS ? WINDOW_TURNING : WINDOW_SHIFTING;
  }

  /** One path for all springs: the flap stops itself. */
  public boolean shared() {
    return lengths == null;
  }

  public Path of(double extended) {
    if (shared()) {
      return whole;
    }
    double end = mechanism.end();
    double reached = reached(extended);
    if (Double.isNaN(reached)) {
      boolean far = extended - lengths[STEPS] > Path.FAR;
      return far ? far(Rejection.TOO_LONG_OPEN) : near(end, extended);
    }
    if (reached < end - window) {
      boolean far =
          reached == mechanism.start() || mechanism.length(end - window) - extended > Path.FAR;
      return far ? far(Rejection.TOO_SHORT_OPEN) : near(reached, extended);
    }
    return path(reached, null);
  }

  private Path path(double end, Blocker blocker) {
    Travel travel = mechanism.travel(end);
    return new Path(travel, Alongside.of(job, travel), null, blocker);
  }

  private Path far(Rejection rejection) {
    return new Path(whole.travel(), whole.alongside(), rejection, null);
  }

  private Path near(double end, double extended) {
    double wanted = mechanism.length(mechanism.end());
    double miss = Math.abs(extended - wanted) / wanted;
    return path(end, new Blocker(Criterion.SPRING_STOP, wanted, extended, miss));
  }

  /** The first q at which the spring is fully extended, NaN if it never is. */
  private double reached(double extended) {
    if (lengths[0] >= extended) {
      return mechanism.start();
    }
    for (int i = 1; i <= STEPS; i++) {
      if (lengths[i] >= extended) {
        return new BrentSolver(ACCURACY)
            .solve(200, at -> mechanism.length(at) - extended, q(i - 1), q(i));
      }
    }
    return Double.NaN;
  }

  private double q(int step) {
    double start = mechanism.start();
    return start + (mechanism.end() + window - start) * step / STEPS;
  }
}
