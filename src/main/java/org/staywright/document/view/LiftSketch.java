package org.staywright.document.view;

import static org.staywright.document.view.RigidView.millimetres;

import java.util.List;
import org.staywright.document.draw.Box;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Labels;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.StraightLift;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/**
 * A guided load as a block between its mount and the rail, which runs away from the frame mount.
 */
record LiftSketch(StraightLift lift, double end, Wording wording) implements LoadSketch {

  /** Half the block along its way, in type sizes. */
  private static final double HALF_BLOCK = 1.6;

  /** From the moving mount to the guide, in type sizes. */
  private static final double TO_GUIDE = 5;

  /** From the moving mount to the arrow of the travel, in type sizes. */
  private static final double TO_TRAVEL = TO_GUIDE + 1.4;

  @Override
  public Words words() {
    String mass = wording.measure(lift.masses().nominal(), Unit.KILOGRAM, 1);
    String travel = told(end);
    return new Words(
        wording.text("document.lift-view"),
        wording.text(
            "document.lift-view.about",
            mass,
            travel,
            wording.shortest(Unit.DEGREE.of(lift.direction()), 1) + "°",
            told(lift.length(0)),
            told(lift.length(end))),
        wording.text("document.zones.about.straight-lift", mass, travel),
        travel,
        "document.load-mount");
  }

  private String told(double metres) {
    return wording.quantity(metres, Unit.MILLIMETRE, 0);
  }

  @Override
  public double across() {
    return 24;
  }

  @Override
  public Box room() {
    return Box.around(List.of(mount()));
  }

  @Override
  public List<Point> outline(double em) {
    return List.of(
        beside(-HALF_BLOCK * em, -0.8 * em),
        beside(HALF_BLOCK * em, -0.8 * em),
        beside(HALF_BLOCK * em, (TO_GUIDE - 0.3) * em),
        beside(-HALF_BLOCK * em, (TO_GUIDE - 0.3) * em));
  }

  @Override
  public void rail(Sketch sketch) {
    double em = sketch.em();
    double far = Unit.MILLIMETRE.of(end) + 2 * HALF_BLOCK * em;
    double foot = toFrame().x();
    double from = Math.min(foot, -2 * HALF_BLOCK * em);
    double to = Math.max(foot, far);
    sketch.line(Role.FRAME, beside(from, TO_GUIDE * em), beside(to, TO_GUIDE * em));
    sketch.line(Role.FRAME, beside(foot, TO_GUIDE * em), millimetres(lift.mounts().frame()));
  }

  @Override
  public void labelRail(Labels labels, double em) {
    Point foot = beside(-2 * HALF_BLOCK * em, TO_GUIDE * em);
    labels.place(Role.LABEL, foot, 0.3 * em, Size.SMALL, wording.text("document.guide"));
  }

  /** Beyond the guide, from the middle of the load at the start to its middle at the end. */
  @Override
  public void travel(Sketch sketch) {
    double beyond = TO_TRAVEL * sketch.em();
    Point tip = beside(Unit.MILLIMETRE.of(end), beyond);
    sketch.line(Role.TRAVEL, beside(0, beyond), tip);
    sketch.arrowhead(Role.TRAVEL, tip, lift.direction());
  }

  @Override
  public Point halfWay(double em) {
    return beside(Unit.MILLIMETRE.of(end) / 2, TO_TRAVEL * em);
  }

  /** Any point of it will do: the middle of what is drawn. */
  @Override
  public Point centreOfMass(double em) {
    return beside(0, TO_GUIDE / 2 * em);
  }

  @Override
  public double weight() {
    return 3.5;
  }

  @Override
  public Point timed(double em) {
    return beside(0, TO_GUIDE * em);
  }

  /** From the moving mount along the travel and, towards the guide, across it. */
  private Point beside(double along, double across) {
    int side = toFrame().y() > 0 ? -1 : 1;
    return Sketch.plus(mount(), new Point(along, side * across).turned(lift.direction()));
  }

  /** From the moving mount to that on the frame, along the travel and across it. */
  private Point toFrame() {
    return millimetres(lift.mounts().frame()).minus(mount()).turned(-lift.direction());
  }

  private Point mount() {
    return millimetres(lift.mounts().moving());
  }
}
