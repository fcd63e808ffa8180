package org.staywright.fit;

import java.math.BigDecimal;
import java.util.List;
import org.staywright.unit.Unit;

/**
 * What a search for mounts strives for, as one number, the less the better: what is missed comes
 * before what is gained, and what is gained is measured by the job's {@link RankBy}.
 */
final class Aim {

  /** Anything that misses a requirement is worse than anything that does not. */
  static final double MISSED = 1e9;

  /** No part can be hung there at all. */
  static final double OUT = 1e12;

  /** A length that misses by this counts as much as a force that misses by all of its limit, m. */
  private static final double LENGTH = 10e-3;

  private static final double PER_MISS = 1e6;
  private static final double STEEP = 10;
  private static final double UNKNOWN_PRICE = 1e7;

  /** A day counts for more than any difference in price. */
  private static final double DAY = 1e4;

  private static final double AMPLE = 0.5;
  private static final double WEEK_DAYS = 7;

  private final Job job;
  private final Weights weights;

  Aim(Job job) {
    this.job = job;
    weights = job.weights();
  }

  /** What the place has a share in: the same part at another place may be better. */
  double place(double handRms, double margin) {
    double effort = Math.min(1, handRms / job.requirements().maxHandForce());
    return switch (job.rankBy()) {
      case LEAST_EFFORT -> handRms;
      case MOST_MARGIN -> -margin;
      case BALANCED ->
          100
              * (weights.effort() * effort
                  - weights.margin() * Math.min(1, Math.max(0, margin) / AMPLE));
      // Of equally dear ones the lightest to handle.
      case LOWEST_COST, SOONEST -> 1e-3 * effort;
    };
  }

  /** What the part brings along wherever it is hung. */
  double part(BigDecimal price, int days, double cheapest) {
    double cost = price == null ? UNKNOWN_PRICE : price.doubleValue();
    return switch (job.rankBy()) {
      case LEAST_EFFORT, MOST_MARGIN -> 0;
      case LOWEST_COST -> cost;
      case SOONEST -> days * UNKNOWN_PRICE + cost;
      case BALANCED ->
          -100
              * (weights.price() * Math.min(1, cheapest / Math.max(cost, 1e-9))
                  + weights.supply() / (1 + days / WEEK_DAYS));
    };
  }

  /** An assessed part at a place. */
  double of(Fit fit) {
    return fit.fits()
        ? place(fit.figures().handRms(), Requirement.margin(job, fit.figures())) + cost(fit)
        : missed(fit.blockedBy());
  }

  /** Load and swing at a place settle which end fittings do, and so what the set costs there. */
  double cost(Fit fit) {
    double price = fit.setPrice() == null ? UNKNOWN_PRICE : fit.setPrice().doubleValue();
    return switch (job.rankBy()) {
      case LOWEST_COST -> price;
      case SOONEST -> fit.leadTimeDays() * DAY + price;
      case LEAST_EFFORT, MOST_MARGIN, BALANCED -> 0;
    };
  }

  /**
   * The same for a search to follow: what is missed counts for much, not for everything, so that it
   * finds along the edge of what is allowed instead of sticking to it.
   */
  double sloping(Fit fit) {
    double miss = (missed(fit.blockedBy()) - MISSED) / PER_MISS;
    return place(fit.figures().handRms(), Requirement.margin(job, fit.figures()))
        + cost(fit)
        + STEEP * scale() * miss;
  }

  /** The size of what a place can gain. */
  private double scale() {
    return switch (job.rankBy()) {
      case LEAST_EFFORT -> job.requirements().maxHandForce();
      case MOST_MARGIN -> 1;
      case BALANCED -> 100;
      case LOWEST_COST -> 100;
      case SOONEST -> 10 * DAY;
    };
  }

  private static double missed(List<Blocker> blockers) {
    double sum = 0;
    for (Blocker blocker : blockers) {
      double off = Math.abs(blocker.needed() - blocker.has());
      boolean length = blocker.code().unit(null) == Unit.MILLIMETRE;
      double share = off / (length ? LENGTH : Math.max(1, Math.abs(blocker.needed())));
      // Where the spring does not stop it, the travel is another one and flatters all the rest.
      sum += blocker.code() == Blocker.Code.SPRING_STOP ? 1 : 0;
      // What cannot be put in figures is missed by as much as anything.
      sum += Double.isFinite(share) ? share : 1;
    }
    return MISSED + PER_MISS * sum;
  }

  /** The same from shares of what is asked, each zero where it is kept. */
  static double missed(double hand, double hold, double lengths, double shut, double behaviour) {
    return MISSED + PER_MISS * (hand + hold + lengths / LENGTH + shut + behaviour);
  }
}
