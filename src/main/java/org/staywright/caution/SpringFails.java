package org.staywright.caution;

import java.util.List;
import java.util.Optional;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.Caution.Severity;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.mechanism.Travel;
import org.staywright.part.Part;
import org.staywright.unit.Unit;

/** What is left when one spring gives out, with what the bare flap then weighs in the hand. */
final class SpringFails implements CautionRule {

  @Override
  public Optional<Caution> of(Part part) {
    return Optional.empty();
  }

  @Override
  public Optional<Caution> of(Job job, Fit fit) {
    Travel travel = job.mechanism().travel(fit.figures().openingAngle());
    double heaviest = 0;
    for (double load : travel.heavy()) {
      heaviest = Math.max(heaviest, -load / travel.hand());
    }
    String code = fit.count() > 1 ? "one-of-several-fails" : "only-spring-fails";
    return Optional.of(
        new Caution(
            code, Severity.DANGER, List.of(new Figure(heaviest, Unit.NEWTON, 0)), COMMON_PRACTICE));
  }
}
