package org.staywright.job.order;

import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Requirements;
import org.staywright.mechanism.Mechanism;

/**
 * What a chosen part does in its job, where a hand moves the load.
 *
 * @param fit its figures
 * @param asked of it
 * @param kind of the job's mechanism, which tells the units
 * @param mechanism its code, which tells the words
 */
public record OrderedFit(Fit fit, Requirements asked, Mechanism.Movement kind, String mechanism) {

  /** Null where no hand moves the load, or the part is out altogether. */
  public static OrderedFit of(Job job, Fit fit) {
    return fit != null && fit.outcome() instanceof Figures
        ? new OrderedFit(
            fit, job.requirements(), job.mechanism().movement(), job.mechanism().code())
        : null;
  }
}
