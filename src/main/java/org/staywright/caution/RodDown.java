package org.staywright.caution;

import java.util.List;
import java.util.Optional;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.Caution.Severity;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.part.Mounting;
import org.staywright.part.Part;
import org.staywright.unit.Unit;

/** Oil keeps the seal wet and damps the end only where the rod hangs down. */
final class RodDown implements CautionRule {

  @Override
  public Optional<Caution> of(Part part) {
    return wantsRodDown(part)
        ? Optional.of(new Caution("rod-down", Severity.NOTE, List.of(), COMMON_PRACTICE))
        : Optional.empty();
  }

  @Override
  public Optional<Caution> of(Job job, Fit fit) {
    double closed = rodAboveLevel(job, fit, 0);
    double open = rodAboveLevel(job, fit, fit.figures().openingAngle());
    if (!wantsRodDown(fit.part()) || closed <= 0 && open <= 0) {
      return of(fit.part());
    }
    return Optional.of(
        new Caution(
            "rod-up",
            Severity.WARNING,
            List.of(new Figure(closed, Unit.DEGREE, 0), new Figure(open, Unit.DEGREE, 0)),
            COMMON_PRACTICE));
  }

  private static boolean wantsRodDown(Part part) {
    return part.mounting() == Mounting.ROD_DOWN;
  }

  /** Slope from the tube's mount up to the rod's, rad; negative where the rod hangs down. */
  private static double rodAboveLevel(Job job, Fit fit, double q) {
    double slope = Math.asin(Math.max(-1, Math.min(1, job.mechanism().rise(q).orElse(0))));
    return fit.rodEndAt() == RodEnd.MOVING ? slope : -slope;
  }
}
