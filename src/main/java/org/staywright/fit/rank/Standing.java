package org.staywright.fit.rank;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.job.Job;

/** The five orders of the ranking, the order of what is near, and the balanced score. */
public final class Standing {

  /** A margin that is as good as any larger one. */
  static final double AMPLE = 0.5;

  public static final double WEEK_DAYS = 7;

  /** Arriving at this speed or faster is no landing, m/s. */
  private static final double SLAM = 1;

  /** Points lost by one spring at one side of a flap, which it twists. */
  static final double ONE_SIDED = 10;

  private final Job job;
  private final double effortLimit;
  private final double cheapest;

  /**
   * @param fits whose cheapest sets the measure of price
   * @param near which stand in where nothing fits
   */
  public Standing(Job job, List<Candidate> fits, List<Candidate> near) {
    this.job = job;
    effortLimit = job.effortLimit();
    cheapest =
        (fits.isEmpty() ? near : fits)
            .stream()
                .map(Candidate::setPrice)
                .filter(price -> price != null)
                .mapToDouble(BigDecimal::doubleValue)
                .min()
                .orElse(0);
  }

  public double score(Candidate candidate) {
    return terms(candidate).total(job.weights());
  }

  Score terms(Candidate candidate) {
    double price =
        candidate.setPrice() == null || candidate.setPrice().signum() == 0
            ? 0
            : Math.min(1, cheapest / candidate.setPrice().doubleValue());
    return new Score(
        1 - Math.min(1, candidate.handRms() / effortLimit),
        margin(candidate.margin()),
        landing(candidate.endSpeed().get()),
        price,
        1 / (1 + candidate.days() / WEEK_DAYS),
        lost(job, candidate.count()));
  }

  public static double margin(double least) {
    return Math.min(1, Math.max(0, least) / AMPLE);
  }

  /**
   * @param speed at the open stop, null where nothing damps
   */
  public static double landing(@Nullable Double speed) {
    return speed == null ? 0 : 1 - Math.min(1, speed / SLAM);
  }

  public static double lost(Job job, int count) {
    return count == 1 && job.mechanism().twistsOnOne() ? ONE_SIDED : 0;
  }

  /** Best first; what is near by what it misses; ties by part number, then count. */
  public Comparator<Candidate> order() {
    Comparator<Candidate> cost =
        Comparator.comparing(Candidate::setPrice, Comparator.nullsLast(Comparator.naturalOrder()));
    Comparator<Candidate> score = Comparator.comparingDouble(this::score).reversed();
    Comparator<Candidate> best =
        switch (job.rankBy()) {
          case LEAST_EFFORT -> Comparator.comparingDouble(Candidate::handRms);
          case LOWEST_COST -> cost;
          case SOONEST -> Comparator.comparingInt(Candidate::days).thenComparing(cost);
          case MOST_MARGIN -> Comparator.comparingDouble(Candidate::margin).reversed();
          case BALANCED -> score;
        };
    return Comparator.comparing(Candidate::misses)
        .thenComparing((one, other) -> (one.fits() ? best : score).compare(one, other))
        .thenComparingInt(Candidate::row)
        .thenComparingInt(Candidate::count);
  }
}
