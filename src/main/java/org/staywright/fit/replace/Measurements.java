package org.staywright.fit.replace;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.job.Job.FittingWish;
import org.staywright.part.Family;
import org.staywright.part.Finish;

/**
 * All that is known of an old spring; whatever is not known is absent and tells nothing. SI.
 *
 * @param sizes read off an instrument, and the force printed on the tube
 * @param ball diameter of a ball at either end, null where unknown
 * @param rodEnd fitting on the rod, null where unknown
 * @param tubeEnd fitting on the tube, null where unknown
 * @param rodThread thread of the rod, null where unknown
 * @param finish null where unknown
 * @param endDamped whether it brakes before its end, null where unknown
 * @param family null where unknown
 * @param scale what a scale showed, null where none was used
 * @param springCount equal springs that work together
 * @param handleTravel way of the handle from closed to open, m, null where unknown
 */
public record Measurements(
    Map<Gauge, Reading> sizes,
    @Nullable Reading ball,
    @Nullable FittingWish rodEnd,
    @Nullable FittingWish tubeEnd,
    @Nullable String rodThread,
    @Nullable Finish finish,
    @Nullable Boolean endDamped,
    @Nullable Family family,
    @Nullable ScaleReading scale,
    int springCount,
    @Nullable Double handleTravel) {

  public Measurements {
    sizes = Map.copyOf(sizes);
  }

  /** The same with other sizes. */
  Measurements with(Map<Gauge, Reading> others) {
    return new Measurements(
        others,
        ball,
        rodEnd,
        tubeEnd,
        rodThread,
        finish,
        endDamped,
        family,
        scale,
        springCount,
        handleTravel);
  }

  /** Null where it was not measured. */
  public @Nullable Reading size(Gauge gauge) {
    return sizes.get(gauge);
  }

  /** Force printed on the tube, N; null where unknown. */
  public @Nullable Double printedForce() {
    Reading printed = size(Gauge.PRINTED_FORCE);
    return printed == null ? null : printed.value();
  }

  /** Whether anything tells the force class. */
  boolean forceKnown() {
    return printedForce() != null || size(Gauge.FLAP_FORCE) != null;
  }

  /** Whether something was measured that the end fittings are part of. */
  boolean throughFittings() {
    return ball != null
        || sizes.keySet().stream().anyMatch(gauge -> gauge.basis() != Gauge.Basis.BARE);
  }

  /**
   * What the spring moves in place; its stroke where the mounts were not measured, null for
   * neither.
   */
  @Nullable Double travel() {
    Reading closed = size(Gauge.CENTRES_CLOSED);
    Reading open = size(Gauge.CENTRES_OPEN);
    if (closed != null && open != null) {
      return open.value() - closed.value();
    }
    Reading stroke = size(Gauge.STROKE);
    return stroke == null ? null : Double.valueOf(stroke.value());
  }
}
