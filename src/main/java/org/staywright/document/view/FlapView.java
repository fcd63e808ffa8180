package org.staywright.document.view;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.staywright.document.draw.Box;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Labels;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.document.draw.Track;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Beside;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Point;
import org.staywright.motion.Motion;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/**
 * A flap from the side, mm, the hinge at the origin: in full lines where it stands, as a ghost at
 * the ends of its travel, its spring at true length in all of them, with the lengths it can reach.
 */
final class FlapView {

  /** Type sizes along the longer side. */
  private static final double ACROSS = 30;

  private final HingedFlap flap;
  private final Wording wording;
  private final double end;
  private final double q;
  private final UsableLengths reach;
  private final Point handle;
  private final Point frame;
  private final Point moving;
  private final Point centre;
  private final Sketch sketch;
  private final SpringSketch spring;
  private final List<BesideSketch> besides;
  private final double em;

  /**
   * @param letters how large they are against those on the screen
   * @param more that is to be seen besides, null for nothing
   */
  private FlapView(
      HingedFlap flap,
      Fit fit,
      List<Beside> beside,
      ViewPosition stand,
      double letters,
      Box more,
      Wording wording) {
    this.flap = flap;
    this.wording = wording;
    this.end = fit == null ? flap.end() : fit.figures().end();
    this.q = Math.max(0, Math.min(end, stand.q()));
    this.handle = millimetres(flap.handle());
    this.frame = millimetres(flap.mounts().frame());
    this.moving = millimetres(flap.mounts().moving());
    this.centre = millimetres(flap.centreOfMass());
    Box box =
        Box.around(List.of(new Point(0, 0), handle, frame, moving, open(moving), centre))
            .with(travel().bounds());
    box = more == null ? box : box.with(more);
    for (Point mount : BesideSketch.mounts(beside, this::at, end)) {
      box = box.with(Box.around(List.of(mount)));
    }
    this.em = letters * Math.max(box.width(), box.height()) / ACROSS;
    this.sketch = new Sketch(em);
    this.spring = new SpringSketch(sketch, flap, fit, end);
    this.besides = beside.stream().map(each -> new BesideSketch(sketch, each, this::at)).toList();
    this.reach = new UsableLengths(sketch, flap, fit, stand, q);
  }

  /** The flap with an assessed spring; without one where it is null. */
  static Drawing of(
      HingedFlap flap,
      Fit fit,
      List<Beside> beside,
      ViewPosition stand,
      double letters,
      Wording wording) {
    return new FlapView(flap, fit, beside, stand, letters, null, wording).draw();
  }

  /** The flap with the zones in which its mounts are looked for. */
  static Drawing of(HingedFlap flap, List<Beside> beside, ZonesSketch zones, Wording wording) {
    return new FlapView(flap, null, beside, ViewPosition.START, 1, zones.bounds(), wording)
        .draw(zones);
  }

  /**
   * The flap as it moves: where it starts in full lines that carry their tracks, where it comes by
   * as ghosts.
   */
  static Drawing of(HingedFlap flap, Fit fit, List<Beside> beside, Motion motion, Wording wording) {
    return new FlapView(flap, fit, beside, ViewPosition.START, 1, null, wording).draw(motion);
  }

