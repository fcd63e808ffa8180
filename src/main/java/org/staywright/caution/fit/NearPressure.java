package org.staywright.caution.fit;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.unit.Unit;

/** The hardest stroke of the job comes near to the highest pressure of the part. */
final class NearPressure implements CautionRule {

  /** Share of the limit: our choice, no source. */
  private static final double NEAR = 0.9;

  @Override
  public Optional<Caution> of(Job job, Fit fit) {
    double peak = fit.outcome().peakPressure();
    double limit = fit.part().limits().pressure();
    return peak > NEAR * limit
        ? Optional.of(
            Caution.warning(
                "near-pressure", Figure.most(peak, Unit.BAR), Figure.of(limit, Unit.BAR)))
        : Optional.empty();
  }
}
