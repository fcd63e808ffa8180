package org.staywright.document.view;

import java.util.Optional;
import org.staywright.document.draw.Graphic;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Figures;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Point;
import org.staywright.unit.Unit;

/** The lengths between which a spring can be used, marked along it in a side view. */
final class UsableLengths {

  /** Half the angle of a mark about the frame mount, rad. */
  private static final double HALF_MARK = 0.1;

  private final Sketch sketch;
  private final Mechanism mechanism;
  private final Optional<Figures.Lengths> usable;
  private final boolean out;

  UsableLengths(Sketch sketch, Mechanism mechanism, Fit fit, ViewPosition stand, double q) {
    this.sketch = sketch;
    this.mechanism = mechanism;
    this.usable = Optional.ofNullable(fit).flatMap(Fit::figures).map(Figures::lengths);
    double length = mechanism.length(q);
    this.out =
        stand.out()
            || usable.stream()
                .anyMatch(
                    each -> length < each.compressed() - 1e-6 || length > each.extended() + 1e-6);
  }

  Role tube() {
    return out ? Role.LIMIT : Role.TUBE;
  }

  Role rod() {
    return out ? Role.LIMIT : Role.ROD;
  }

  /** Its end positions as arcs about the frame mount: what lies between is its stroke. */
  void marks(Point frame, Point moving) {
    usable.ifPresent(
        lengths -> {
          mark(frame, moving, lengths.compressed());
          mark(frame, moving, lengths.extended());
        });
  }

  private void mark(Point frame, Point moving, double length) {
    // Mounts that stand apart across the view show the spring shorter than it is.
    double offset = mechanism.lateralOffset();
    double seen = Math.sqrt(Math.max(0, length * length - offset * offset));
    Point way = moving.minus(frame);
    double along = Math.atan2(way.y(), way.x());
    sketch.add(
        new Graphic.Arc(
            Role.REACH, frame, Unit.MILLIMETRE.of(seen), along - HALF_MARK, 2 * HALF_MARK));
  }
}
