package org.staywright.caution.fit;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;

/** A spring that is the stop takes every blow itself: it wants oil at that end. */
final class UndampedStop implements CautionRule {

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    return figures.landing().undampedStop()
        ? Optional.of(Caution.warning("undamped-stop"))
        : Optional.empty();
  }
}
