package org.staywright.document.draw;

import java.util.Collection;
import org.staywright.mechanism.Point;

/** An upright rectangle in a drawing's own units, y up. */
public record Box(double left, double bottom, double right, double top) {

  public static Box around(Collection<Point> points) {
    double left = Double.POSITIVE_INFINITY;
    double bottom = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double top = Double.NEGATIVE_INFINITY;
    for (Point point : points) {
      left = Math.min(left, point.x());
      bottom = Math.min(bottom, point.y());
      right = Math.max(right, point.x());
      top = Math.max(top, point.y());
    }
    return new Box(left, bottom, right, top);
  }

  public double width() {
    return right - left;
  }

  public double height() {
    return top - bottom;
  }

  public Box with(Box other) {
    return new Box(
        Math.min(left, other.left),
        Math.min(bottom, other.bottom),
        Math.max(right, other.right),
        Math.max(top, other.top));
  }

  Box grown(double by) {
    return new Box(left - by, bottom - by, right + by, top + by);
  }

  public boolean contains(Point point) {
    return point.x() >= left && point.x() <= right && point.y() >= bottom && point.y() <= top;
  }

  public boolean meets(Box other) {
    return left < other.right && other.left < right && bottom < other.top && other.bottom < top;
  }
}
