package org.staywright.mechanism;

import java.util.Arrays;
import java.util.DoubleSummaryStatistics;

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

  /** Works out the extremes of the length. */
  static Travel of(
      double[] q,
      double[] length,
      double[] lever,
      double[] load,
      double[] heavy,
      double[] light,
      double hand,
      double friction) {
    DoubleSummaryStatistics lengths = Arrays.stream(length).summaryStatistics();
    return new Travel(
        q, length, lengths.getMin(), lengths.getMax(), lever, load, heavy, light, hand, friction);
  }

  public int last() {
    return q.length - 1;
  }
}
