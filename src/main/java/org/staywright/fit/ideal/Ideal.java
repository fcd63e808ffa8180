package org.staywright.fit.ideal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.Path;
import org.staywright.fit.assess.Paths;
import org.staywright.fit.job.Bare;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Outcome;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.Shortfall;
import org.staywright.fit.rank.Misses;
import org.staywright.fit.rank.Ranking;
import org.staywright.part.Coded;
import org.staywright.part.Range;

/**
 * The gas spring that would be made for a job at its mounts, beside the best that the range has.
 *
 * @param count of springs
 * @param balance the straight force line that balances the load best
 * @param made the spring that comes nearest, could be made, and is assessed as any part is; null
 *     where the mounts leave no room for one
 * @param shortfall the shortest spring for this stroke against the room there is, m; null where
 *     there is room
 * @param stock the lightest of the range at the hand that fits, else what misses least; null for
 *     none
 * @param bare the load without a spring
 * @param advice what to do
 */
public record Ideal(
    int count,
    Balance balance,
    @Nullable Fit made,
    @Nullable Shortfall shortfall,
    @Nullable Fit stock,
    Bare bare,
    Advice advice) {

  /** Which of them to take. */
  public enum Advice implements Coded {
    /** It does better than anything in the range. */
    MAKE,
    /** The range has what does as well. */
    TAKE_STOCK,
    /** The load needs no spring, and this one makes nothing lighter. */
    TAKE_NONE,
    /** The mounts leave no room for one. */
    NO_ROOM;

    static Advice of(Ranking ranking, @Nullable Fit made, @Nullable Fit stock) {
      if (made == null) {
        return NO_ROOM;
      }
      if (!ranking.springNeeded() && !made.fits()) {
        return TAKE_NONE;
      }
      return stock == null || better(made, stock) ? MAKE : TAKE_STOCK;
    }

    private static boolean better(Fit made, Fit stock) {
      int misses = Misses.of(made.blockedBy()).compareTo(Misses.of(stock.blockedBy()));
      double gain = stock.outcome().effort() - made.outcome().effort();
      return misses < 0 || misses == 0 && gain >= LEAST_GAIN;
    }
  }

  /** Less at the hand, on average, is no gain, N: it rounds to nothing; our choice, no source. */
  public static final double LEAST_GAIN = 0.5;

  /** As steep as the rows of the sample range get. */
  static final double STEEPEST = 1.65;

  /** Under a seat stands a column, which nothing here makes. */
  public static boolean askedOf(Job job) {
    return job.mechanism().handMoves();
  }

  public static Ideal of(Job job, Range range) {
    Job free = job.forSpringsToMake();
    List<CustomSpring> makings =
        job.counts().stream().map(count -> CustomSpring.of(free, range, count)).toList();
    Optional<CustomSpring> best =
        makings.stream()
            .filter(making -> making.fit() != null)
            .min(Comparator.comparingDouble(CustomSpring::value));
    CustomSpring shown = best.orElse(makings.get(0));
    Ranking ranking = Ranking.of(range, job.by(RankBy.LEAST_EFFORT));
    @Nullable Fit stock =
        ranking.fits().stream()
            .findFirst()
            .or(() -> ranking.near().stream().findFirst())
            .orElse(null);
    Path path = new Paths(free).of(shown.extended());
    return new Ideal(
        shown.count(),
        Balance.of(path, shown.count(), STEEPEST),
        shown.fit(),
        shown.shortfall(),
        stock,
        ranking.bare(),
        Advice.of(ranking, shown.fit(), stock));
  }

  /** What the stock part costs at the hand, root mean square, N; null without both. */
  public @Nullable Double costsRms() {
    return more(Outcome::effort);
  }

  /** The same of the larger force that is held against the limit. */
  public @Nullable Double costsMost() {
    return more(outcome -> Criterion.HAND_FORCE.has(bare, outcome));
  }

  private @Nullable Double more(ToDoubleFunction<Outcome> of) {
    return made == null || stock == null
        ? null
        : of.applyAsDouble(stock.outcome()) - of.applyAsDouble(made.outcome());
  }

  /** The spring to have made, null where that is not the advice. */
  public @Nullable Fit proposed() {
    return advice == Advice.MAKE ? made : null;
  }

  /** Whether the range has nothing that fits. */
  public boolean stockFails() {
    return stock == null || !stock.fits();
  }
}
