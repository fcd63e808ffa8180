package org.staywright.web;

import org.staywright.job.Ordering;
import org.staywright.job.SavedJob;
import org.staywright.wording.Wording;

/**
 * A saved job.
 *
 * @param row the same in short
 * @param version as seen, named by whatever changes it
 * @param order what to order, null where nothing is chosen
 */
public record JobView(JobsView.Row row, int version, OrderView order) {

  static JobView of(SavedJob job, Ordering ordering, Wording wording) {
    return new JobView(
        JobsView.Row.of(job, wording),
        job.version,
        job.choice == null ? null : OrderView.of(ordering.chosen(job), ordering, wording));
  }
}