  private Drawing draw(Motion motion) {
    double[] q = motion.q();
    Labels labels = new Labels(sketch);
    for (int i : Stills.of(motion)) {
      sketch.polygon(Role.GHOST, slab(handle, q[i]));
      sketch.line(Role.GHOST, at(moving, q[i]), at(foot(moving), q[i]));
    }
    sketch.line(Role.FRAME, new Point(0, 0), frame);
    Point hinge = new Point(0, 0);
    double[] turn = Arrays.stream(q).map(each -> flap.sense() * each).toArray();
    Track track = new Track(hinge, turn, Collections.nCopies(q.length, hinge));
    sketch.moving(
        track,
        () -> {
          sketch.line(Role.FLAP, moving, foot(moving));
          sketch.polygon(Role.FLAP, slab(handle, 0));
          sketch.circle(Role.MARK, handle, 0.25 * em);
        });
    besides.forEach(each -> each.drawMoving(q));
    spring.drawMoving(frame, moving, Arrays.stream(q).mapToObj(each -> at(moving, each)).toList());
    sketch.circle(Role.OUTLINE, hinge, 0.5 * em);
    sketch.circle(Role.OUTLINE, frame, 0.3 * em);
    sketch.moving(track, () -> sketch.circle(Role.OUTLINE, moving, 0.3 * em));
    for (int i : Stills.of(motion)) {
      labels.place(
          Role.LABEL, at(handle, q[i]), 0.3 * em, Size.SMALL, Stills.time(motion, i, wording));
    }
    return Stills.drawing(sketch, motion, wording);
  }

  private Drawing draw() {
    sweep();
    ghost(end);
    if (q > 0) {
      ghost(0);
    }
    flap();
    besides.forEach(each -> each.draw(q));
    reach.marks(frame, turned(moving));
    spring.draw(frame, turned(moving), q, reach.tube(), reach.rod());
    joints();
    gravity();
    labels();
    return sketch.drawing(
        wording.text("document.side-view"),
        wording.text(
                "document.side-view.about." + sense(),
                mass(),
                angle(),
                wording.quantity(flap.length(0), Unit.MILLIMETRE, 0),
                wording.quantity(flap.length(end), Unit.MILLIMETRE, 0))
            + BesideSketch.named(besides, wording),
        em);
  }

  private Drawing draw(ZonesSketch zones) {
    sweep();
    sketch.polygon(Role.GHOST, slab(handle, end));
    zones.ghost(sketch, this::open);
    sketch.polygon(Role.FLAP, slab(handle, 0));
    besides.forEach(each -> each.draw(0));
    zones.draw(sketch);
    hinge();
    gravity();
    Labels labels = new Labels(sketch);
    labels.place(Role.GRAVITY, weightTip(), 0, Size.NORMAL, mass());
    labels.place(Role.TRAVEL, travel().at(0.5), 0, Size.NORMAL, angle());
    labels.place(Role.LABEL, new Point(0, 0), 0.5 * em, Size.SMALL, wording.text("document.hinge"));
    besides.forEach(each -> each.label(labels, 0, wording));
    zones.label(labels, "document.moving-mount", wording);
    return sketch.drawing(
        wording.text("document.zones"),
        wording.text("document.zones.about." + sense(), mass(), angle()),
        em);
  }

  private String sense() {
    return flap.sense() > 0 ? "counterclockwise" : "clockwise";
  }

  private void ghost(double at) {
    double turn = flap.sense() * at;
    sketch.polygon(Role.GHOST, slab(handle, at));
    sketch.line(Role.GHOST, moving.turned(turn), foot(moving).turned(turn));
    spring.draw(frame, moving.turned(turn), at, Role.GHOST, Role.GHOST);
    besides.forEach(each -> each.ghost(at));
    sketch.circle(Role.GHOST, moving.turned(turn), 0.3 * em);
  }

  private void sweep() {
    Graphic.Arc travel = travel();
    sketch.add(travel);
    // The head follows the chord, so that it sits on the arc and not beside it.
    double back = Math.min(0.5 * Math.abs(travel.sweep()), 0.4 * em / travel.radius());
    double tangent = travel.from() + travel.sweep() - flap.sense() * back;
    sketch.arrowhead(Role.TRAVEL, travel.at(1), tangent + flap.sense() * Math.PI / 2);
  }

  private void flap() {
    sketch.line(Role.FRAME, new Point(0, 0), frame);
    sketch.line(Role.FLAP, turned(moving), turned(foot(moving)));
    sketch.polygon(Role.FLAP, slab(handle, q));
  }

