package org.staywright.fit.replace;

import org.staywright.part.Column;
import org.staywright.part.Part;
import org.staywright.part.Range;

/**
 * How likely all that was measured is, were the old spring a given part of the range: logarithms by
 * row. What was not measured adds nothing.
 *
 * <p>Readings scatter normally about the truth, each by itself. Where end fittings are part of a
 * reading and several would go on the threads, the mean over all pairs counts, each pair as likely
 * as the other. Words (finish, thread, damping, kind of end) are taken to be right but for a small
 * share of mistakes. All of it our assumption, no source.
 */
final class Likelihoods {

  /** Mistakes in what was seen rather than measured. */
  private static final double FINISH_MISTAKEN = 0.02;

  private static final double DAMPING_MISTAKEN = 0.05;
  private static final double THREAD_MISTAKEN = 0.01;
  private static final double END_CHANGED = 0.01;
  private static final double FAMILY_MISTAKEN = 1e-6;

  /** Far below anything that a reading makes: what cannot be at all. */
  private static final double NEVER = -1e6;

  /** Rows so far behind the best are out whatever a scale says. */
  private static final double BEHIND = 40;

  private final Range range;
  private final Measurements old;
  private final Ends ends;
  private final double[] logs;

  private Likelihoods(Range range, Measurements old, Ends ends) {
    this.range = range;
    this.old = old;
    this.ends = ends;
    this.logs = new double[range.size()];
  }

  /** One logarithm a row, in the order of the range. */
  static double[] of(Range range, Measurements old, Ends ends) {
    Likelihoods all = new Likelihoods(range, old, ends);
    all.sizes();
    all.words();
    if (old.rodEnd() != null || old.tubeEnd() != null || old.throughFittings()) {
      all.fittings();
    }
    if (old.scale() != null) {
      all.scale(old.scale());
    }
    return all.logs;
  }

  private void sizes() {
    old.sizes()
        .forEach(
            (gauge, reading) -> {
              if (gauge.basis() == Gauge.Basis.BARE) {
                add(range.column(gauge.column()), reading);
              }
            });
  }

  private void add(double[] actual, Reading reading) {
    for (int row = 0; row < logs.length; row++) {
      double log = reading.logDensity(actual[row]);
      logs[row] += Double.isNaN(log) ? NEVER : log;
    }
  }

  private void words() {
    double[] damped = range.column(Column.END_ZONE);
    for (int row = 0; row < logs.length; row++) {
      if (old.finish() != null) {
        logs[row] += seen(old.finish() == range.finish(row), FINISH_MISTAKEN);
      }
      if (old.endDamped() != null) {
        logs[row] += seen(old.endDamped() == damped[row] > 0, DAMPING_MISTAKEN);
      }
      if (old.rodThread() != null) {
        logs[row] += seen(old.rodThread().equals(range.ends(row).rod()), THREAD_MISTAKEN);
      }
      if (old.family() != null) {
        logs[row] += seen(old.family() == range.family(row), FAMILY_MISTAKEN);
      }
    }
  }

  private static double seen(boolean agrees, double mistaken) {
    return Math.log(agrees ? 1 - mistaken : mistaken);
  }

  private void fittings() {
    boolean through = old.throughFittings();
    Through readings = new Through(range, old);
    for (int row = 0; row < logs.length; row++) {
      Ends.Options options = ends.of(row);
      logs[row] += seen(options.asWished(), END_CHANGED);
      if (through && options.pairs().isEmpty()) {
        logs[row] += NEVER;
      } else if (through) {
        logs[row] += readings.log(row, options);
      }
    }
  }

  private void scale(ScaleReading scale) {
    double best = Double.NEGATIVE_INFINITY;
    for (double log : logs) {
      best = Math.max(best, log);
    }
    for (int row = 0; row < logs.length; row++) {
      logs[row] += logs[row] < best - BEHIND ? -BEHIND : scale(scale, range.part(row));
    }
  }

  /**
   * An old spring has lost some gas or none, any share being as likely as another: the reading is
   * spread evenly up to what the part shows when new, with a normal error on top of it.
   */
  private static double scale(ScaleReading scale, Part part) {
    if (!scale.within(part.spring())) {
      return NEVER;
    }
    double full = Math.max(1, scale.of(part.spring().law()));
    double sigma = Math.hypot(scale.force().sigma(), part.forceTolerance() / 2);
    double reading = scale.force().value();
    double below = Math.exp(Normal.logDistribution((full - reading) / sigma));
    double above = Math.exp(Normal.logDistribution(-reading / sigma));
    return Math.log(Math.max(Double.MIN_NORMAL, below - above) / full);
  }
}
