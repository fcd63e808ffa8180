package org.staywright.document.view;

import java.util.ArrayList;
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
import org.staywright.mechanism.Pose;
import org.staywright.mechanism.Rigid;
import org.staywright.motion.Motion;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/**
 * A rigid load from the side by its poses, mm: in full lines where it stands, as a ghost at the
 * ends of its travel, its spring at true length in all of them, with the lengths it can reach.
 */
final class RigidView {

  private final Rigid rigid;
  private final Wording wording;
  private final double end;
  private final double q;
  private final LoadSketch load;
  private final UsableLengths reach;
  private final Point frame;
  private final Point moving;
  private final Sketch sketch;
  private final SpringSketch spring;
  private final List<BesideSketch> besides;
  private final double em;

  /**
   * @param letters how large they are against those on the screen
   * @param more that is to be seen besides, null for nothing
   */
  private RigidView(
      Rigid rigid,
      Fit fit,
      List<Beside> beside,
      ViewPosition stand,
      double letters,
      Box more,
      Wording wording) {
    this.rigid = rigid;
    this.wording = wording;
    this.end = fit == null ? rigid.end() : fit.outcome().end();
    this.q = Math.max(0, Math.min(end, stand.q()));
    this.load =
        rigid.as(
            flap -> new FlapSketch(flap, end, wording), lift -> new LiftSketch(lift, end, wording));
    this.frame = millimetres(rigid.mounts().frame());
    this.moving = millimetres(rigid.mounts().moving());
    Box box = Box.around(List.of(frame, moving, at(moving, end))).with(load.room());
    box = more == null ? box : box.with(more);
    for (Point mount : BesideSketch.mounts(beside, this::at, end)) {
      box = box.with(Box.around(List.of(mount)));
    }
    this.em = letters * Math.max(box.width(), box.height()) / load.across();
    this.sketch = new Sketch(em);
    this.spring = new SpringSketch(sketch, rigid, fit, end);
    this.besides = beside.stream().map(each -> new BesideSketch(sketch, each, this::at)).toList();
    this.reach = new UsableLengths(sketch, rigid, fit, stand, q);
  }

  /** With an assessed spring; without one where it is null. */
  static Drawing of(
      Rigid rigid,
      Fit fit,
      List<Beside> beside,
      ViewPosition stand,
      double letters,
      Wording wording) {
    return new RigidView(rigid, fit, beside, stand, letters, null, wording).draw();
  }

  /** With the zones in which its mounts are looked for. */
  static Drawing of(Rigid rigid, List<Beside> beside, ZonesSketch zones, Wording wording) {
    return new RigidView(rigid, null, beside, ViewPosition.START, 1, zones.bounds(), wording)
        .draw(zones);
  }

  /**
   * As it moves: where it starts in full lines that carry their tracks, where it comes by as
   * ghosts.
   */
  static Drawing of(Rigid rigid, Fit fit, List<Beside> beside, Motion motion, Wording wording) {
    return new RigidView(rigid, fit, beside, ViewPosition.START, 1, null, wording).draw(motion);
  }

  private Drawing draw(Motion motion) {
    double[] course = motion.q();
    // Before all that is drawn: what they would have to keep clear of moves away.
    Labels labels = new Labels(sketch);
    load.rail(sketch);
    for (int i : Stills.of(motion)) {
      ghost(course[i]);
    }
    brackets();
    Track track = track(course);
    sketch.moving(
        track,
        () -> {
          body(0);
          load.handle().ifPresent(handle -> sketch.circle(Role.MARK, handle, 0.25 * em));
        });
    besides.forEach(each -> each.drawMoving(course));
    spring.drawMoving(
        frame, moving, Arrays.stream(course).mapToObj(each -> at(moving, each)).toList());
    load.pins().forEach(pin -> sketch.circle(Role.OUTLINE, pin, 0.5 * em));
    sketch.circle(Role.OUTLINE, frame, 0.3 * em);
    sketch.moving(track, () -> sketch.circle(Role.OUTLINE, moving, 0.3 * em));
    for (int i : Stills.of(motion)) {
      Point at = at(load.timed(em), course[i]);
      labels.place(Role.LABEL, at, 0.3 * em, Size.SMALL, Stills.time(motion, i, wording));
    }
    return Stills.drawing(sketch, motion, wording);
  }

  /** How it goes from its start: about what it turns on, else about its mount. */
  private Track track(double[] course) {
    Point pivot = load.pins().stream().findFirst().orElse(moving);
    double[] turns = new double[course.length];
    List<Point> shifts = new ArrayList<>();
    double last = 0;
    for (int i = 0; i < course.length; i++) {
      Pose pose = rigid.pose(course[i]);
      // The shorter way round from where it was, so that nothing spins between two times.
      last += Math.IEEEremainder(Math.atan2(pose.sin(), pose.cos()) - last, 2 * Math.PI);
      turns[i] = last;
      shifts.add(at(pivot, course[i]).minus(pivot));
    }
    return new Track(pivot, turns, shifts);
  }

