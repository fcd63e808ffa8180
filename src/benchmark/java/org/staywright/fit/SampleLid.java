package org.staywright.fit;

import org.staywright.fit.job.Job;

/** The lid that rankings are measured with. */
public final class SampleLid {

  private SampleLid() {}

  public static Job job() {
    return Samples.lid();
  }
}
