package org.staywright.web;

import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.wording.Wording;

/**
 * A fit among others that it is compared with.
 *
 * @param letter it is called by
 * @param job it is for
 * @param fit as assessed
 * @param saved number of the saved job that it was chosen for, "" for none
 */
record Rival(String letter, Job job, Fit fit, String saved) {
  /** In the words of its mechanism. */
  Wording wording(Wording plain) {
    return plain.about(job.mechanism().code());
  }
}
