package org.staywright.caution.fit;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.part.Part;
import org.staywright.unit.Unit;

/**
 * A rod guides its own axis and nothing else. Mounts that stand apart across the side view slant
 * it: the angle at the shortest length, and what the hardest push then has across, F·sin.
 */
final class SideLoad implements CautionRule {

  @Override
  public Optional<Caution> of(Part part) {
    return Optional.of(Caution.warning("no-side-load"));
  }

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    double offset = job.mechanism().lateralOffset();
    return offset == 0
        ? of(fit.part())
        : Optional.of(
            Caution.warning(
                "side-load",
                new Figure(offset, Unit.MILLIMETRE, 1),
                new Figure(figures.strength().swing(), Unit.DEGREE, 1),
                Figure.most(
                    figures.strength().peakMountLoad() * Math.sin(figures.strength().swing()),
                    Unit.NEWTON)));
  }
}
