package org.staywright.mechanism;

import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * A mechanism sampled over its travel, at evenly spaced q. The arrays are shared and only read.
 *
 * @param q generalised coordinate, rad or m
 * @param length spring length L(q), mount centre to mount centre, m
 * @param shortest of these, m
 * @param longest of these, m
 * @param lever dL/dq, m/rad or 1
 * @param load generalised load Q(q) of the nominal mass, positive where it opens, N·m or N
 * @param heavy the same for the heaviest mass
 * @param light the same for the lightest mass
 * @param hand lever of the hand r, m or 1
 * @param friction generalised friction of the mechanism, N·m or N
 */
public record Travel(
    double[] q,
    double[] length,
    double shortest,
    double longest,
    double[] lever,
    double[] load,
    double[] heavy,
    double[] light,
    double hand,
    double friction) {

  /** Samples functions of q, evenly from one end to the other. */
  static Travel sampled(
      double from,
      double to,
      DoubleUnaryOperator length,
      DoubleUnaryOperator lever,
      DoubleUnaryOperator load,
      DoubleUnaryOperator heavy,
      DoubleUnaryOperator light,
      double hand,
      double friction) {
    double[] q =
        IntStream.range(0, Mechanism.SAMPLES)
            .mapToDouble(i -> from + (to - from) * i / (Mechanism.SAMPLES - 1))
            .toArray();
    double[] lengths = Arrays.stream(q).map(length).toArray();
    DoubleSummaryStatistics extremes = Arrays.stream(lengths).summaryStatistics();
    return new Travel(
        q,
        lengths,
        extremes.getMin(),
        extremes.getMax(),
        Arrays.stream(q).map(lever).toArray(),
        Arrays.stream(q).map(load).toArray(),
        Arrays.stream(q).map(heavy).toArray(),
        Arrays.stream(q).map(light).toArray(),
        hand,
        friction);
  }

  public int last() {
    return q.length - 1;
  }
}
