package org.staywright.caution.part;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.unit.Unit;

/**
 * Oil damps only the last of the stroke: where the load meets its stop before the rod gets there,
 * nothing slows it, and with half of the zone unused only little does.
 */
public final class EndDampingIdle implements CautionRule {

  /** Our choice, no source. */
  private static final double LITTLE = 0.5;

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    double zone = fit.part().endZone();
    double unused = figures.lengths().extended() - figures.lengths().open();
    if (zone == 0 || unused < LITTLE * zone) {
      return Optional.empty();
    }
    Figure of = Figure.of(zone, Unit.MILLIMETRE);
    return Optional.of(
        unused < zone
            ? Caution.note("end-damping-short", Figure.of(zone - unused, Unit.MILLIMETRE), of)
            : Caution.warning("end-damping-idle", Figure.of(unused, Unit.MILLIMETRE), of));
  }
}
