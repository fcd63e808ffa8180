package org.staywright.fit.replace;

import org.staywright.part.Coded;
import org.staywright.spring.ForceLaw;
import org.staywright.spring.Spring;

/**
 * What a scale showed that an old spring was pushed onto. SI.
 *
 * @param force as read
 * @param compression how far it was pushed in from full extension
 * @param kelvin of the spring
 * @param direction of the last movement
 */
public record ScaleReading(Reading force, double compression, double kelvin, Direction direction) {

  /** Above this a spring slips off a scale and flies: common practice, no source. N. */
  public static final double MOST_BY_HAND = 300;

  /**
   * Which way the rod moved last: friction adds to the force one way and takes from it the other.
   */
  public enum Direction implements Coded {
    /** The rod goes in: up to F3. */
    PRESSING(1),
    /** The rod comes out: down to F1. */
    EASING(-1);

    private final int sign;

    Direction(int sign) {
      this.sign = sign;
    }
  }

  /** What a specimen would have shown, N. */
  double of(ForceLaw law) {
    Spring spring = law.spring();
    return spring.sense() * law.force(compression, kelvin)
        + direction.sign * spring.friction(kelvin);
  }

  /** True where the spring can be pushed in so far. */
  boolean within(Spring spring) {
    return compression <= spring.stroke() + 1e-6;
  }
}