  private Drawing draw() {
    load.rail(sketch);
    load.travel(sketch);
    standing(end);
    if (q > 0) {
      standing(0);
    }
    brackets();
    body(q);
    besides.forEach(each -> each.draw(q));
    reach.marks(frame, at(moving, q));
    spring.draw(frame, at(moving, q), q, reach.tube(), reach.rod());
    pins();
    sketch.circle(Role.OUTLINE, frame, 0.3 * em);
    sketch.circle(Role.OUTLINE, at(moving, q), 0.3 * em);
    load.handle().ifPresent(handle -> sketch.circle(Role.MARK, at(handle, q), 0.25 * em));
    gravity();
    LoadSketch.Words words = load.words();
    label(words);
    return sketch.drawing(words.title(), words.about() + BesideSketch.named(besides, wording), em);
  }

  private Drawing draw(ZonesSketch zones) {
    LoadSketch.Words words = load.words();
    load.rail(sketch);
    load.travel(sketch);
    sketch.polygon(Role.GHOST, outline(end));
    zones.ghost(sketch, corner -> at(corner, end));
    sketch.polygon(Role.FLAP, outline(0));
    besides.forEach(each -> each.draw(0));
    zones.draw(sketch);
    pins();
    gravity();
    Labels labels = new Labels(sketch);
    label(labels, words);
    labelPins(labels);
    besides.forEach(each -> each.label(labels, 0, wording));
    zones.label(labels, words.mount(), wording);
    return sketch.drawing(wording.text("document.zones"), words.zones(), em);
  }

  /** With its spring and all that acts along. */
  private void standing(double at) {
    ghost(at);
    spring.draw(frame, at(moving, at), at, Role.GHOST, Role.GHOST);
    besides.forEach(each -> each.ghost(at));
    sketch.circle(Role.GHOST, at(moving, at), 0.3 * em);
  }

  private void ghost(double at) {
    sketch.polygon(Role.GHOST, outline(at));
    arm(Role.GHOST, at);
  }

  private void body(double at) {
    arm(Role.FLAP, at);
    sketch.polygon(Role.FLAP, outline(at));
  }

  private List<Point> outline(double at) {
    return load.outline(em).stream().map(corner -> at(corner, at)).toList();
  }

  private void arm(Role role, double at) {
    load.foot(moving).ifPresent(foot -> sketch.line(role, at(moving, at), at(foot, at)));
  }

  private void brackets() {
    load.pins().forEach(pin -> sketch.line(Role.FRAME, pin, frame));
  }

  private void pins() {
    for (Point pin : load.pins()) {
      sketch.circle(Role.OUTLINE, pin, 0.5 * em);
      sketch.circle(Role.MARK, pin, 0.15 * em);
    }
  }

  /** The centre of mass and which way is down. */
  private void gravity() {
    Point centre = centre();
    sketch.circle(Role.OUTLINE, centre, 0.4 * em);
    sketch.line(Role.OUTLINE, centre.x() - 0.4 * em, centre.y(), centre.x() + 0.4 * em, centre.y());
    sketch.line(Role.OUTLINE, centre.x(), centre.y() - 0.4 * em, centre.x(), centre.y() + 0.4 * em);
    sketch.line(Role.GRAVITY, centre, weightTip());
    sketch.arrowhead(Role.GRAVITY, weightTip(), Math.atan2(-rigid.up().y(), -rigid.up().x()));
  }

  private Point centre() {
    return at(load.centreOfMass(em), q);
  }

  private Point weightTip() {
    double far = load.weight() * em;
    return centre().minus(new Point(far * rigid.up().x(), far * rigid.up().y()));
  }

  private void label(LoadSketch.Words words) {
    Labels labels = new Labels(sketch);
    label(labels, words);
    labels.place(Role.LABEL, frame, 0.3 * em, Size.SMALL, wording.text("document.frame-mount"));
    labels.place(Role.LABEL, at(moving, q), 0.3 * em, Size.SMALL, wording.text(words.mount()));
    load.handle()
        .ifPresent(
            handle ->
                labels.place(
                    Role.LABEL,
                    at(handle, q),
                    0.3 * em,
                    Size.SMALL,
                    wording.text("document.handle")));
    labelPins(labels);
    load.labelRail(labels, em);
    besides.forEach(each -> each.label(labels, q, wording));
  }

  private void label(Labels labels, LoadSketch.Words words) {
    String mass = wording.measure(rigid.masses().nominal(), Unit.KILOGRAM, 1);
    labels.place(Role.GRAVITY, weightTip(), 0, Size.NORMAL, mass);
    labels.place(Role.TRAVEL, load.halfWay(em), 0, Size.NORMAL, words.travel());
  }

  private void labelPins(Labels labels) {
    for (Point pin : load.pins()) {
      labels.place(Role.LABEL, pin, 0.5 * em, Size.SMALL, wording.text("document.hinge"));
    }
  }

  /** Where a point of the load stands that was elsewhere at the start. */
  private Point at(Point start, double at) {
    Pose pose = rigid.pose(at);
    return Sketch.plus(pose.turned(start), millimetres(pose.shift()));
  }

  static Point millimetres(Point metres) {
    return new Point(Unit.MILLIMETRE.of(metres.x()), Unit.MILLIMETRE.of(metres.y()));
  }
}
