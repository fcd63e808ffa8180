package org.staywright.caution;

import java.util.Optional;
import org.staywright.caution.Caution.Figure;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.mechanism.Travel;
import org.staywright.unit.Unit;

/** What is left when one spring gives out, with what the bare load then weighs in the hand. */
final class SpringFails implements CautionRule {

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    Travel travel = job.mechanism().travel(figures.openingAngle());
    double heaviest = 0;
    for (double load : travel.heavy()) {
      heaviest = Math.max(heaviest, -load / travel.hand());
    }
    if (heaviest == 0) {
      return Optional.empty();
    }
    Figure bare = Figure.of(heaviest, Unit.NEWTON);
    if (fit.count() == 1) {
      return Optional.of(Caution.danger("only-spring-fails", bare));
    }
    double left = share(fit, figures);
    return Optional.of(
        left < 1
            ? Caution.danger("one-of-several-fails", bare)
            : Caution.warning("others-still-hold", bare, new Figure(left, null, 2)));
  }

  /** Hold ratio at the open end with one spring fewer; 0 where it is not known. */
  private static double share(Fit fit, Figures figures) {
    Double all = figures.holdRatioOpen();
    return all == null ? 0 : all * (fit.count() - 1) / fit.count();
  }
}
