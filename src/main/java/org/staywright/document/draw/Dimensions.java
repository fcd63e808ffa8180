package org.staywright.document.draw;

import org.staywright.document.draw.Graphic.Anchor;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.mechanism.Point;

/**
 * Dimensions in a drawing: extension lines, a line with arrowheads, the figure above it. After the
 * practice of ISO 129-1, simplified.
 */
public final class Dimensions {

  private static final double GAP = 0.25;
  private static final double OVERSHOOT = 0.35;
  private static final double TAIL = 1.6;
  private static final double LIFT = 0.75;

  private final Sketch sketch;
  private final double em;

  public Dimensions(Sketch sketch) {
    this.sketch = sketch;
    this.em = sketch.em();
  }

  /** A length along x, measured from the outline's height, the line drawn at another. */
  public void along(double from, double to, double outline, double line, String text) {
    extension(from, outline, line);
    extension(to, outline, line);
    Graphic.Text label =
        sketch.label(Role.DIMENSION, new Point(0, 0), Anchor.MIDDLE, Size.SMALL, text);
    double room = to - from;
    if (room > label.bounds().width() + 0.4 * em && room > 2.2 * em) {
      sketch.line(Role.DIMENSION, from, line, to, line);
      sketch.arrowhead(Role.DIMENSION, new Point(from, line), Math.PI);
      sketch.arrowhead(Role.DIMENSION, new Point(to, line), 0);
      Point above = new Point((from + to) / 2, line + LIFT * em);
      sketch.text(Role.DIMENSION, above, Anchor.MIDDLE, Size.SMALL, text);
      return;
    }
    // Too narrow: heads from outside, the figure beyond the far one.
    sketch.line(Role.DIMENSION, from - TAIL * em, line, to + TAIL * em, line);
    sketch.arrowhead(Role.DIMENSION, new Point(from, line), 0);
    sketch.arrowhead(Role.DIMENSION, new Point(to, line), Math.PI);
    Point beyond = new Point(to + (TAIL + 0.3) * em, line);
    sketch.text(Role.DIMENSION, beyond, Anchor.START, Size.SMALL, text);
  }

  /** A diameter about y, with its heads from outside and its figure at the upper tail. */
  public void across(double x, double y, double diameter, String text) {
    for (int side : new int[] {1, -1}) {
      double edge = y + side * diameter / 2;
      sketch.line(Role.DIMENSION, x, edge, x, edge + side * TAIL * em);
      sketch.arrowhead(Role.DIMENSION, new Point(x, edge), -side * Math.PI / 2);
    }
    Point beside = new Point(x + 0.4 * em, y + diameter / 2 + (TAIL - 0.4) * em);
    sketch.text(Role.DIMENSION, beside, Anchor.START, Size.SMALL, text);
  }

  private void extension(double x, double outline, double line) {
    double way = Math.signum(line - outline);
    sketch.line(Role.DIMENSION, x, outline + way * GAP * em, x, line + way * OVERSHOOT * em);
  }
}
