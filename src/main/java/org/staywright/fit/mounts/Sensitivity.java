package org.staywright.fit.mounts;

import static org.staywright.fit.job.Criterion.COMPRESSED_RESERVE;
import static org.staywright.fit.job.Criterion.EXTENDED_RESERVE;
import static org.staywright.fit.job.Criterion.HAND_FORCE;

import java.util.function.ToDoubleFunction;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.Paths;
import org.staywright.fit.job.Bare;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Outcome;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.part.Part;
import org.staywright.part.Range;

/**
 * What a shift of either mount changes, by central differences over ± 1 mm; NaN where the part is
 * out on both sides.
 *
 * @param handForce N per m
 * @param compressedReserve m per m
 * @param extendedReserve m per m
 */
public record Sensitivity(
    Gradient handForce, Gradient compressedReserve, Gradient extendedReserve) {

  private static final double STEP = 1e-3;

  /**
   * @param frame per shift of the frame mount along x and y
   * @param moving per shift of the moving mount along x and y
   */
  public record Gradient(Point frame, Point moving) {}

  static Sensitivity of(Job job, Range range, Mounts mounts, Fit fit) {
    Part part = fit.part();
    Bare bare = new Paths(job).bare();
    Outcome[] around = new Outcome[8];
    for (int i = 0; i < around.length; i++) {
      // Order: frame x up, x down, y up, y down, then the moving mount.
      double way = i % 2 == 0 ? STEP : -STEP;
      Point shift = i / 2 % 2 == 0 ? new Point(-way, 0) : new Point(0, -way);
      Mounts shifted =
          i < 4
              ? mounts.with(mounts.frame().minus(shift), mounts.moving())
              : mounts.with(mounts.frame(), mounts.moving().minus(shift));
      Job there = job.at(shifted);
      Assessment assessment =
          there.mechanism().faults().isEmpty()
              ? Assessment.of(there, range, part, fit.count())
              : null;
      around[i] =
          assessment == null || assessment.fit() == null ? null : assessment.fit().outcome();
    }
    return new Sensitivity(
        gradient(around, fit.outcome(), each -> HAND_FORCE.has(bare, each)),
        gradient(around, fit.outcome(), each -> COMPRESSED_RESERVE.has(bare, each)),
        gradient(around, fit.outcome(), each -> EXTENDED_RESERVE.has(bare, each)));
  }

  private static Gradient gradient(Outcome[] around, Outcome here, ToDoubleFunction<Outcome> of) {
    return new Gradient(
        new Point(slope(around, 0, here, of), slope(around, 2, here, of)),
        new Point(slope(around, 4, here, of), slope(around, 6, here, of)));
  }

  private static double slope(
      Outcome[] around, int at, Outcome here, ToDoubleFunction<Outcome> of) {
    Outcome up = around[at];
    Outcome down = around[at + 1];
    if (up == null && down == null) {
      return Double.NaN;
    }
    double width = (up == null ? 0 : STEP) + (down == null ? 0 : STEP);
    return (of.applyAsDouble(up == null ? here : up) - of.applyAsDouble(down == null ? here : down))
        / width;
  }
}
