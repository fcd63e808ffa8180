package org.staywright.document.view;

import java.util.List;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.document.draw.Track;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Beside;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.unit.Unit;

/** A spring between its mounts in a side view, mm, at true length. */
final class SpringSketch {

  /** Without an assessed spring the tube takes this share of the shortest length. */
  private static final double TUBE = 0.56;

  private final Sketch sketch;
  private final Mechanism mechanism;
  private final Part part;
  private final Fitting tubeFitting;
  private final RodEnd wanted;
  private final double shortest;

  /**
   * @param fit of the spring, null for a spring as such
   * @param end of the travel, rad or m
   */
  SpringSketch(Sketch sketch, Mechanism mechanism, Fit fit, double end) {
    this.sketch = sketch;
    this.mechanism = mechanism;
    this.part = fit == null ? null : fit.part();
    this.tubeFitting = fit == null ? null : fit.tubeFitting();
    this.wanted = fit == null ? mechanism.rodEnd() : fit.rodEndAt();
    this.shortest = mm(mechanism.travel(end).shortest());
  }

  /** A damper on mounts of its own. */
  SpringSketch(Sketch sketch, Beside beside) {
    this.sketch = sketch;
    this.mechanism = beside.mechanism();
    this.part = beside.part();
    this.tubeFitting = beside.tube();
    this.wanted = mechanism.rodEnd();
    this.shortest = mm(mechanism.travel(mechanism.end()).shortest());
  }

  /** Draws it between the mounts as they stand at q. */
  void draw(Point frame, Point moving, double q, Role tubeRole, Role rodRole) {
    boolean rodMoves = rodEnd() == RodEnd.MOVING;
    Point from = rodMoves ? frame : moving;
    Point to = rodMoves ? moving : frame;
    double seen = to.minus(from).distance();
    double length = mm(mechanism.length(q));
    // Mounts that stand apart across the view show the spring shorter than it is.
    double scale = seen / length;
    Bars bars = bars();
    double tubeStop = Math.min(bars.tubeEnd, length);
    double tubeStart = Math.min(bars.tubeStart, tubeStop);
    bar(rodRole, from, to, 0, scale * tubeStart, bars.rodHalf);
    bar(rodRole, from, to, scale * tubeStop, seen, bars.rodHalf);
    bar(tubeRole, from, to, scale * tubeStart, scale * tubeStop, bars.tubeHalf);
  }

  /**
   * Draws it as it stands between its mounts at the start, in two pieces that slide into each
   * other.
   *
   * @param moves where the moving mount stands at even times
   */
  void drawMoving(Point frame, Point moving, List<Point> moves) {
    boolean rodMoves = rodEnd() == RodEnd.MOVING;
    Track still = Track.turning(frame, moving, moves);
    Track moved = Track.following(frame, moving, moves);
    Point from = rodMoves ? frame : moving;
    Point to = rodMoves ? moving : frame;
    double seen = to.minus(from).distance();
    double longest =
        moves.stream().mapToDouble(at -> at.minus(frame).distance()).max().orElse(seen);
    Bars bars = bars();
    double rodFrom = Math.max(bars.tubeStart, seen - Math.max(0, longest - bars.tubeEnd));
    double tubeStop = Math.min(bars.tubeEnd, seen);
    sketch.moving(
        rodMoves ? moved : still, () -> bar(Role.ROD, from, to, rodFrom, seen, bars.rodHalf));
    sketch.moving(
        rodMoves ? still : moved,
        () -> {
          bar(Role.ROD, from, to, 0, Math.min(bars.tubeStart, tubeStop), bars.rodHalf);
          bar(Role.TUBE, from, to, bars.tubeStart, tubeStop, bars.tubeHalf);
        });
  }

  /** Along the spring from its tube's end, and half as wide as it is, mm. */
  private record Bars(double tubeStart, double tubeEnd, double tubeHalf, double rodHalf) {}

  private Bars bars() {
    double em = sketch.em();
    if (part == null) {
      return new Bars(0, TUBE * shortest, 0.4 * em, 0.15 * em);
    }
    double start = tubeFitting == null ? 0 : mm(tubeFitting.lengthToCentre());
    return new Bars(
        start,
        start + mm(part.spring().compressedLength()),
        Math.max(0.4 * em, mm(part.spring().tubeDiameter()) / 2),
        Math.max(0.15 * em, mm(part.spring().rodDiameter()) / 2));
  }

  private void bar(Role role, Point from, Point to, double start, double stop, double half) {
    if (stop - start < 1e-6 * sketch.em()) {
      return;
    }
    Point way = to.minus(from);
    double along = Math.atan2(way.y(), way.x());
    sketch.polygon(
        role,
        List.of(
            Sketch.plus(from, new Point(start, -half).turned(along)),
            Sketch.plus(from, new Point(stop, -half).turned(along)),
            Sketch.plus(from, new Point(stop, half).turned(along)),
            Sketch.plus(from, new Point(start, half).turned(along))));
  }

  /** Where the rod hangs; left open by the job, it is the end that is lower at the start. */
  private RodEnd rodEnd() {
    if (wanted != RodEnd.EITHER) {
      return wanted;
    }
    return mechanism.rise(0).orElse(0) > 0 ? RodEnd.FRAME : RodEnd.MOVING;
  }

  private static double mm(double metres) {
    return Unit.MILLIMETRE.of(metres);
  }
}
