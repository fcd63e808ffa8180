package org.staywright.caution.part;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.part.Part;
import org.staywright.unit.Unit;

/** Whatever moves can pinch; what shuts by itself pinches by itself, with so much at the hand. */
public final class CrushGaps implements CautionRule {

  private static final String STANDARDS = "ISO 13854, ISO 14120";

  @Override
  public Optional<Caution> of(Part part) {
    return Optional.of(Caution.warning("pinch-points").by(STANDARDS));
  }

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    double shuts = figures.hold().shuts();
    return shuts > 0
        ? Optional.of(Caution.warning("shuts", Figure.most(shuts, Unit.NEWTON)).by(STANDARDS))
        : of(fit.part());
  }
}
