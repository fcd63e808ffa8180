package org.staywright.document;

import java.util.List;
import org.staywright.fit.Fit;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;
import org.staywright.part.Part;
import org.staywright.unit.Unit;

/** A spring between its mounts in a side view, mm, at true length. */
final class SpringSketch {

  /** Without an assessed spring the tube takes this share of the shortest length. */
  private static final double TUBE = 0.56;

  private final Sketch sketch;
  private final Mechanism mechanism;
  private final Fit fit;
  private final double shortest;

  /**
   * @param fit of the spring, null for a spring as such
   * @param end of the travel, rad or m
   */
  SpringSketch(Sketch sketch, Mechanism mechanism, Fit fit, double end) {
    this.sketch = sketch;
    this.mechanism = mechanism;
    this.fit = fit;
    this.shortest = mm(mechanism.travel(end).shortest());
  }

  /** Draws it between the mounts as they stand at q. */
  void draw(Point frame, Point moving, double q, Role tubeRole, Role rodRole) {
    boolean rodMoves = rodEnd() == RodEnd.MOVING;
    Point from = rodMoves ? frame : moving;
    Point to = rodMoves ? moving : frame;
    double em = sketch.em();
    double seen = to.minus(from).distance();
    double length = mm(mechanism.length(q));
    // Mounts that stand apart across the view show the spring shorter than it is.
    double scale = seen / length;
    double tubeStart = 0;
    double tubeEnd = TUBE * shortest;
    double tubeHalf = 0.4 * em;
    double rodHalf = 0.15 * em;
    if (fit != null) {
      Part part = fit.part();
      tubeStart = fit.tubeFitting() == null ? 0 : mm(fit.tubeFitting().lengthToCentre());
      tubeEnd = tubeStart + mm(part.spring().compressedLength());
      tubeHalf = Math.max(tubeHalf, mm(part.spring().tubeDiameter()) / 2);
      rodHalf = Math.max(rodHalf, mm(part.spring().rodDiameter()) / 2);
    }
    double tubeStop = Math.min(tubeEnd, length);
    bar(rodRole, from, to, 0, scale * Math.min(tubeStart, tubeStop), rodHalf);
    bar(rodRole, from, to, scale * tubeStop, seen, rodHalf);
    bar(tubeRole, from, to, scale * Math.min(tubeStart, tubeStop), scale * tubeStop, tubeHalf);
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
    RodEnd wanted = fit == null ? mechanism.rodEnd() : fit.rodEndAt();
    if (wanted != RodEnd.EITHER) {
      return wanted;
    }
    return mechanism.rise(0).orElse(0) > 0 ? RodEnd.FRAME : RodEnd.MOVING;
  }

  private static double mm(double metres) {
    return Unit.MILLIMETRE.of(metres);
  }
}
