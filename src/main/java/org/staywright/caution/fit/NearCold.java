package org.staywright.caution.fit;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.unit.Unit;

/** A job that comes so near to the coldest service that a harder winter passes it. */
final class NearCold implements CautionRule {

  /** Our choice, no source, K. */
  static final double NEAR = 10;

  @Override
  public Optional<Caution> of(Job job, Fit fit) {
    double coldest = job.conditions().coldest();
    double limit = fit.part().limits().coldest();
    return coldest - limit < NEAR
        ? Optional.of(
            Caution.warning(
                "near-cold", Figure.of(coldest, Unit.CELSIUS), Figure.of(limit, Unit.CELSIUS)))
        : Optional.empty();
  }
}