  /** A slab from the hinge to a point, turned open by q. */
  private List<Point> slab(Point tip, double q) {
    double half = 0.32 * em;
    double along = Math.atan2(tip.y(), tip.x()) + flap.sense() * q;
    double far = tip.distance();
    return List.of(
        new Point(0, -half).turned(along),
        new Point(far, -half).turned(along),
        new Point(far, half).turned(along),
        new Point(0, half).turned(along));
  }

  /** The nearest point on the flap's middle line. */
  private Point foot(Point point) {
    double length = handle.distance();
    double share = (point.x() * handle.x() + point.y() * handle.y()) / (length * length);
    double held = Math.max(0, Math.min(1, share));
    return new Point(held * handle.x(), held * handle.y());
  }

  private void hinge() {
    sketch.circle(Role.OUTLINE, new Point(0, 0), 0.5 * em);
    sketch.circle(Role.MARK, new Point(0, 0), 0.15 * em);
  }

  private void joints() {
    hinge();
    sketch.circle(Role.OUTLINE, frame, 0.3 * em);
    sketch.circle(Role.OUTLINE, turned(moving), 0.3 * em);
    sketch.circle(Role.MARK, turned(handle), 0.25 * em);
  }

  /** The centre of mass and which way is down, tilt included. */
  private void gravity() {
    Point centre = turned(this.centre);
    sketch.circle(Role.OUTLINE, centre, 0.4 * em);
    sketch.line(Role.OUTLINE, centre.x() - 0.4 * em, centre.y(), centre.x() + 0.4 * em, centre.y());
    sketch.line(Role.OUTLINE, centre.x(), centre.y() - 0.4 * em, centre.x(), centre.y() + 0.4 * em);
    Point tip = weightTip();
    sketch.line(Role.GRAVITY, centre, tip);
    sketch.arrowhead(Role.GRAVITY, tip, -flap.tilt() - Math.PI / 2);
  }

  private Point weightTip() {
    Point down = new Point(-Math.sin(flap.tilt()), -Math.cos(flap.tilt()));
    return Sketch.plus(turned(centre), new Point(3 * em * down.x(), 3 * em * down.y()));
  }

  private void labels() {
    Labels labels = new Labels(sketch);
    labels.place(Role.GRAVITY, weightTip(), 0, Size.NORMAL, mass());
    labels.place(Role.TRAVEL, travel().at(0.5), 0, Size.NORMAL, angle());
    labels.place(Role.LABEL, frame, 0.3 * em, Size.SMALL, wording.text("document.frame-mount"));
    labels.place(
        Role.LABEL, turned(moving), 0.3 * em, Size.SMALL, wording.text("document.moving-mount"));
    labels.place(Role.LABEL, turned(handle), 0.3 * em, Size.SMALL, wording.text("document.handle"));
    labels.place(Role.LABEL, new Point(0, 0), 0.5 * em, Size.SMALL, wording.text("document.hinge"));
    besides.forEach(each -> each.label(labels, q, wording));
  }

  private String mass() {
    return wording.measure(flap.masses().nominal(), Unit.KILOGRAM, 1);
  }

  private String angle() {
    return wording.shortest(Unit.DEGREE.of(end), 1) + "°";
  }

  private Graphic.Arc travel() {
    return new Graphic.Arc(
        Role.TRAVEL,
        new Point(0, 0),
        handle.distance(),
        Math.atan2(handle.y(), handle.x()),
        flap.sense() * end);
  }

  private Point turned(Point closed) {
    return closed.turned(flap.sense() * q);
  }

  private Point open(Point closed) {
    return at(closed, end);
  }

  private Point at(Point closed, double q) {
    return closed.turned(flap.sense() * q);
  }

  private static Point millimetres(Point metres) {
    return new Point(mm(metres.x()), mm(metres.y()));
  }

  private static double mm(double metres) {
    return Unit.MILLIMETRE.of(metres);
  }
}
