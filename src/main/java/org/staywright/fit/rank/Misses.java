package org.staywright.fit.rank;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Blocker;

/**
 * What a part misses, as near parts are ordered by it.
 *
 * @param count of requirements missed
 * @param largest miss as a share of what is needed; infinite where it never does
 */
public record Misses(int count, double largest) implements Comparable<Misses> {

  static final Misses NONE = new Misses(0, 0);

  private static final Comparator<Misses> FEWEST =
      Comparator.comparingInt(Misses::count).thenComparingDouble(Misses::largest);

  public static Misses of(List<Blocker> blockers) {
    return of(blockers, null);
  }

  /**
   * @param more one besides, null for none
   */
  public static Misses of(List<Blocker> blockers, @Nullable Blocker more) {
    int count = blockers.size() + (more == null ? 0 : 1);
    double largest = more == null ? 0 : more.miss();
    for (Blocker blocker : blockers) {
      largest = Math.max(largest, blocker.miss());
    }
    return count == 0 ? NONE : new Misses(count, largest);
  }

  @Override
  public int compareTo(Misses other) {
    return FEWEST.compare(this, other);
  }
}
