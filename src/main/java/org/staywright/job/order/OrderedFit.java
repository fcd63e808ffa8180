package org.staywright.job.order;

import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Requirements;
import org.staywright.mechanism.Mechanism;

/**
 * What a chosen part does in its job, where a hand moves the load.
 *
 * @param fit of it
 * @param figures of that
 * @param asked of it
 * @param kind of the job's mechanism, which tells the units
 * @param mechanism its code, which tells the words
 */
public record OrderedFit(
    Fit fit, Figures figures, Requirements asked, Mechanism.Movement kind, String mechanism) {

  /** Null where no hand moves the load, or the part is out altogether. */
  public static OrderedFit of(Job job, Fit fit) {
    if (fit == null) {
      return null;
    }
    Mechanism moved = job.mechanism();
    return fit.outcome()
        .as(
            figures ->
                new OrderedFit(fit, figures, job.requirements(), moved.movement(), moved.code()),
            seat -> null);
  }
}
