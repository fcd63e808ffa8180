package org.staywright.fit.mounts;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Fit;
import org.staywright.mechanism.Mounts;

/**
 * A candidate hung somewhere, assessed plainly.
 *
 * @param share of the free coordinates
 * @param mounts there
 * @param row of the range
 * @param count of springs
 * @param fit null where it is out
 * @param value by the {@link Objective}, the part's own share left out
 */
public record PlacedCandidate(
    double[] share, Mounts mounts, int row, int count, @Nullable Fit fit, double value) {

  /** What it does; of none that is out. */
  Fit judged() {
    return Objects.requireNonNull(fit, "out");
  }

  boolean fits() {
    return fit != null && fit.fits();
  }
}
