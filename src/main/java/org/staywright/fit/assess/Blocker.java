package org.staywright.fit.assess;

import org.staywright.fit.job.Criterion;
import org.staywright.mechanism.Mechanism;
import org.staywright.unit.Unit;

/**
 * A requirement that a near part misses. SI.
 *
 * @param criterion that is missed
 * @param needed by the job
 * @param has of the part, NaN where it never does
 * @param miss by how much, as a share of what is needed; infinite where it never does
 */
public record Blocker(Criterion criterion, double needed, double has, double miss) {

  /** Unit at the boundary, null for a plain ratio. */
  public Unit unit(Mechanism mechanism) {
    return criterion.unit(mechanism.movement());
  }
}
