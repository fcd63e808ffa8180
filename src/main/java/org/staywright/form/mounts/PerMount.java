package org.staywright.form.mounts;

import org.jspecify.annotations.Nullable;
import org.staywright.fit.mounts.Sensitivity;
import org.staywright.mechanism.Point;

/** What a shift of either mount adds. */
record PerMount(Slope frame, Slope moving) {

  /** Along x and y; null where the part is out on both sides. */
  record Slope(@Nullable Double x, @Nullable Double y) {

    static Slope of(Point slope, double scale) {
      return new Slope(slope.x() * scale, slope.y() * scale);
    }
  }

  /** A slope in N per m is a thousandth of that per mm. */
  static PerMount perMillimetre(Sensitivity.Gradient gradient) {
    return of(gradient, 1e-3);
  }

  private static PerMount of(Sensitivity.Gradient gradient, double scale) {
    return new PerMount(Slope.of(gradient.frame(), scale), Slope.of(gradient.moving(), scale));
  }

  /** What it adds to the stroke left at either end. */
  record PerMountReserves(PerMount compressedReserve, PerMount extendedReserve) {

    /** One in m per m is the same per mm. */
    static PerMountReserves of(Sensitivity sensitivity) {
      return new PerMountReserves(
          PerMount.of(sensitivity.compressedReserve(), 1),
          PerMount.of(sensitivity.extendedReserve(), 1));
    }
  }
}
