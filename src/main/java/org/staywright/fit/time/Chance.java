package org.staywright.fit.time;

import java.util.Arrays;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;

/**
 * What becomes of a fit when everything strays as it may, by random draws: shares of the draws, 0
 * to 1.
 *
 * @param draws made
 * @param holds stay up at the open end at the end of the service, friction left out
 * @param handWithinLimit open and close within the hand's limit all the way
 * @param staysShut keep shut by themselves
 * @param years until no longer holding, of each draw, in order; infinite where never
 * @param holdShares of the holding moment's variance, by what strays
 * @param handShares of the hand force's variance
 */
public record Chance(
    int draws,
    double holds,
    double handWithinLimit,
    double staysShut,
    double[] years,
    Map<Uncertainties.Source, Double> holdShares,
    Map<Uncertainties.Source, Double> handShares) {

  /** Fewest and most draws. */
  public static final int MOST_DRAWS = 100_000;

  /**
   * @param job it is for
   * @param fit of the job
   * @param spreads half-widths
   * @param draws 1…100,000
   * @param seed the same draws for the same seed
   */
  public static Chance of(Job job, Fit fit, Uncertainties spreads, int draws, long seed) {
    return new MonteCarlo(job, fit, spreads).draw(draws, seed);
  }

  /** The years after which this share of the draws no longer holds; infinite where never. */
  public double yearsUntil(double share) {
    return years[(int) Math.min(years.length - 1, Math.floor(share * years.length))];
  }

  /** Standard error of a share, by its binomial distribution. */
  public double error(double share) {
    return Math.sqrt(share * (1 - share) / draws);
  }

  /** What matters most to holding, null where nothing strays. */
  public Uncertainties.@Nullable Source mattersMost() {
    return Arrays.stream(Uncertainties.Source.values())
        .filter(source -> share(source) > 0)
        .max((a, b) -> Double.compare(share(a), share(b)))
        .orElse(null);
  }

  private double share(Uncertainties.Source source) {
    return holdShares.getOrDefault(source, 0.0);
  }
}
