package org.staywright.document.view;

import java.util.Arrays;
import java.util.List;
import org.staywright.document.draw.Box;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Labels;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.document.draw.Track;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Beside;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.StraightLift;
import org.staywright.motion.Motion;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/**
 * A load on its guide from the side, mm: at the start of its travel in full lines, at its end as a
 * ghost, its spring at true length in both.
 */
final class LiftView {

  /** Type sizes along the longer side. */
  private static final double ACROSS = 24;

  /** Half the block that stands for the load, along its way, in type sizes. */
  private static final double HALF_BLOCK = 1.6;

  /** From the moving mount to the guide, in type sizes. */
  private static final double TO_GUIDE = 5;

  private final StraightLift lift;
  private final Wording wording;
  private final double end;
  private final double q;
  private final UsableLengths reach;
  private final Point frame;
  private final Point moving;
  private final Sketch sketch;
  private final SpringSketch spring;
  private final List<BesideSketch> besides;
  private final double em;

  /** Of the side on which the guide runs: away from the frame mount. */
  private final int side;

  /**
   * @param letters how large they are against those on the screen
   * @param more that is to be seen besides, null for nothing
   */
  private LiftView(
      StraightLift lift,
      Fit fit,
      List<Beside> beside,
      ViewPosition stand,
      double letters,
      Box more,
      Wording wording) {
    this.lift = lift;
    this.wording = wording;
    this.end = fit == null ? lift.end() : fit.figures().end();
    this.q = Math.max(0, Math.min(end, stand.q()));
    this.frame = millimetres(lift.mounts().frame());
    this.moving = millimetres(lift.mounts().moving());
    Box box = Box.around(List.of(frame, moving, moved(end)));
    box = more == null ? box : box.with(more);
    for (Point mount : BesideSketch.mounts(beside, this::moved, end)) {
      box = box.with(Box.around(List.of(mount)));
    }
    this.em = letters * Math.max(box.width(), box.height()) / ACROSS;
    this.side = frame.minus(moving).turned(-lift.direction()).y() > 0 ? -1 : 1;
    this.sketch = new Sketch(em);
    this.spring = new SpringSketch(sketch, lift, fit, end);
    this.besides =
        beside.stream().map(each -> new BesideSketch(sketch, each, this::moved)).toList();
    this.reach = new UsableLengths(sketch, lift, fit, stand, q);
  }

  /** The lift with an assessed spring; without one where it is null. */
  static Drawing of(
      StraightLift lift,
      Fit fit,
      List<Beside> beside,
      ViewPosition stand,
      double letters,
      Wording wording) {
    return new LiftView(lift, fit, beside, stand, letters, null, wording).draw();
  }

  /** The lift with the zones in which its mounts are looked for. */
  static Drawing of(StraightLift lift, List<Beside> beside, ZonesSketch zones, Wording wording) {
    return new LiftView(lift, null, beside, ViewPosition.START, 1, zones.bounds(), wording)
        .draw(zones);
  }

  /** The lift as it moves: where it starts in full lines that carry their tracks. */
  static Drawing of(
      StraightLift lift, Fit fit, List<Beside> beside, Motion motion, Wording wording) {
    return new LiftView(lift, fit, beside, ViewPosition.START, 1, null, wording).draw(motion);
  }

  private Drawing draw(Motion motion) {
    double[] q = motion.q();
    Labels labels = new Labels(sketch);
    guide();
    for (int i : Stills.of(motion)) {
      block(Role.GHOST, moved(q[i]));
    }
    List<Point> moves = Arrays.stream(q).mapToObj(each -> moved(each)).toList();
    List<Point> shifts = moves.stream().map(each -> each.minus(moving)).toList();
    Track track = new Track(moving, new double[q.length], shifts);
    sketch.moving(track, () -> block(Role.FLAP, moving));
    besides.forEach(each -> each.drawMoving(q));
    spring.drawMoving(frame, moving, moves);
    sketch.circle(Role.OUTLINE, frame, 0.3 * em);
    sketch.moving(track, () -> sketch.circle(Role.OUTLINE, moving, 0.3 * em));
    for (int i : Stills.of(motion)) {
      Point beside = Sketch.plus(beside(0, TO_GUIDE * em), shifts.get(i));
      labels.place(Role.LABEL, beside, 0.3 * em, Size.SMALL, Stills.time(motion, i, wording));
    }
    return Stills.drawing(sketch, motion, wording);
  }

  private Drawing draw() {
    guide();
    ghost(end);
    if (q > 0) {
      ghost(0);
    }
    Point mount = moved(q);
    block(Role.FLAP, mount);
    besides.forEach(each -> each.draw(q));
    reach.marks(frame, mount);
    spring.draw(frame, mount, q, reach.tube(), reach.rod());
    sketch.circle(Role.OUTLINE, frame, 0.3 * em);
    sketch.circle(Role.OUTLINE, mount, 0.3 * em);
    travel();
    gravity();
    labels();
    return sketch.drawing(
        wording.text("document.lift-view"),
        wording.text(
                "document.lift-view.about",
                mass(),
                millimetres(end),
                wording.shortest(Unit.DEGREE.of(lift.direction()), 1) + "°",
                millimetres(lift.length(0)),
                millimetres(lift.length(end)))
            + BesideSketch.named(besides, wording),
        em);
  }

