package org.staywright.caution.part;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.part.Mounting;
import org.staywright.part.Part;
import org.staywright.unit.Unit;

/** Oil keeps the seal wet and damps the end only where the rod hangs down. */
public final class RodDown implements CautionRule {

  @Override
  public Optional<Caution> of(Part part) {
    return part.mounting() == Mounting.ROD_DOWN
        ? Optional.of(Caution.note("rod-down"))
        : Optional.empty();
  }

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    double closed = rodAboveLevel(job, fit, 0);
    double open = rodAboveLevel(job, fit, figures.end());
    return of(fit.part())
        .map(
            down ->
                closed <= 0 && open <= 0
                    ? down
                    : Caution.warning(
                        "rod-up", Figure.of(closed, Unit.DEGREE), Figure.of(open, Unit.DEGREE)));
  }

  /** Slope from the tube's mount up to the rod's, rad; negative where the rod hangs down. */
  private static double rodAboveLevel(Job job, Fit fit, double q) {
    double slope = Math.asin(Math.max(-1, Math.min(1, job.mechanism().rise(q).orElse(0))));
    return fit.rodEndAt() == RodEnd.MOVING ? slope : -slope;
  }
}
