package org.staywright.document;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;
import static java.math.RoundingMode.HALF_UP;
import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.NEWTON;

import java.math.RoundingMode;
import java.util.List;
import org.staywright.fit.Assessment;
import org.staywright.fit.Criteria;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.fit.Kept;
import org.staywright.fit.SeatFigures;
import org.staywright.part.Part;
import org.staywright.spring.LockingSpring;
import org.staywright.unit.Unit;
import org.staywright.wording.FigureText;
import org.staywright.wording.Wording;

/** What a job asks and what a part has, figure by figure. */
final class Asked {

  private final Job job;
  private final Fit fit;
  private final Wording wording;
  private final Grid grid;

  Asked(Job job, Fit fit, Wording wording) {
    this.job = job;
    this.fit = fit;
    this.wording = wording;
    this.grid =
        new Grid(
            List.of(head("what", 55), head("asked", 15), head("has", 15), head("verdict", 15)));
  }

  private Grid.Head head(String name, float width) {
    return new Grid.Head(wording.text("document.asked." + name), width, false);
  }

  Grid grid() {
    Criteria.kept(job, fit).forEach(this::requirement);
    strength();
    return grid;
  }

  private void strength() {
    Part part = fit.part();
    most("peak-pressure", part.limits().pressure(), fit.outcome().peakPressure(), BAR, 0);
    least("buckling", Assessment.LEAST_BUCKLING_FACTOR, fit.outcome().bucklingFactor(), null, 1);
    if (fit.outcome() instanceof SeatFigures seat) {
      double lock = ((LockingSpring) part.spring()).lockForce();
      most("lock-load", lock, seat.strength().lockLoad(), NEWTON, 0);
      return;
    }
    Figures.Strength has = fit.figures().strength();
    double rating = Math.min(fit.rodFitting().rating(), fit.tubeFitting().rating());
    most("fitting-load", rating, Math.max(has.peakMountLoad(), has.stopLoad()), NEWTON, 0);
    double swing = Math.min(fit.rodFitting().swing(), fit.tubeFitting().swing());
    most("swing", swing, has.swing(), DEGREE, 1);
  }

  private void requirement(Kept kept) {
    FigureText text = FigureText.in(wording);
    Unit unit = kept.criterion().unit(job.mechanism().kind());
    row(text.label(kept.criterion()), text.asked(kept, unit), text.has(kept, unit), kept.met());
  }

  private void most(String name, double asked, double has, Unit unit, int decimals) {
    row(
        wording.text("document.asked." + name),
        wording.text("fit.criterion.at-most", shown(asked, unit, decimals, HALF_UP)),
        shown(has, unit, decimals, CEILING),
        has <= asked);
  }

  private void least(String name, double asked, double has, Unit unit, int decimals) {
    row(
        wording.text("document.asked." + name),
        wording.text("fit.criterion.at-least", shown(asked, unit, decimals, HALF_UP)),
        shown(has, unit, decimals, FLOOR),
        has >= asked);
  }

  private void row(String what, String asked, String has, boolean met) {
    List<String> cells =
        List.of(what, asked, has, wording.text("document.asked." + (met ? "ok" : "missed")));
    if (met) {
      grid.row(cells);
    } else {
      grid.alarm(cells);
    }
  }

  private String shown(double si, Unit unit, int decimals, RoundingMode rounding) {
    return wording.quantity(si, unit, decimals, rounding);
  }
}
