package org.staywright.fit;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;

/** The five orders of the ranking, and the score of the balanced one. */
final class Standing {

  /** A margin that is as good as any larger one. */
  private static final double AMPLE = 0.5;

  private static final double WEEK_DAYS = 7;

  private final Job job;
  private final double cheapest;

  /**
   * @param fits whose cheapest sets the measure of price
   * @param near which stand in where nothing fits
   */
  Standing(Job job, List<Candidate> fits, List<Candidate> near) {
    this.job = job;
    cheapest =
        (fits.isEmpty() ? near : fits)
            .stream()
                .map(Candidate::setPrice)
                .filter(price -> price != null)
                .mapToDouble(BigDecimal::doubleValue)
                .min()
                .orElse(0);
  }

  double score(Candidate candidate) {
    return terms(candidate).total(job.weights());
  }

  Score terms(Candidate candidate) {
    double effort = 1 - Math.min(1, candidate.handRms() / job.effortLimit());
    double margin = Math.min(1, Math.max(0, candidate.margin()) / AMPLE);
    double price =
        candidate.setPrice() == null || candidate.setPrice().signum() == 0
            ? 0
            : Math.min(1, cheapest / candidate.setPrice().doubleValue());
    double supply = 1 / (1 + candidate.days() / WEEK_DAYS);
    return new Score(effort, margin, price, supply);
  }

  /** Best first; ties by part number, then count. */
  Comparator<Candidate> order() {
    Comparator<Candidate> cost =
        Comparator.comparing(Candidate::setPrice, Comparator.nullsLast(Comparator.naturalOrder()));
    Comparator<Candidate> best =
        switch (job.rankBy()) {
          case LEAST_EFFORT -> Comparator.comparingDouble(Candidate::handRms);
          case LOWEST_COST -> cost;
          case SOONEST -> Comparator.comparingInt(Candidate::days).thenComparing(cost);
          case MOST_MARGIN -> Comparator.comparingDouble(Candidate::margin).reversed();
          case BALANCED -> Comparator.comparingDouble(this::score).reversed();
        };
    return best.thenComparingInt(Candidate::row).thenComparingInt(Candidate::count);
  }
}
