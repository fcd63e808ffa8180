package org.staywright.spring;

import java.util.function.DoubleUnaryOperator;

/**
 * Forces of a spring at evenly spaced compressions from full extension to the stroke. SI; the
 * arrays are shared and only read.
 *
 * @param compression from full extension, m
 * @param gas slow, of gas or coil, without friction, N
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
   * @param law of one specimen
   * @param kelvin temperature of gas, oil and friction
   * @param samples at least 2, both ends included
   */
  public static ForceCurve of(ForceLaw law, double kelvin, int samples) {
    double stroke = law.spring().stroke();
    double friction = law.spring().friction(kelvin);
    DoubleUnaryOperator slow = law.slow(kelvin);
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
      curve.pressure[i] = law.pressure(x, kelvin);
      curve.gas[i] = slow.applyAsDouble(x);
      curve.extending[i] = curve.gas[i] - friction;
      curve.compressing[i] = curve.gas[i] + friction;
      curve.fastCompressing[i] = law.fast(0, x, kelvin).force(x) + friction;
    }
    return curve;
  }
}
