package org.staywright.fit;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.staywright.part.Range;

/**
 * From which temperature, age or tilt on a near part holds what it is asked to hold. Nobody gives
 * way on these: it is told where nothing that can be built or preferred helps.
 */
public final class HoldsFrom {

  private static final Set<Criterion> HOLDING =
      EnumSet.of(
          Criterion.HOLD_RATIO, Criterion.HOLD_OPEN, Criterion.STAYS_SHUT, Criterion.ONE_FAILED);

  /** No farther than so many times what weighs as much as the rest of the conditions. */
  private static final double FAR = 10;

  private final Range range;
  private final List<Knob> conditions;

  public HoldsFrom(Range range, List<Knob> conditions) {
    this.range = range;
    this.conditions = List.copyOf(conditions);
  }

  /** The nearest condition; empty where no single one does, or more is missed than a hold. */
  public Optional<Change> of(Fit near) {
    if (!near.blockedBy().stream().map(Blocker::criterion).allMatch(HOLDING::contains)) {
      return Optional.empty();
    }
    Retrial trial = new Retrial(range, near);
    Change nearest = null;
    double least = Double.POSITIVE_INFINITY;
    for (Knob knob : conditions) {
      int far = farthest(knob);
      if (far > 0 && trial.fits(knob, far)) {
        int from = trial.first(knob, 0, far);
        if (knob.cost(from) < least) {
          least = knob.cost(from);
          nearest = knob.change(from);
        }
      }
    }
    return Optional.ofNullable(nearest);
  }

  /** The last step that there is. */
  private static int farthest(Knob knob) {
    int low = 0;
    int high = knob.steps(FAR) + 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (knob.at(middle).isPresent()) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
