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

  /** The same travel with the spring hung elsewhere: the load asks nothing of the mounts. */
  public Travel on(Rigid mechanism) {
    double[] lengths = new double[q.length];
    double[] levers = new double[q.length];
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int i = 0; i < q.length; i++) {
      lengths[i] = mechanism.length(q[i]);
      levers[i] = mechanism.lever(q[i]);
      least = Math.min(least, lengths[i]);
      most = Math.max(most, lengths[i]);
    }
    return new Travel(q, lengths, least, most, levers, load, heavy, light, hand, friction);
  }

  /**
   * The same travel with something more on it.
   *
   * @param push at every sample, positive where it opens, N·m or N
   * @param rubbing friction, N·m or N
   */
  public Travel with(double[] push, double rubbing) {
    return new Travel(
        q,
        length,
        shortest,
        longest,
        lever,
        sum(load, push),
        sum(heavy, push),
        sum(light, push),
        hand,
        friction + rubbing);
  }

  private static double[] sum(double[] one, double[] other) {
    return IntStream.range(0, one.length).mapToDouble(i -> one[i] + other[i]).toArray();
  }

  /** The first of every so many samples: a coarser view, whose ends are the same if they divide. */
  public Travel every(int step) {
    return at(IntStream.rangeClosed(0, last() / step).map(i -> i * step).toArray());
  }

  /** Only some of the samples. */
  public Travel at(int... samples) {
    double[] lengths = at(samples, length);
    DoubleSummaryStatistics extremes = Arrays.stream(lengths).summaryStatistics();
    return new Travel(
        at(samples, q),
        lengths,
        extremes.getMin(),
        extremes.getMax(),
        at(samples, lever),
        at(samples, load),
        at(samples, heavy),
        at(samples, light),
        hand,
        friction);
  }

  private static double[] at(int[] samples, double[] all) {
    return Arrays.stream(samples).mapToDouble(i -> all[i]).toArray();
  }

  public int last() {
    return q.length - 1;
  }
}
