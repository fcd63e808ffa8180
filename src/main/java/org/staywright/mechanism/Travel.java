package org.staywright.mechanism;

/**
 * A mechanism sampled over its travel, at evenly spaced q. The arrays are shared and only read.
 *
 * @param q generalised coordinate, rad or m
 * @param length spring length L(q), mount centre to mount centre, m
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
    double[] lever,
    double[] load,
    double[] heavy,
    double[] light,
    double hand,
    double friction) {

  public int last() {
    return q.length - 1;
  }

  public double shortest() {
    double least = length[0];
    for (double value : length) {
      least = Math.min(least, value);
    }
    return least;
  }

  public double longest() {
    double most = length[0];
    for (double value : length) {
      most = Math.max(most, value);
    }
    return most;
  }
}
