package org.staywright.fit.assess;

import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Criterion;

/**
 * What is asked beside what a part has. SI.
 *
 * @param criterion asked by
 * @param needed by the job
 * @param has of the part; NaN where it never does, infinite where nothing speaks against it
 * @param corner in which it comes to that, null where it is nominal or the same in all
 */
public record Kept(Criterion criterion, double needed, double has, Corner corner) {

  public boolean met() {
    return criterion.met(needed, has);
  }
}
