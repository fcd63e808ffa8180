package org.staywright.caution;

import java.util.List;
import java.util.Optional;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.Caution.Severity;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.part.Part;
import org.staywright.unit.Unit;

/** Where the strongest spring lifts the closed flap, only the latch holds it: let go, it jumps. */
final class LatchPressure implements CautionRule {

  @Override
  public Optional<Caution> of(Part part) {
    return Optional.empty();
  }

  @Override
  public Optional<Caution> of(Job job, Fit fit) {
    double opening = -fit.figures().closedHoldStrong();
    if (opening <= 0) {
      return Optional.empty();
    }
    double atHandle = opening / job.mechanism().travel(job.mechanism().end()).hand();
    return Optional.of(
        new Caution(
            "latch-pressure",
            Severity.WARNING,
            List.of(new Figure(atHandle, Unit.NEWTON, 0)),
            COMMON_PRACTICE));
  }
}
