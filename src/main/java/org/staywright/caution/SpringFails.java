package org.staywright.caution;

import java.util.Optional;
import org.staywright.caution.Caution.Figure;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.unit.Unit;

/** What is left when one spring gives out, with what the bare load then weighs in the hand. */
final class SpringFails implements CautionRule {

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    double hand = figures.oneFailed().hand();
    double hold = figures.oneFailed().hold();
    if (fit.count() == 1) {
      return hand > 0
          ? Optional.of(Caution.danger("only-spring-fails", newtons(hand)))
          : Optional.empty();
    }
    return Optional.of(
        hold > 0
            ? Caution.warning("others-still-hold", newtons(hand), newtons(hold))
            : Caution.danger("one-of-several-fails", newtons(hand)));
  }

  private static Figure newtons(double force) {
    return Figure.of(force, Unit.NEWTON);
  }
}
