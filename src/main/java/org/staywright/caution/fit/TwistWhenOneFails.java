package org.staywright.caution.fit;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.unit.Unit;

/** Of several springs one that fails leaves the others on their side alone: their hardest push. */
final class TwistWhenOneFails implements CautionRule {

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    return fit.count() > 1
        ? Optional.of(
            Caution.warning("twist", Figure.most(figures.strength().peakMountLoad(), Unit.NEWTON)))
        : Optional.empty();
  }
}
