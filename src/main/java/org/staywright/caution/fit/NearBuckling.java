package org.staywright.caution.fit;

import static org.staywright.fit.assess.Assessment.LEAST_BUCKLING_FACTOR;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;

/** The rod is not far from the load at which it would buckle: it must be loaded straight. */
final class NearBuckling implements CautionRule {

  /** Times the least factor: our choice, no source. */
  private static final double NEAR = 1.25;

  @Override
  public Optional<Caution> of(Job job, Fit fit) {
    double factor = fit.outcome().bucklingFactor();
    return factor < NEAR * LEAST_BUCKLING_FACTOR
        ? Optional.of(
            Caution.warning(
                "near-buckling",
                Figure.least(factor, null, 1),
                new Figure(LEAST_BUCKLING_FACTOR, null, 0)))
        : Optional.empty();
  }
}
