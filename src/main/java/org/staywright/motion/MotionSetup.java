package org.staywright.motion;

import java.util.function.DoubleUnaryOperator;
import org.staywright.unit.Bound;

/**
 * What is let go: a course, what moves on it, and the springs that still work.
 *
 * @param course with its load
 * @param inertia kg·m² or kg
 * @param strut each of the springs
 * @param springs that work; a failed one is taken to have lost its gas and do nothing
 * @param extended mount to mount at full extension, m
 * @param rodRise sine of the rod end's direction over q, +1 straight up, NaN where nobody knows
 * @param hand at the handle
 * @param start where it is let go at rest, rad or m
 * @param timeLimit s
 */
public record MotionSetup(
    TravelSpline course,
    double inertia,
    Strut strut,
    int springs,
    double extended,
    DoubleUnaryOperator rodRise,
    Hand hand,
    double start,
    double timeLimit) {

  /** After this long a motion is given up, s. */
  public static final double PATIENCE = 60;

  public MotionSetup {
    Bound.above(0, Double.MAX_VALUE, "kg").require("inertia", inertia);
    Bound.above(0, 3600, "s").require("timeLimit", timeLimit);
    Bound.between(0, 100, "").require("springs", springs);
    Bound.between(course.start(), course.end(), "").require("start", start);
  }

  /** The same let go elsewhere. */
  public MotionSetup from(double q) {
    return new MotionSetup(course, inertia, strut, springs, extended, rodRise, hand, q, timeLimit);
  }

  /** The same with some of the springs, and with a hand. */
  public MotionSetup with(int working, Hand other) {
    return new MotionSetup(
        course, inertia, strut, working, extended, rodRise, other, start, timeLimit);
  }

  double compression(double q) {
    return extended - course.length(q);
  }

  /** Above zero where oil would pass the orifice of a spring at q. */
  double oilDepth(double q, boolean extending) {
    return strut.zones().depth(compression(q), extending, rodRise.applyAsDouble(q));
  }

  /** What the springs do at q, moving at a speed of the mechanism. */
  Strut.Instant instant(double q, double speed, double gasKelvin) {
    if (springs == 0) {
      return Strut.Instant.IDLE;
    }
    double stretching = course.lever(q) * speed;
    boolean oiled = stretching != 0 && oilDepth(q, stretching > 0) > 0;
    return strut.at(compression(q), -stretching, gasKelvin, oiled);
  }

  /** What pulls at rest beyond friction, positive where it opens; 0 within friction. N·m or N. */
  public double resting(double q) {
    double drive = pushed(q, instant(q, 0, strut.kelvin()));
    return Math.signum(drive) * Math.max(0, Math.abs(drive) - friction(q));
  }

  /** Springs and load without friction and damping, positive where they open, N·m or N. */
  double drive(double q, Strut.Instant springs) {
    return this.springs * springs.push() * course.lever(q) + course.load(q);
  }

  /** The same with the hand's whole force. */
  double pushed(double q, Strut.Instant springs) {
    return drive(q, springs) + hand.force() * course.hand();
  }

  /** What resists a motion: friction and damping, not below zero, N·m or N. */
  double resistance(double q, double speed, Strut.Instant springs) {
    return friction(q) + damping(q, speed, springs);
  }

  double damping(double q, double speed, Strut.Instant springs) {
    return this.springs * springs.damping() * Math.abs(course.lever(q)) + course.drag(q, speed);
  }

  /** Friction that must be overcome, N·m or N. */
  double friction(double q) {
    return springs * strut.friction() * Math.abs(course.lever(q)) + course.friction(q);
  }
}
