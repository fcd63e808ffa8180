package org.staywright.fit.mounts;

import static org.staywright.unit.Unit.MILLIMETRE;

import org.staywright.mechanism.Point;

/**
 * A rectangle of the side view, m; a line or a point where it has no width or no height.
 *
 * @param left least x
 * @param right greatest x
 * @param bottom least y
 * @param top greatest y
 */
public record Zone(double left, double right, double bottom, double top) {

  /** Places are tried on a grid of tenths of a millimetre: nobody drills to less. */
  private static final double STEPS_PER_MM = 10;

  public boolean holds(Point point) {
    return point.x() >= left && point.x() <= right && point.y() >= bottom && point.y() <= top;
  }

  /** True where the whole of another lies in it. */
  public boolean holds(Zone other) {
    return holds(new Point(other.left, other.bottom)) && holds(new Point(other.right, other.top));
  }

  public Point centre() {
    return at(0.5, 0.5);
  }

  double diagonal() {
    return Math.hypot(right - left, top - bottom);
  }

  boolean wide() {
    return right > left;
  }

  boolean high() {
    return top > bottom;
  }

  /** A point of the grid by its shares of width and height, 0…1. */
  Point at(double across, double up) {
    return new Point(on(left, right, across), on(bottom, top, up));
  }

  /** By way of millimetres, as a document would bring it back. */
  private static double on(double low, double high, double share) {
    double steps = Math.rint(MILLIMETRE.of(low + share * (high - low)) * STEPS_PER_MM);
    return Math.max(low, Math.min(high, MILLIMETRE.si(steps / STEPS_PER_MM)));
  }
}
