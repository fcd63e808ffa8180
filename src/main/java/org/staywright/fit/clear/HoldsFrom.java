package org.staywright.fit.clear;

import java.util.List;
import java.util.Optional;
import org.staywright.fit.assess.Blocker;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Criterion;
import org.staywright.part.Range;

/**
 * From which temperature, age or tilt on a near part holds what it is asked to hold. Nobody gives
 * way on these: it is told where nothing that can be built or preferred helps.
 */
public final class HoldsFrom {

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
    if (!near.blockedBy().stream().map(Blocker::criterion).allMatch(Criterion::holding)) {
      return Optional.empty();
    }
    Turning turning = new Turning(new Retrial(range, near), conditions);
    for (double cost = Turning.LEAST; cost <= FAR; cost *= Turning.RISE) {
      Optional<Turning.Turned> turned = turning.to(cost);
      if (turned.isPresent()) {
        return turned.map(Turning.Turned::change);
      }
    }
    return Optional.empty();
  }
}
