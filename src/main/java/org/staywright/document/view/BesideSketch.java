package org.staywright.document.view;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Labels;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.fit.job.Beside;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/** A damper or spring beside the springs in a side view, mm, on mounts of its own. */
final class BesideSketch {

  /** How a mechanism moves what is on it: where a point stands that was elsewhere at the start. */
  interface Moving {

    /**
     * @param q rad or m
     */
    Point at(Point start, double q);
  }

  private final Sketch sketch;
  private final SpringSketch spring;
  private final Beside beside;
  private final Point frame;
  private final DoubleFunction<Point> mount;

  BesideSketch(Sketch sketch, Beside beside, Moving moving) {
    this.sketch = sketch;
    this.beside = beside;
    this.spring = new SpringSketch(sketch, beside);
    this.frame = frame(beside);
    Point start = start(beside);
    this.mount = q -> moving.at(start, q);
  }

  /** Where their mounts come to be, so that a drawing has room for them. */
  static List<Point> mounts(List<Beside> beside, Moving moving, double end) {
    return beside.stream()
        .flatMap(each -> Stream.of(frame(each), start(each), moving.at(start(each), end)))
        .toList();
  }

  void draw(double q) {
    spring.draw(frame, mount.apply(q), q, Role.METAL, Role.METAL);
    joints(mount.apply(q));
  }

  void ghost(double q) {
    spring.draw(frame, mount.apply(q), q, Role.GHOST, Role.GHOST);
  }

  /** With its track, from where it stands first. */
  void drawMoving(double[] q) {
    List<Point> moves = Arrays.stream(q).mapToObj(mount).toList();
    spring.drawMoving(frame, moves.get(0), moves);
  }

  void label(Labels labels, double q, Wording wording) {
    Point at = mount.apply(q);
    Point middle = new Point((frame.x() + at.x()) / 2, (frame.y() + at.y()) / 2);
    String text = new BesideText(wording).kind(beside);
    labels.place(Role.LABEL, middle, 0.6 * sketch.em(), Size.SMALL, text);
  }

  /** A sentence more for a description, "" where there is nothing beside. */
  static String named(List<BesideSketch> besides, Wording wording) {
    BesideText words = new BesideText(wording);
    String all =
        besides.stream().map(each -> words.counted(each.beside)).collect(Collectors.joining(", "));
    return all.isEmpty() ? "" : ' ' + wording.text("document.side-view.beside", all);
  }

  private void joints(Point at) {
    sketch.circle(Role.OUTLINE, frame, 0.25 * sketch.em());
    sketch.circle(Role.OUTLINE, at, 0.25 * sketch.em());
  }

  private static Point frame(Beside beside) {
    return millimetres(mounts(beside).frame());
  }

  private static Point start(Beside beside) {
    return millimetres(mounts(beside).moving());
  }

  private static Mounts mounts(Beside beside) {
    return beside.mechanism().mounts();
  }

  private static Point millimetres(Point metres) {
    return new Point(Unit.MILLIMETRE.of(metres.x()), Unit.MILLIMETRE.of(metres.y()));
  }
}
