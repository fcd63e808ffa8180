package org.staywright.document.view;

import java.util.List;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.mechanism.Point;

/** A flap, its frame and its spring as plain lines, the hinge at the origin: no flap, no scale. */
final class FlapLines {

  static final Point HINGE = new Point(0, 0);

  /** From the hinge to the handle. */
  static final double LENGTH = 150;

  private static final double DEPTH = 90;
  private static final double HALF = 3;

  private final Sketch sketch;

  FlapLines(Sketch sketch) {
    this.sketch = sketch;
  }

  void frame() {
    sketch.line(Role.FRAME, HINGE, new Point(0, -DEPTH));
    sketch.line(Role.FRAME, new Point(0, -DEPTH), new Point(LENGTH, -DEPTH));
  }

  void flap(Role role, double angle) {
    bar(role, HINGE, LENGTH, angle);
  }

  void strut(Role role, Point from, Point to) {
    double along = Math.atan2(to.y() - from.y(), to.x() - from.x());
    bar(role, from, to.minus(from).distance(), along);
    mount(from);
    mount(to);
  }

  void mount(Point at) {
    sketch.circle(Role.OUTLINE, at, 4);
  }

  private void bar(Role role, Point from, double length, double along) {
    sketch.polygon(
        role,
        List.of(
            Sketch.plus(from, new Point(0, -HALF).turned(along)),
            Sketch.plus(from, new Point(length, -HALF).turned(along)),
            Sketch.plus(from, new Point(length, HALF).turned(along)),
            Sketch.plus(from, new Point(0, HALF).turned(along))));
  }
}
