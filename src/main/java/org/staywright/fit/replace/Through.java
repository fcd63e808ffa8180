package org.staywright.fit.replace;

import java.util.Map;
import org.staywright.part.Range;

/** The readings that the end fittings are part of: between the centres, free or in place. */
final class Through {

  /** Stroke that a flap leaves to spare at either end, on average: our assumption, m. */
  static final double SPARE = 0.015;

  private final Gauge[] gauges;
  private final Reading[] readings;
  private final double[][] columns;

  Through(Range range, Measurements old) {
    var through =
        old.sizes().entrySet().stream()
            .filter(size -> size.getKey().basis() != Gauge.Basis.BARE)
            .sorted(Map.Entry.comparingByKey())
            .toList();
    gauges = through.stream().map(Map.Entry::getKey).toArray(Gauge[]::new);
    readings = through.stream().map(Map.Entry::getValue).toArray(Reading[]::new);
    columns =
        through.stream().map(size -> range.column(size.getKey().column())).toArray(double[][]::new);
  }

  /** Logarithm of the mean over all pairs that a part may carry. */
  double log(int row, Ends.Options options) {
    double[] each = new double[options.reaches().length];
    for (int i = 0; i < each.length; i++) {
      each[i] = options.logs()[i] + log(row, options.reaches()[i]);
    }
    return Normal.logSum(each);
  }

  /** Logarithm of the likelihood of the readings with fittings that add so much, m. */
  double log(int row, double reach) {
    double log = 0;
    for (int i = 0; i < gauges.length; i++) {
      double total = columns[i][row] + reach;
      log +=
          gauges[i].basis() == Gauge.Basis.CENTRES
              ? readings[i].logDensity(total)
              : inPlace(gauges[i], readings[i], total);
    }
    return log;
  }

  /**
   * A spare stroke that falls off exponentially with a normal error on top of it: the density of
   * their sum (E. Grushka, Anal. Chem. 44 (1972) 1733, from memory).
   */
  private static double inPlace(Gauge gauge, Reading reading, double total) {
    boolean closed = gauge == Gauge.CENTRES_CLOSED;
    double spare = closed ? reading.value() - total : total - reading.value();
    double sigma = reading.sigma();
    double ratio = sigma / SPARE;
    return -Math.log(SPARE)
        + ratio * ratio / 2
        - spare / SPARE
        + Normal.logDistribution(spare / sigma - ratio);
  }
}
