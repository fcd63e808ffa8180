package org.staywright.form.mounts;

import org.staywright.fit.mounts.Sensitivity;

/** What a shift of either mount adds to the stroke left at either end. */
record PerMountReserves(PerMount compressedReserve, PerMount extendedReserve) {

  static PerMountReserves of(Sensitivity sensitivity) {
    return new PerMountReserves(
        PerMount.of(sensitivity.compressedReserve()), PerMount.of(sensitivity.extendedReserve()));
  }
}
