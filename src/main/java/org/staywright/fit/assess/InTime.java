package org.staywright.fit.assess;

import java.util.function.DoubleUnaryOperator;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.LoadState;
import org.staywright.fit.job.MovingPart;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Travel;
import org.staywright.motion.Hand;
import org.staywright.motion.MotionSetup;
import org.staywright.motion.TravelSpline;
import org.staywright.spring.ForceLaw;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/** A fit as something that moves: its springs with their damping on the course of its job. */
public final class InTime {

  private final Job job;
  private final Fit fit;
  private final double inertia;
  private final double extended;
  private final Path path;
  private final Travel travel;

  /** With the mechanism's own inertia; a refusal where nobody knows it. */
  public InTime(Job job, Fit fit) {
    this(job, fit, Double.NaN);
  }

  /**
   * @param moving mass in place of the mechanism's, NaN for its own
   */
  public InTime(Job job, Fit fit, double moving) {
    this.job = job;
    this.fit = fit;
    inertia = Double.isNaN(moving) ? job.mechanism().inertia().orElse(Double.NaN) : moving;
    if (Double.isNaN(inertia)) {
      throw new Refusal(new Fault("movingMass", null, "> 0 kg", "moving-mass-missing"));
    }
    extended = fit.outcome().extended();
    path = new Paths(job).of(extended);
    travel = path.travel();
  }

  /** Whether it can be told what moves, and a hand moves it. */
  public static boolean handed(Job job) {
    return job.mechanism().inertia().isPresent() && job.mechanism().handMoves();
  }

  /** Lever of the hand, m or 1. */
  public double hand() {
    return travel.hand();
  }

  /** Open at rest, all springs at work and no hand, at the temperature of its springs. */
  public MotionSetup scene(Corner corner) {
    return scene(corner, corner.spring().kelvin(job.conditions()));
  }

  /**
   * @param kelvin of all there is
   */
  public MotionSetup scene(Corner corner, double kelvin) {
    TravelSpline course =
        new TravelSpline(
            travel,
            path.alongside().loading(corner),
            path.alongside().rubbing(corner),
            job.drag(kelvin));
    ForceLaw law = corner.spring().law(fit.part(), job.conditions());
    return new MotionSetup(
        course,
        inertia * share(corner.load()),
        MovingPart.strut(fit.part(), law, kelvin),
        fit.count(),
        extended,
        rodRise(job.mechanism(), fit.rodEndAt()),
        Hand.NONE,
        course.end(),
        MotionSetup.PATIENCE);
  }

  /** The same let go shut. */
  public MotionSetup shut(Corner corner) {
    MotionSetup open = scene(corner);
    return open.from(open.course().start());
  }

  /** What moves over what does at the nominal mass: whatever was given was given for that. */
  private double share(LoadState load) {
    Masses shares = job.mechanism().shares();
    return switch (load) {
      case NOMINAL -> shares.nominal();
      case HEAVY -> shares.heaviest();
      case LIGHT -> shares.lightest();
    };
  }

  /** Sine of the rod end's direction over q, +1 straight up, NaN where nobody knows. */
  static DoubleUnaryOperator rodRise(Mechanism mechanism, RodEnd at) {
    int rod = at == RodEnd.MOVING ? 1 : -1;
    return q -> rod * mechanism.rise(q).orElse(Double.NaN);
  }
}
