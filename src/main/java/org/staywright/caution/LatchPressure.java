package org.staywright.caution;

import java.util.Optional;
import org.staywright.caution.Caution.Figure;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.unit.Unit;

/** Where the strongest spring lifts the closed load, only the latch holds it: let go, it jumps. */
final class LatchPressure implements CautionRule {

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    double opening = -figures.closedHoldStrong();
    if (opening <= 0) {
      return Optional.empty();
    }
    double atHandle = opening / job.mechanism().travel(job.mechanism().end()).hand();
    return Optional.of(Caution.warning("latch-pressure", Figure.of(atHandle, Unit.NEWTON)));
  }
}
