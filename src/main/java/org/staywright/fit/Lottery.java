package org.staywright.fit;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.staywright.fit.Spreads.Source;
import org.staywright.mechanism.Travel;

/**
 * Draws specimens of a fit and judges each over the whole travel.
 *
 * <p>Monte Carlo with the generator of F. Panneton, P. L'Ecuyer, M. Matsumoto, ACM Trans. Math.
 * Software 32 (2006) 1. Shares of the variance are squared correlations: what would be left is
 * curvature and chance.
 */
final class Lottery {

  /** Normal deviates of a draw: force, friction, mass, centre x, y, four of mounts, K, years. */
  private static final int DEVIATES = 11;

  private static final Source[] SOURCE = {
    Source.FORCE,
    Source.FRICTION,
    Source.MASS,
    Source.CENTRE_OF_MASS,
    Source.CENTRE_OF_MASS,
    Source.MOUNTS,
    Source.MOUNTS,
    Source.MOUNTS,
    Source.MOUNTS,
    Source.TEMPERATURE,
    Source.AGE
  };

  /** No factor gets smaller than this, however wide the spread. */
  private static final double LEAST = 0.01;

  private final Job job;
  private final Fit fit;
  private final double[] sigma;
  private final Specimen specimen;
  private final Placing placing;
  private final double[] deviate = new double[DEVIATES];

  Lottery(Job job, Fit fit, Spreads spreads) {
    this.job = job;
    this.fit = fit;
    double[] wide = {
      spreads.force() / Math.max(1, fit.part().spring().force()),
      spreads.friction(),
      spreads.mass(),
      spreads.centre(),
      spreads.centre(),
      spreads.mounts(),
      spreads.mounts(),
      spreads.mounts(),
      spreads.mounts(),
      spreads.temperature(),
      spreads.age()
    };
    sigma = Arrays.stream(wide).map(half -> half / 2).toArray();
    double extended = InTime.extended(job, fit);
    Travel travel = new Paths(job).of(extended).travel();
    placing = Placing.of(job.mechanism(), travel);
    specimen = new Specimen(job, fit.part(), extended, travel);
  }

  Chance draw(int draws, long seed) {
    RandomGenerator random = new Well19937c(seed);
    Correlation hold = new Correlation(DEVIATES);
    Correlation hand = new Correlation(DEVIATES);
    double[] years = new double[draws];
    int holds = 0;
    int within = 0;
    int shut = 0;
    double limit = job.requirements().maxHandForce();
    for (int i = 0; i < draws; i++) {
      for (int k = 0; k < DEVIATES; k++) {
        deviate[k] = random.nextGaussian();
      }
      Drawn drawn = one();
      holds += drawn.open >= 0 ? 1 : 0;
      within += drawn.hand <= limit ? 1 : 0;
      shut += drawn.closed < 0 ? 1 : 0;
      // What loses no gas and does not hold never did.
      years[i] = drawn.open < 0 && Double.isInfinite(drawn.years) ? 0 : drawn.years;
      hold.add(deviate, drawn.open);
      hand.add(deviate, drawn.hand);
    }
    Arrays.sort(years);
    return new Chance(
        draws,
        (double) holds / draws,
        (double) within / draws,
        (double) shut / draws,
        years,
        shares(hold),
        shares(hand));
  }

  /**
   * @param open moment of springs and gravity at the open end, positive where it stays up
   * @param closed the same closed, below zero where it stays shut
   * @param hand largest force of the hand either way, N
   * @param years until it no longer holds
   */
  private record Drawn(double open, double closed, double hand, double years) {}

  private Drawn one() {
    Job.Conditions conditions = job.conditions();
    double kelvin =
        Math.max(
            conditions.coldest(), Math.min(conditions.hottest(), conditions.nominal() + stray(9)));
    double age = Math.max(0, conditions.years() + stray(10));
    specimen.take(Math.max(LEAST, 1 + stray(0)), kelvin, age);
    double friction = Math.max(0, 1 + stray(1)) * fit.part().spring().friction(kelvin);
    placing.place(
        Math.max(LEAST, 1 + stray(2)), stray(3), stray(4), stray(5), stray(6), stray(7), stray(8));
    int n = fit.count();
    int last = placing.last();
    double most = Double.NEGATIVE_INFINITY;
    double open = 0;
    double closed = 0;
    for (int i = 0; i <= last; i++) {
      double lever = placing.lever(i);
      double balance = n * specimen.force(placing.length(i)) * lever + placing.load(i);
      double rub = n * friction * Math.abs(lever) + placing.friction();
      most = Math.max(most, rub + Math.abs(balance));
      open = balance;
      closed = i == 0 ? balance : closed;
    }
    double years =
        specimen.yearsUntil(
            placing.load(last) < 0 && placing.lever(last) != 0
                ? -placing.load(last) / (n * placing.lever(last))
                : Double.NaN,
            placing.length(last));
    return new Drawn(open, closed, most / placing.hand(), years);
  }

  private double stray(int deviate) {
    return sigma[deviate] * this.deviate[deviate];
  }

  private Map<Source, Double> shares(Correlation correlation) {
    Map<Source, Double> shares = new EnumMap<>(Source.class);
    for (int k = 0; k < DEVIATES; k++) {
      shares.merge(SOURCE[k], sigma[k] == 0 ? 0 : correlation.squared(k), Double::sum);
    }
    return shares;
  }
}
