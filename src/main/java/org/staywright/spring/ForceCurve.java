package org.staywright.spring;

/**
 * Forces of a gas spring at evenly spaced compressions from full extension to the stroke. SI; the
 * arrays are shared and only read.
 *
 * @param compression from full extension, m
 * @param gas slow, without friction, N
 * @param extending slow, N
 * @param compressing slow, N
 * @param fastCompressing fast from full extension, with friction, N
 * @param pressure absolute, slow, Pa
 */
public record ForceCurve(
    double[] compression,
    double[] gas,
    double[] extending,
    double[] compressing,
    double[] fastCompressing,
    double[] pressure) {

  /**
   * @param charged spring with its gas
   * @param kelvin temperature of gas, oil and friction
   * @param samples at least 2, both ends included
   */
  public static ForceCurve of(ChargedSpring charged, double kelvin, int samples) {
    double stroke = charged.spring().stroke();
    double friction = charged.spring().friction(kelvin);
    ForceCurve curve =
        new ForceCurve(
            new double[samples],
            new double[samples],
            new double[samples],
            new double[samples],
            new double[samples],
            new double[samples]);
    for (int i = 0; i < samples; i++) {
      double x = stroke * i / (samples - 1);
      curve.compression[i] = x;
      curve.pressure[i] = charged.pressure(x, kelvin);
      curve.gas[i] = charged.push(curve.pressure[i]);
      curve.extending[i] = curve.gas[i] - friction;
      curve.compressing[i] = curve.gas[i] + friction;
      curve.fastCompressing[i] = charged.fast(0, x, kelvin).force(x) + friction;
    }
    return curve;
  }
}
