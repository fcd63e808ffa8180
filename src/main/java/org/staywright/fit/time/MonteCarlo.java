package org.staywright.fit.time;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.Paths;
import org.staywright.fit.job.Beside;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.time.Uncertainties.Source;
import org.staywright.mechanism.Travel;
import org.staywright.part.Part;

/**
 * Draws specimens of a fit and judges each over the whole travel.
 *
 * <p>Monte Carlo with the generator of F. Panneton, P. L'Ecuyer, M. Matsumoto, ACM Trans. Math.
 * Software 32 (2006) 1. Shares of the variance are squared correlations: what would be left is
 * curvature and chance.
 */
final class MonteCarlo {

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

  /** What acts along strays in force by itself, in all else with the springs. */
  private record Companion(Beside beside, Specimen specimen, double[] length, double[] lever) {

    static Companion of(Job job, Beside beside, Travel travel) {
      Travel own = travel.on(beside.mechanism());
      Specimen specimen = new Specimen(job, beside.part(), beside.extended(), own);
      return new Companion(beside, specimen, own.length(), own.lever());
    }

    double sigma() {
      Part part = beside.part();
      return part.forceTolerance() / Math.max(1, part.spring().force()) / 2;
    }

    double push(int sample) {
      return beside.count() * specimen.force(length[sample]) * lever[sample];
    }

    double friction(int sample, double kelvin) {
      return beside.count() * beside.part().spring().friction(kelvin) * Math.abs(lever[sample]);
    }
  }

  /** No factor gets smaller than this, however wide the spread. */
  private static final double LEAST = 0.01;

  private final Job job;
  private final Fit fit;
  private final double[] sigma;
  private final Specimen specimen;
  private final StrayedGeometry placing;
  private final List<Companion> companions;
  private final double[] deviate;

  MonteCarlo(Job job, Fit fit, Uncertainties spreads) {
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
    double extended = fit.outcome().extended();
    Travel travel = new Paths(job).of(extended).travel();
    placing = StrayedGeometry.of(job.mechanism(), travel);
    specimen = new Specimen(job, fit.part(), extended, travel);
    companions = job.beside().stream().map(beside -> Companion.of(job, beside, travel)).toList();
    sigma = Arrays.copyOf(wide, DEVIATES + companions.size());
    for (int k = 0; k < DEVIATES; k++) {
      sigma[k] /= 2;
    }
    for (int k = 0; k < companions.size(); k++) {
      sigma[DEVIATES + k] = companions.get(k).sigma();
    }
    deviate = new double[sigma.length];
  }

  Chance draw(int draws, long seed) {
    RandomGenerator random = new Well19937c(seed);
    Correlation hold = new Correlation(deviate.length);
    Correlation hand = new Correlation(deviate.length);
    double[] years = new double[draws];
    int holds = 0;
    int within = 0;
    int shut = 0;
    Requirements asked = job.requirements();
    for (int i = 0; i < draws; i++) {
      for (int k = 0; k < deviate.length; k++) {
        deviate[k] = random.nextGaussian();
      }
      Drawn drawn = one();
      holds += drawn.open >= 0 ? 1 : 0;
      boolean light =
          drawn.opening <= asked.handOpenLimit() && drawn.closing <= asked.handCloseLimit();
      within += light ? 1 : 0;
      shut += drawn.closed < 0 ? 1 : 0;
      // What loses no gas and does not hold never did.
      years[i] = drawn.open < 0 && Double.isInfinite(drawn.years) ? 0 : drawn.years;
      hold.add(deviate, drawn.open);
      hand.add(deviate, Math.max(drawn.opening, drawn.closing));
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
   * @param opening largest force of the hand, N
   * @param closing largest force of the hand, N
   * @param years until it no longer holds
   */
  private record Drawn(double open, double closed, double opening, double closing, double years) {}

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
    for (int k = 0; k < companions.size(); k++) {
      double factor = Math.max(LEAST, 1 + stray(DEVIATES + k));
      companions.get(k).specimen().take(factor, kelvin, age);
    }
    int n = fit.count();
    int last = placing.last();
    double opening = Double.NEGATIVE_INFINITY;
    double closing = Double.NEGATIVE_INFINITY;
    double open = 0;
    double closed = 0;
    double besides = 0;
    for (int i = 0; i <= last; i++) {
      double lever = placing.lever(i);
      double rub = n * friction * Math.abs(lever) + placing.friction();
      besides = placing.load(i);
      for (Companion companion : companions) {
        besides += companion.push(i);
        rub += companion.friction(i, kelvin);
      }
      double balance = n * specimen.force(placing.length(i)) * lever + besides;
      opening = Math.max(opening, rub - balance);
      closing = Math.max(closing, rub + balance);
      open = balance;
      closed = i == 0 ? balance : closed;
    }
    // What acts along is taken as it is: the springs alone must make up for the rest.
    double years =
        specimen.yearsUntil(
            besides < 0 && placing.lever(last) != 0
                ? -besides / (n * placing.lever(last))
                : Double.NaN,
            placing.length(last));
    double reach = placing.hand();
    return new Drawn(open, closed, opening / reach, closing / reach, years);
  }

  private double stray(int deviate) {
    return sigma[deviate] * this.deviate[deviate];
  }

  private Map<Source, Double> shares(Correlation correlation) {
    Map<Source, Double> shares = new EnumMap<>(Source.class);
    for (int k = 0; k < deviate.length; k++) {
      shares.merge(
          k < DEVIATES ? SOURCE[k] : Source.FORCE,
          sigma[k] == 0 ? 0 : correlation.squared(k),
          Double::sum);
    }
    return shares;
  }
}
