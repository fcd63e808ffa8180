package org.staywright.fit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.staywright.mechanism.SeatColumn;
import org.staywright.mechanism.Travel;
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
 * @param stock the best of the range: what fits first, else what misses least; null for none
 */
public record Ideal(int count, Balance balance, Fit made, Shortfall shortfall, Fit stock) {

  /** As steep as the rows of the sample range get. */
  static final double STEEPEST = 1.65;

  /** Under a seat stands a column, which nothing here makes. */
  public static boolean askedOf(Job job) {
    return !(job.mechanism() instanceof SeatColumn);
  }

  public static Ideal of(Job job, Range range) {
    Job free = job.forSpringsToMake();
    List<Making> makings =
        job.counts().stream().map(count -> Making.of(free, range, count)).toList();
    Optional<Making> best =
        makings.stream()
            .filter(making -> making.fit() != null)
            .min(Comparator.comparingDouble(Making::value));
    Making shown = best.orElse(makings.get(0));
    Travel travel = new Paths(free).of(shown.extended()).travel();
    return new Ideal(
        shown.count(),
        Balance.of(travel, shown.count(), STEEPEST),
        shown.fit(),
        shown.shortfall(),
        stock(job, range));
  }

  private static Fit stock(Job job, Range range) {
    Ranking ranking = Ranking.of(range, job);
    return ranking.fits().stream()
        .findFirst()
        .or(() -> ranking.near().stream().findFirst())
        .orElse(null);
  }

  /** What the stock part costs at the hand, root mean square, N; null without both. */
  public Double costsRms() {
    return more(Figures::handRms);
  }

  /** The same of the larger force that is held against the limit. */
  public Double costsMost() {
    return more(Figures::handForce);
  }

  private Double more(ToDoubleFunction<Figures> of) {
    return made == null || stock == null
        ? null
        : of.applyAsDouble(stock.figures()) - of.applyAsDouble(made.figures());
  }

  /** Whether the range has nothing that fits. */
  public boolean stockFails() {
    return stock == null || !stock.fits();
  }
}
