package org.staywright.mechanism;

/**
 * Where a rigid load is at one q, and how it moves on: a point of it stands at R·P + (x, y).
 *
 * @param cos of the angle it has turned by
 * @param sin of it
 * @param x shift, m
 * @param y shift, m
 * @param turning d(angle)/dq
 * @param along dx/dq
 * @param upward dy/dq
 */
public record Pose(
    double cos, double sin, double x, double y, double turning, double along, double upward) {

  /** Where a point of the load stands that was elsewhere at the start, m. */
  public Point of(Point start) {
    Point turned = turned(start);
    return new Point(turned.x() + x, turned.y() + y);
  }

  /** The same, turned alone. */
  public Point turned(Point start) {
    return new Point(start.x() * cos - start.y() * sin, start.x() * sin + start.y() * cos);
  }

  /** m. */
  public Point shift() {
    return new Point(x, y);
  }
}
