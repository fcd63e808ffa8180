package org.staywright.caution.fit;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.mechanism.Travel;
import org.staywright.unit.Unit;

/**
 * Where the open load would come down without its springs, people under it need a second hold: what
 * it would bring down with it at most, −∫Q dq from the open end on, at its worst weight, friction
 * left out.
 */
final class SecondHold implements CautionRule {

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    Travel travel = job.mechanism().travel(figures.end());
    double energy = Math.max(fall(travel, travel.heavy()), fall(travel, travel.light()));
    return energy > 0
        ? Optional.of(Caution.danger("second-hold", Figure.most(energy, Unit.JOULE)))
        : Optional.empty();
  }

  /** Greatest on its way down, as far as it comes; 0 where it stays. */
  private static double fall(Travel travel, double[] load) {
    double most = 0;
    double sum = 0;
    for (int i = travel.last(); i > 0 && sum >= 0; i--) {
      sum -= (load[i] + load[i - 1]) / 2 * (travel.q()[i] - travel.q()[i - 1]);
      most = Math.max(most, sum);
    }
    return load[travel.last()] < 0 ? most : 0;
  }
}
