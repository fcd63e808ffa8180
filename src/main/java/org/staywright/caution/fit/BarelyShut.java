package org.staywright.caution.fit;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Stay;
import org.staywright.unit.Unit;

/** What must stay shut is kept so by only a few newtons; what opens presses on its latch. */
final class BarelyShut implements CautionRule {

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    Figures.Hold hold = figures.hold();
    boolean asked = job.requirements().asks(Criterion.STAYS_SHUT);
    return asked && Stay.shut(hold) == Stay.BARELY
        ? Optional.of(
            Caution.warning("barely-shut", Figure.least(-hold.latchPush(), Unit.NEWTON, 1))
                .at("shut", hold.closedLeast().corner()))
        : Optional.empty();
  }
}
