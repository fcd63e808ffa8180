package org.staywright.mechanism;

/**
 * Where the spring is hung, the flap closed.
 *
 * @param frame mount on what stands still, m
 * @param moving mount on what moves, at the start of its travel, m
 * @param lateralOffset how far the mounts stand apart across the side view, m
 * @param rodEnd which of the two carries the rod
 */
public record Mounts(Point frame, Point moving, double lateralOffset, RodEnd rodEnd) {

  /** Others like these. */
  public Mounts with(Point otherFrame, Point otherMoving) {
    return new Mounts(otherFrame, otherMoving, lateralOffset, rodEnd);
  }

  /** Which mount carries the rod. */
  public enum RodEnd {
    FRAME,
    MOVING,
    EITHER
  }
}
