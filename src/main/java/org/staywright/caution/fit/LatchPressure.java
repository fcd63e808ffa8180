package org.staywright.caution.fit;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.unit.Unit;

/** Where springs lift the closed load at worst, only the latch holds it: let go, it jumps. */
final class LatchPressure implements CautionRule {

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    double push = figures.hold().latchPush();
    return push > 0
        ? Optional.of(
            Caution.warning("latch-pressure", Figure.most(push, Unit.NEWTON))
                .at("shut", figures.hold().closedLeast().corner()))
        : Optional.empty();
  }
}
