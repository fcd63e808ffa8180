package org.staywright.mechanism;

/** A point of the side view, m: x to the right, y up, the hinge at the origin. */
public record Point(double x, double y) {

  public double distance() {
    return Math.hypot(x, y);
  }

  /** Turned about the origin, counterclockwise positive, rad. */
  public Point turned(double angle) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return new Point(x * cos - y * sin, x * sin + y * cos);
  }

  public Point minus(Point other) {
    return new Point(x - other.x, y - other.y);
  }
}
