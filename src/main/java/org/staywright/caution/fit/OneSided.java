package org.staywright.caution.fit;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.unit.Unit;

/** One spring at one side of a flap twists it always: with what it pushes at its hardest. */
final class OneSided implements CautionRule {

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    boolean alone = fit.count() == 1 && job.mechanism().twistsOnOne();
    return alone
        ? Optional.of(
            Caution.warning(
                "one-sided", Figure.most(figures.strength().peakMountLoad(), Unit.NEWTON)))
        : Optional.empty();
  }
}
