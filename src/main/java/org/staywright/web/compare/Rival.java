package org.staywright.web.compare;

import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Score;
import org.staywright.wording.Wording;

/**
 * A fit among others that it is compared with.
 *
 * @param letter it is called by
 * @param job it is for
 * @param fit as assessed
 * @param score among all that the range has for its job, null for a saved choice
 * @param saved number of the saved job that it was chosen for, "" for none
 */
record Rival(String letter, Job job, Fit fit, Score score, String saved) {

  Rival scored(Score among) {
    return new Rival(letter, job, fit, among, saved);
  }

  /** In the words of its mechanism. */
  Wording wording(Wording plain) {
    return plain.about(job.mechanism().code());
  }
}
