package org.staywright.caution.fit;

import java.math.RoundingMode;
import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.time.Slam;
import org.staywright.unit.Unit;

/**
 * A load that is let go and meets an end hard traps what is in its way. From which energy on is our
 * choice; what a standard allows guards that a drive moves is told beside it, from memory, for
 * comparison only: no standard that we know sets a limit for what a hand moves.
 *
 * @param opening which end
 */
record Slams(boolean opening) implements CautionRule {

  private static final String COMPARED = "our choice; ISO 14120:2015, from memory, for comparison";

  @Override
  public Optional<Caution> of(Job job, Fit fit, Figures figures) {
    return Slam.of(job, fit, opening).map(this::told);
  }

  private Caution told(Slam slam) {
    Figure energy = Figure.most(slam.energy(), Unit.JOULE);
    Figure speed = new Figure(slam.speed(), Unit.METRE_PER_SECOND, 1, RoundingMode.CEILING);
    Caution caution =
        opening ? Caution.warning("slams", energy, speed) : Caution.danger("slams", energy, speed);
    return caution.by(COMPARED).at(opening ? "open" : "shut", slam.corner());
  }
}
