package org.staywright.caution.fit;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Extreme;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Stay;
import org.staywright.unit.Unit;

/**
 * A load that only a few newtons keep open, or none: at worst it comes down on whoever trusts it.
 */
final class BarelyHeld implements CautionRule {

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    Extreme open = figures.hold().open();
    return switch (Stay.open(figures.hold())) {
      case STAYS -> Optional.empty();
      case BARELY -> {
        Figure newtons = Figure.least(open.value(), Unit.NEWTON, 1);
        yield Optional.of(Caution.warning("barely-held", newtons).at("stays", open.corner()));
      }
      case LEAVES -> {
        Figure newtons = Figure.most(-open.value(), Unit.NEWTON);
        yield Optional.of(Caution.danger("barely-held", newtons).at("leaves", open.corner()));
      }
    };
  }
}
