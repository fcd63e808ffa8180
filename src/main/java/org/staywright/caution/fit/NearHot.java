package org.staywright.caution.fit;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.unit.Unit;

/** A job that comes so near to the hottest service that sun or a motor beside it passes it. */
final class NearHot implements CautionRule {

  @Override
  public Optional<Caution> of(Job job, Fit fit) {
    double hottest = job.conditions().hottest();
    double limit = fit.part().limits().hottest();
    return limit - hottest < NearCold.NEAR
        ? Optional.of(
            Caution.warning(
                "near-hot", Figure.of(hottest, Unit.CELSIUS), Figure.of(limit, Unit.CELSIUS)))
        : Optional.empty();
  }
}
