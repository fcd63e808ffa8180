package org.staywright.mechanism;

/**
 * A seal or latch that acts near the closed position: its full moment when shut, falling evenly to
 * nothing where it lets go.
 *
 * @param moment in the closing direction, N·m: above zero for a magnet, a catch or a seal that
 *     sticks, below zero for a seal that is squeezed and pushes back
 * @param reach opening angle where it lets go, rad, above zero
 */
public record Seal(double moment, double reach) {

  public static final Seal NONE = new Seal(0, 1);

  /** Moment in the opening direction at an opening angle, N·m. */
  double opening(double angle) {
    return -moment * Math.max(0, 1 - angle / reach);
  }
}
