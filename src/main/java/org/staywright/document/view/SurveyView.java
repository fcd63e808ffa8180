package org.staywright.document.view;

import java.util.List;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic;
import org.staywright.document.draw.Graphic.Anchor;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.mechanism.Point;
import org.staywright.wording.Wording;

/** How a flap is measured whose springs' force nobody knows: no flap, no scale. */
public final class SurveyView {

  private static final double EM = 7;
  private static final double OPEN = Math.toRadians(65);
  private static final double HALFWAY = Math.toRadians(30);
  private static final Point FRAME = new Point(20, -70);
  private static final Point MOVING = new Point(95, 0);
  private static final Point HANDLE = new Point(FlapLines.LENGTH, 0);

  private final Sketch sketch = new Sketch(EM);
  private final FlapLines lines = new FlapLines(sketch);
  private final Wording wording;

  private SurveyView(Wording wording) {
    this.wording = wording;
  }

  /** The prop under the open flap, its springs off. */
  public static Drawing propped(Wording wording) {
    return new SurveyView(wording).prop();
  }

  /** From the hinge to either mount, and between the mounts. */
  public static Drawing mounts(Wording wording) {
    return new SurveyView(wording).triangle();
  }

  /** Slopes of the line from hinge to handle, closed and open. */
  public static Drawing slopes(Wording wording) {
    return new SurveyView(wording).angles();
  }

  /** The scale at the handle, square to that line. */
  public static Drawing hooked(Wording wording) {
    return new SurveyView(wording).scale();
  }

  private Drawing prop() {
    lines.frame();
    lines.flap(Role.FLAP, OPEN);
    Point under = new Point(120, -3).turned(OPEN);
    sketch.line(Role.TUBE, new Point(under.x() + 25, -90), under);
    lines.mount(FRAME);
    lines.mount(MOVING.turned(OPEN));
    sketch.line(Role.HIDDEN, FRAME, MOVING.turned(OPEN));
    hinge();
    say(new Point(under.x() + 22, -30), "survey-prop");
    say(new Point(FRAME.x() + 14, -60), "survey-off");
    return drawing("survey-prop");
  }

  private Drawing triangle() {
    lines.frame();
    lines.flap(Role.FLAP, OPEN);
    Point moving = MOVING.turned(OPEN);
    lines.strut(Role.GHOST, FRAME, moving);
    // Beside the flap, where its line can be told from the edge.
    Point aside = new Point(0, 14).turned(OPEN);
    between(Sketch.plus(FlapLines.HINGE, aside), Sketch.plus(moving, aside));
    between(FlapLines.HINGE, FRAME);
    between(new Point(FRAME.x() + 12, FRAME.y()), new Point(moving.x() + 12, moving.y()));
    hinge();
    Point up = Sketch.plus(new Point(45, 0).turned(OPEN), new Point(0, 20).turned(OPEN));
    sketch.text(Role.DIMENSION, up, Anchor.END, Size.SMALL, text("survey-moving"));
    sketch.text(Role.DIMENSION, new Point(-6, -38), Anchor.END, Size.SMALL, text("survey-frame"));
    say(new Point(48, -10), "survey-centres");
    return drawing("survey-mounts");
  }

  private Drawing angles() {
    double closed = Math.toRadians(-12);
    lines.flap(Role.GHOST, closed);
    lines.flap(Role.FLAP, OPEN);
    sketch.line(Role.CENTRE_LINE, FlapLines.HINGE, new Point(170, 0));
    slope(110, closed, "survey-closed");
    slope(70, OPEN, "survey-open");
    sketch.text(Role.LABEL, new Point(172, 0), Anchor.START, Size.SMALL, text("survey-level"));
    hinge();
    return drawing("survey-slopes");
  }

  private void slope(double radius, double angle, String name) {
    Graphic.Arc arc = new Graphic.Arc(Role.TRAVEL, FlapLines.HINGE, radius, 0, angle);
    sketch.add(arc);
    sketch.arrowhead(Role.TRAVEL, arc.at(1), angle + Math.signum(angle) * Math.PI / 2);
    Point beside = Sketch.plus(arc.at(0.5), new Point(5, 0));
    sketch.text(Role.DIMENSION, beside, Anchor.START, Size.SMALL, text(name));
  }

  private Drawing scale() {
    lines.frame();
    lines.flap(Role.FLAP, HALFWAY);
    Point handle = HANDLE.turned(HALFWAY);
    Point up = new Point(0, 1).turned(HALFWAY);
    Point hook = along(handle, up, 3);
    sketch.line(Role.OUTLINE, hook, along(handle, up, 16));
    sketch.polygon(
        Role.METAL,
        List.of(
            corner(handle, 16, -7),
            corner(handle, 16, 7),
            corner(handle, 40, 7),
            corner(handle, 40, -7)));
    sketch.line(Role.TRAVEL, along(handle, up, 40), along(handle, up, 62));
    sketch.arrowhead(Role.TRAVEL, along(handle, up, 64), HALFWAY + Math.PI / 2);
    square(handle);
    Point under = new Point(120, -3).turned(HALFWAY);
    sketch.line(Role.TUBE, new Point(under.x() + 12, -90), new Point(under.x(), under.y() - 4));
    between(
        new Point(0, 12).turned(HALFWAY), Sketch.plus(handle, new Point(0, 12).turned(HALFWAY)));
    sketch.text(
        Role.DIMENSION,
        new Point(50, 24).turned(HALFWAY),
        Anchor.END,
        Size.SMALL,
        text("survey-handle"));
    hinge();
    say(corner(handle, 46, 12), "survey-pull");
    say(new Point(under.x() + 18, -40), "survey-under");
    return drawing("survey-hook");
  }

  /** The little square of a right angle. */
  private void square(Point handle) {
    sketch.path(
        Role.DIMENSION,
        List.of(corner(handle, 12, 0), corner(handle, 12, -9), corner(handle, 3, -9)));
  }

  /** So far above the flap at its handle and so far outwards. */
  private static Point corner(Point handle, double above, double out) {
    return Sketch.plus(handle, new Point(out, above).turned(HALFWAY));
  }

  private static Point along(Point from, Point direction, double length) {
    return new Point(from.x() + length * direction.x(), from.y() + length * direction.y());
  }

  private void between(Point from, Point to) {
    double along = Math.atan2(to.y() - from.y(), to.x() - from.x());
    sketch.line(Role.DIMENSION, from, to);
    sketch.arrowhead(Role.DIMENSION, to, along);
    sketch.arrowhead(Role.DIMENSION, from, along + Math.PI);
  }

  private void hinge() {
    sketch.circle(Role.MARK, FlapLines.HINGE, 3);
    sketch.text(Role.LABEL, new Point(-6, 6), Anchor.END, Size.SMALL, text("hinge"));
  }

  private void say(Point at, String name) {
    sketch.text(Role.LABEL, at, Anchor.START, Size.SMALL, text(name));
  }

  private Drawing drawing(String name) {
    return sketch.drawing(text(name + ".title"), text(name + ".about"), EM);
  }

  private String text(String name) {
    return wording.text("replace.draw." + name);
  }
}
