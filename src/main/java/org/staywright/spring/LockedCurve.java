package org.staywright.spring;

/**
 * What a locked spring holds beyond its open force, at evenly spaced deflections from none. SI; the
 * arrays are shared and only read.
 *
 * @param deflection inwards, m
 * @param slow N
 * @param fast N
 * @param stiffness slope of the slow force at the beginning, N/m
 */
public record LockedCurve(double[] deflection, double[] slow, double[] fast, double stiffness) {

  /**
   * @param locked spring
   * @param deflection the last, m; refused where stroke, gas or lock do not allow it
   * @param samples at least 2, both ends included
   */
  public static LockedCurve of(LockedSpring locked, double deflection, int samples) {
    locked.require(deflection);
    LockedCurve curve =
        new LockedCurve(
            new double[samples], new double[samples], new double[samples], locked.stiffness());
    for (int i = 0; i < samples; i++) {
      double here = deflection * i / (samples - 1);
      curve.deflection[i] = here;
      curve.slow[i] = locked.slow(here);
      curve.fast[i] = locked.fast(here);
    }
    return curve;
  }
}
