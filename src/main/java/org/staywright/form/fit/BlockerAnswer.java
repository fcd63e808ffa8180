package org.staywright.form.fit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Blocker;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Criterion;
import org.staywright.mechanism.Mechanism;
import org.staywright.unit.Unit;

/** A requirement that a fit misses. */
public record BlockerAnswer(
    Criterion code, @Nullable Double needed, @Nullable Double has, String unit) {

  static List<BlockerAnswer> of(Mechanism mechanism, Fit fit) {
    return fit.blockedBy().stream().map(blocker -> of(mechanism, blocker)).toList();
  }

  private static BlockerAnswer of(Mechanism mechanism, Blocker blocker) {
    Unit unit = blocker.unit(mechanism);
    return new BlockerAnswer(
        blocker.criterion(),
        FitFigures.in(unit, blocker.needed()),
        FitFigures.in(unit, blocker.has()),
        unit == null ? "" : unit.symbol());
  }
}
