package org.staywright.fit.mounts;

import java.util.function.ToDoubleFunction;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
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
    Figures[] figures = new Figures[8];
    for (int i = 0; i < figures.length; i++) {
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
      figures[i] =
          assessment == null || assessment.fit() == null ? null : assessment.fit().figures();
    }
    return new Sensitivity(
        gradient(figures, fit.figures(), each -> each.hand().worst()),
        gradient(figures, fit.figures(), each -> each.lengths().compressedReserve()),
        gradient(figures, fit.figures(), each -> each.lengths().extendedReserve()));
  }

  private static Gradient gradient(Figures[] figures, Figures here, ToDoubleFunction<Figures> of) {
    return new Gradient(
        new Point(slope(figures, 0, here, of), slope(figures, 2, here, of)),
        new Point(slope(figures, 4, here, of), slope(figures, 6, here, of)));
  }

  private static double slope(
      Figures[] figures, int at, Figures here, ToDoubleFunction<Figures> of) {
    Figures up = figures[at];
    Figures down = figures[at + 1];
    if (up == null && down == null) {
      return Double.NaN;
    }
    double width = (up == null ? 0 : STEP) + (down == null ? 0 : STEP);
    return (of.applyAsDouble(up == null ? here : up) - of.applyAsDouble(down == null ? here : down))
        / width;
  }
}
