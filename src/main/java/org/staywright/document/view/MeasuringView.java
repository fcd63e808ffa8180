package org.staywright.document.view;

import org.staywright.document.draw.Dimensions;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic;
import org.staywright.document.draw.Graphic.Anchor;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.mechanism.Point;
import org.staywright.wording.Wording;

/** Where an old spring is measured, as line drawings: no part, no scale. */
public final class MeasuringView {

  private static final double EM = 7;

  private static final double TUBE = 100;
  private static final double ROD = 185;
  private static final double BALL = 16;

  private final Sketch sketch = new Sketch(EM);
  private final FlapLines lines = new FlapLines(sketch);
  private final Dimensions dimensions = new Dimensions(sketch);
  private final Wording wording;

  private MeasuringView(Wording wording) {
    this.wording = wording;
  }

  /** The spring in the hand. */
  public static Drawing spring(Wording wording) {
    return new MeasuringView(wording).lying();
  }

  /** The mounts in place, flap closed and open. */
  public static Drawing places(Wording wording) {
    return new MeasuringView(wording).hung();
  }

  private Drawing lying() {
    body();
    dimensions.across(60, 0, 22, text("tube"));
    dimensions.across(130, 0, 9, text("rod"));
    dimensions.along(0, TUBE, -11, -24, text("tube-length"));
    dimensions.along(TUBE, ROD, -4.5, -24, text("exposed"));
    dimensions.along(0, ROD, -11, -38, text("extended"));
    dimensions.along(-BALL, ROD + BALL, -6, -52, text("centres"));
    sketch.text(Role.LABEL, new Point(-BALL, 15), Anchor.MIDDLE, Size.SMALL, text("end"));
    sketch.text(Role.LABEL, new Point(ROD + BALL, 15), Anchor.MIDDLE, Size.SMALL, text("end"));
    return sketch.drawing(text("spring"), text("spring.about"), EM);
  }

  private void body() {
    for (int side : new int[] {-1, 1}) {
      double centre = side < 0 ? -BALL : ROD + BALL;
      double shoulder = side < 0 ? 0 : ROD;
      sketch.rectangle(Role.OUTLINE, Math.min(centre, shoulder), -4, Math.max(centre, shoulder), 4);
      sketch.circle(Role.OUTLINE, new Point(centre, 0), 8);
      sketch.circle(Role.METAL, new Point(centre, 0), 4.5);
    }
    sketch.rectangle(Role.OUTLINE, TUBE, -4.5, ROD, 4.5);
    sketch.rectangle(Role.METAL, 0, -11, TUBE, 11);
  }

  private Drawing hung() {
    Point hinge = new Point(0, 0);
    Point frame = new Point(20, -70);
    Point moving = new Point(95, 0);
    double open = Math.toRadians(70);
    lines.frame();
    lines.flap(Role.FLAP, 0);
    lines.flap(Role.GHOST, open);
    lines.strut(Role.ROD, frame, moving);
    lines.strut(Role.GHOST, frame, moving.turned(open));
    sketch.circle(Role.MARK, hinge, 3);
    middle(frame, moving, text("closed"), 6);
    middle(frame, moving.turned(open), text("open"), 6);
    sketch.text(Role.LABEL, new Point(-6, 6), Anchor.END, Size.SMALL, text("hinge"));
    Graphic.Arc way = new Graphic.Arc(Role.TRAVEL, hinge, 150, 0, open);
    sketch.add(way);
    sketch.arrowhead(Role.TRAVEL, way.at(1), open + Math.PI / 2);
    sketch.text(
        Role.TRAVEL,
        Sketch.plus(way.at(0.5), new Point(5, 0)),
        Anchor.START,
        Size.SMALL,
        text("handle"));
    return sketch.drawing(text("places"), text("places.about"), EM);
  }

  private void middle(Point from, Point to, String text, double aside) {
    Point at = new Point((from.x() + to.x()) / 2 + aside, (from.y() + to.y()) / 2 - 2);
    sketch.text(Role.DIMENSION, at, Anchor.START, Size.SMALL, text);
  }

  private String text(String name) {
    return wording.text("replace.draw." + name);
  }
}