  private Drawing draw(ZonesSketch zones) {
    guide();
    block(Role.GHOST, moved(end));
    zones.ghost(sketch, each -> moved(each, end));
    block(Role.FLAP, moving);
    besides.forEach(each -> each.draw(0));
    zones.draw(sketch);
    travel();
    gravity();
    Labels labels = new Labels(sketch);
    labels.place(Role.GRAVITY, weightTip(), 0, Size.NORMAL, mass());
    labels.place(Role.TRAVEL, half(), 0, Size.NORMAL, millimetres(end));
    besides.forEach(each -> each.label(labels, 0, wording));
    zones.label(labels, "document.load-mount", wording);
    return sketch.drawing(
        wording.text("document.zones"),
        wording.text("document.zones.about.straight-lift", mass(), millimetres(end)),
        em);
  }

  private void ghost(double at) {
    Point mount = moved(at);
    block(Role.GHOST, mount);
    spring.draw(frame, mount, at, Role.GHOST, Role.GHOST);
    besides.forEach(each -> each.ghost(at));
    sketch.circle(Role.GHOST, mount, 0.3 * em);
  }

  /** The rail, and what joins it to the frame mount. */
  private void guide() {
    double far = Unit.MILLIMETRE.of(end) + 2 * HALF_BLOCK * em;
    double foot = frame.minus(moving).turned(-lift.direction()).x();
    double from = Math.min(foot, -2 * HALF_BLOCK * em);
    double to = Math.max(foot, far);
    sketch.line(Role.FRAME, beside(from, TO_GUIDE * em), beside(to, TO_GUIDE * em));
    sketch.line(Role.FRAME, beside(foot, TO_GUIDE * em), frame);
  }

  /** From the moving mount along the travel and, towards the guide, across it. */
  private Point beside(double along, double across) {
    return Sketch.plus(moving, new Point(along, side * across).turned(lift.direction()));
  }

  private void block(Role role, Point mount) {
    Point shift = mount.minus(moving);
    sketch.polygon(
        role,
        List.of(
            Sketch.plus(shift, beside(-HALF_BLOCK * em, -0.8 * em)),
            Sketch.plus(shift, beside(HALF_BLOCK * em, -0.8 * em)),
            Sketch.plus(shift, beside(HALF_BLOCK * em, (TO_GUIDE - 0.3) * em)),
            Sketch.plus(shift, beside(-HALF_BLOCK * em, (TO_GUIDE - 0.3) * em))));
  }

  /** Beyond the guide, from the middle of the load at the start to its middle at the end. */
  private void travel() {
    Point tip = beside(Unit.MILLIMETRE.of(end), (TO_GUIDE + 1.4) * em);
    sketch.line(Role.TRAVEL, beside(0, (TO_GUIDE + 1.4) * em), tip);
    sketch.arrowhead(Role.TRAVEL, tip, lift.direction());
  }

  /** The middle of the load and which way is down. */
  private void gravity() {
    Point centre = centre();
    sketch.circle(Role.OUTLINE, centre, 0.4 * em);
    sketch.line(Role.OUTLINE, centre.x() - 0.4 * em, centre.y(), centre.x() + 0.4 * em, centre.y());
    sketch.line(Role.OUTLINE, centre.x(), centre.y() - 0.4 * em, centre.x(), centre.y() + 0.4 * em);
    sketch.line(Role.GRAVITY, centre, weightTip());
    sketch.arrowhead(Role.GRAVITY, weightTip(), -Math.PI / 2);
  }

  private Point centre() {
    return Sketch.plus(beside(0, TO_GUIDE / 2 * em), moved(q).minus(moving));
  }

  private Point weightTip() {
    return new Point(centre().x(), centre().y() - 3.5 * em);
  }

  private void labels() {
    Labels labels = new Labels(sketch);
    labels.place(Role.GRAVITY, weightTip(), 0, Size.NORMAL, mass());
    labels.place(Role.TRAVEL, half(), 0, Size.NORMAL, millimetres(end));
    labels.place(Role.LABEL, frame, 0.3 * em, Size.SMALL, wording.text("document.frame-mount"));
    labels.place(Role.LABEL, moved(q), 0.3 * em, Size.SMALL, wording.text("document.load-mount"));
    Point foot = beside(-2 * HALF_BLOCK * em, TO_GUIDE * em);
    labels.place(Role.LABEL, foot, 0.3 * em, Size.SMALL, wording.text("document.guide"));
    besides.forEach(each -> each.label(labels, q, wording));
  }

  /** Beside the middle of the travel. */
  private Point half() {
    return beside(Unit.MILLIMETRE.of(end) / 2, (TO_GUIDE + 1.4) * em);
  }

  private String mass() {
    return wording.measure(lift.masses().nominal(), Unit.KILOGRAM, 1);
  }

  private String millimetres(double metres) {
    return wording.quantity(metres, Unit.MILLIMETRE, 0);
  }

  private Point moved(double at) {
    return moved(moving, at);
  }

  private Point moved(Point start, double at) {
    double far = Unit.MILLIMETRE.of(at);
    return Sketch.plus(start, new Point(far, 0).turned(lift.direction()));
  }

  private static Point millimetres(Point metres) {
    return new Point(Unit.MILLIMETRE.of(metres.x()), Unit.MILLIMETRE.of(metres.y()));
  }
}
