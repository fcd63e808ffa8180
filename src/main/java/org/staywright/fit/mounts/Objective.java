package org.staywright.fit.mounts;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Blocker;
import org.staywright.fit.assess.Criteria;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Outcome;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.Weights;
import org.staywright.fit.rank.Standing;

/**
 * What a search for mounts strives for, as one number, the less the better: what is missed comes
 * before what is gained, and what is gained is measured by the job's {@link RankBy}.
 */
public final class Objective {

  /** Anything that misses a requirement is worse than anything that does not. */
  public static final double MISSED = 1e9;

  /** No part can be hung there at all. */
  static final double OUT = 1e12;

  /** A length that misses by this counts as much as a force that misses by all of its limit, m. */
  static final double LENGTH = 10e-3;

  private static final double PER_MISS = 1e6;
  private static final double STEEP = 10;
  private static final double UNKNOWN_PRICE = 1e7;

  /** A day counts for more than any difference in price. */
  private static final double DAY = 1e4;

  private final Job job;
  private final Weights weights;
  private final double handLimit;
  private final Criteria criteria;

  public Objective(Job job, Criteria criteria) {
    this.job = job;
    this.criteria = criteria;
    weights = job.weights();
    handLimit = job.requirements().maxHandForce();
  }

  /** What the place has a share in: the same part at another place may be better. */
  double place(double handRms, double margin) {
    double effort = Math.min(1, handRms / handLimit);
    return switch (job.rankBy()) {
      case LEAST_EFFORT -> handRms;
      case MOST_MARGIN -> -margin;
      case BALANCED ->
          100 * (weights.effort() * effort - weights.margin() * Standing.margin(margin));
      // Of equally dear ones the lightest to handle.
      case LOWEST_COST, SOONEST -> 1e-3 * effort;
    };
  }

  private double place(Fit fit) {
    Outcome outcome = fit.outcome();
    double landing =
        job.rankBy() == RankBy.BALANCED
            ? 100 * weights.landing() * Standing.landing(outcome.endSpeed())
            : 0;
    return place(outcome.effort(), criteria.margin(outcome)) - landing;
  }

  /** What the part brings along wherever it is hung. */
  double part(int count, @Nullable BigDecimal price, int days, double cheapest) {
    double cost = price == null ? UNKNOWN_PRICE : price.doubleValue();
    return switch (job.rankBy()) {
      case LEAST_EFFORT, MOST_MARGIN -> 0;
      case LOWEST_COST -> cost;
      case SOONEST -> days * UNKNOWN_PRICE + cost;
      case BALANCED ->
          Standing.lost(job, count)
              - 100
                  * (weights.price() * Math.min(1, cheapest / Math.max(cost, 1e-9))
                      + weights.supply() / (1 + days / Standing.WEEK_DAYS));
    };
  }

  /** An assessed part at a place. */
  double of(Fit fit) {
    return fit.fits() ? place(fit) + cost(fit) : missed(fit.blockedBy());
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
  public double sloping(Fit fit) {
    double miss = (missed(fit.blockedBy()) - MISSED) / PER_MISS;
    return place(fit) + cost(fit) + STEEP * scale() * miss;
  }

  /** The size of what a place can gain. */
  private double scale() {
    return switch (job.rankBy()) {
      case LEAST_EFFORT -> handLimit;
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
      double share = blocker.criterion().lengthwise() ? off / LENGTH : share(off, blocker.needed());
      // Where the spring does not stop it, the travel is another one and flatters all the rest.
      sum += blocker.criterion() == Criterion.SPRING_STOP ? 1 : 0;
      // What cannot be put in figures is missed by as much as anything.
      sum += Double.isFinite(share) ? share : 1;
    }
    return MISSED + PER_MISS * sum;
  }

  /** What is missed as a share of what is asked; 0 where none is. */
  static double share(double off, double needed) {
    // Of a limit next to nothing no share tells how near a better place lies.
    return Math.max(0, off) / Math.max(1, Math.abs(needed));
  }

  /** The same of figures seen roughly, where lengths may miss by a gap besides, m. */
  double rough(Figures figures, double gap) {
    List<Blocker> missed = criteria.missed(figures);
    return missed.isEmpty() && gap == 0
        ? place(figures.hand().rms(), criteria.margin(figures))
        : missed(missed) + PER_MISS * gap / LENGTH;
  }

  /** What a candidate comes to at best that misses what is asked by so many shares of it. */
  static double missed(double shares) {
    return MISSED + PER_MISS * shares;
  }
}
