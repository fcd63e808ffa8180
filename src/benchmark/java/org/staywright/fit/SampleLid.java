package org.staywright.fit;

/** The lid that rankings are measured with. */
public final class SampleLid {

  private SampleLid() {}

  public static Job job() {
    return Samples.lid();
  }
}
