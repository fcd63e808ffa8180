package org.staywright.caution.part;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.part.Part;
import org.staywright.unit.Unit;

/** Seals stick to a rod that rests; a job that seldom moves it is told for how long it rests. */
public final class Sticking implements CautionRule {

  /** Once a week: our choice, no source. */
  private static final double SELDOM = 52;

  private static final double DAYS_A_YEAR = 365;

  @Override
  public Optional<Caution> of(Part part) {
    return part.family().hasTube() ? Optional.of(Caution.note("sticking")) : Optional.empty();
  }

  @Override
  public Optional<Caution> of(Job job, Fit fit) {
    double cycles = job.conditions().cyclesPerYear();
    Optional<Caution> plain = of(fit.part());
    if (cycles >= SELDOM) {
      return plain;
    }
    double friction = fit.part().spring().friction(job.conditions().coldest());
    return plain.map(
        note ->
            Caution.warning(
                "long-rest",
                Figure.of(DAYS_A_YEAR / Math.max(1, cycles), null),
                Figure.least(friction, Unit.NEWTON, 0)));
  }
}
