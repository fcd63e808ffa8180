package org.staywright.caution.fit;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Beside;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.part.Family;
import org.staywright.unit.Unit;

/**
 * What is left when one of the chosen springs gives out, at worst: at the hand, and to keep it
 * open. Springs beside are others that may still hold it.
 */
final class SpringFails implements CautionRule {

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    double hand = Math.max(0, figures.oneFailed().hand());
    double hold = figures.oneFailed().hold();
    boolean alone = fit.count() == 1 && job.beside().stream().noneMatch(SpringFails::pushes);
    if (alone && hand == 0) {
      return Optional.empty();
    }
    return Optional.of(
        hold < 0
            ? Caution.danger(
                alone ? "only-spring-fails" : "one-of-several-fails",
                Figure.most(hand, Unit.NEWTON),
                Figure.most(-hold, Unit.NEWTON))
            : Caution.warning(
                alone ? "stays-without-spring" : "others-still-hold",
                Figure.most(hand, Unit.NEWTON),
                Figure.least(hold, Unit.NEWTON, 0)));
  }

  private static boolean pushes(Beside beside) {
    return beside.part().family() != Family.DAMPER;
  }
}
