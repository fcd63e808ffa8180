package org.staywright.fit.mounts;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * Points spread evenly over the free coordinates of the zones, by their shares 0…1.
 *
 * <p>A Sobol sequence (I. M. Sobol' 1967, direction numbers of S. Joe and F. Y. Kuo 2008, as
 * Commons Math has them), turned by a random shift so that another seed gives other points.
 */
final class SobolPoints {

  private final double[][] unit;
  private final double[] low;
  private final double[] high;

  private SobolPoints(double[][] unit, double[] low, double[] high) {
    this.unit = unit;
    this.low = low;
    this.high = high;
  }

  static SobolPoints of(int dimension, int points, long seed) {
    double[] low = new double[dimension];
    double[] high = new double[dimension];
    Arrays.fill(high, 1);
    if (dimension == 0) {
      return new SobolPoints(new double[1][0], low, high);
    }
    SplittableRandom random = new SplittableRandom(seed);
    double[] shift = random.doubles(dimension).toArray();
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(dimension);
    double[][] unit = new double[points][];
    for (int i = 0; i < points; i++) {
      double[] point = sobol.nextVector();
      for (int d = 0; d < dimension; d++) {
        point[d] = (point[d] + shift[d]) % 1;
      }
      unit[i] = point;
    }
    return new SobolPoints(unit, low, high);
  }

  int size() {
    return unit.length;
  }

  double[] point(int index) {
    double[] point = unit[index].clone();
    for (int d = 0; d < point.length; d++) {
      point[d] = low[d] + point[d] * (high[d] - low[d]);
    }
    return point;
  }

  /** The box halved along each coordinate: which of the pieces a point lies in. */
  int region(int index) {
    int region = 0;
    for (int d = 0; d < low.length; d++) {
      region |= unit[index][d] < 0.5 ? 0 : 1 << d;
    }
    return region;
  }

  int regions() {
    return 1 << low.length;
  }

  /** How far apart neighbours are, as a share of the box. */
  double spacing() {
    return Math.pow(unit.length, -1.0 / Math.max(1, low.length));
  }

  /** The longest side of the box. */
  double width() {
    double width = 0;
    for (int d = 0; d < low.length; d++) {
      width = Math.max(width, high[d] - low[d]);
    }
    return width;
  }

  /** The same points in the smallest box around some of them, and a little beyond. */
  SobolPoints around(int[] chosen) {
    double[] least = high.clone();
    double[] most = low.clone();
    for (int index : chosen) {
      double[] point = point(index);
      for (int d = 0; d < point.length; d++) {
        least[d] = Math.min(least[d], point[d]);
        most[d] = Math.max(most[d], point[d]);
      }
    }
    for (int d = 0; d < least.length; d++) {
      double beyond = 0.1 * (most[d] - least[d]) + 0.05 * (high[d] - low[d]);
      least[d] = Math.max(low[d], least[d] - beyond);
      most[d] = Math.min(high[d], most[d] + beyond);
    }
    return new SobolPoints(unit, least, most);
  }
}
