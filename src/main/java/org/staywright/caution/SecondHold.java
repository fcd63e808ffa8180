package org.staywright.caution;

import java.util.Optional;
import org.staywright.caution.Caution.Figure;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.mechanism.Travel;
import org.staywright.unit.Unit;

/**
 * Where the open load would come down without its springs, people under it need a second hold: what
 * it would bring down with it, −∫Q dq of the heaviest load over the travel.
 */
final class SecondHold implements CautionRule {

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    Travel travel = job.mechanism().travel(figures.end());
    double energy = fall(travel);
    return travel.heavy()[travel.last()] < 0 && energy > 0
        ? Optional.of(Caution.danger("second-hold", Figure.of(energy, Unit.JOULE)))
        : Optional.empty();
  }

  private static double fall(Travel travel) {
    double sum = 0;
    for (int i = 0; i < travel.last(); i++) {
      double step = travel.q()[i + 1] - travel.q()[i];
      sum -= (travel.heavy()[i] + travel.heavy()[i + 1]) / 2 * step;
    }
    return sum;
  }
}
