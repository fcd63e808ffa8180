package org.staywright.document.job;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;
import static java.math.RoundingMode.HALF_UP;
import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.NEWTON;

import java.math.RoundingMode;
import java.util.List;
import org.staywright.document.sheet.Grid;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Criteria;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.Kept;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.SeatFigures;
import org.staywright.part.Part;
import org.staywright.spring.LockingSpring;
import org.staywright.unit.Unit;
import org.staywright.wording.CornerText;
import org.staywright.wording.FigureText;
import org.staywright.wording.Wording;

/** What a job asks and what a part has, figure by figure, and in which case it comes to that. */
final class Asked {

  private final Job job;
  private final Fit fit;
  private final Wording wording;
  private final boolean cases;
  private final Grid grid;

  Asked(Job job, Fit fit, Wording wording) {
    this.job = job;
    this.fit = fit;
    this.wording = wording;
    // Of a column each requirement has one case, told in its name.
    this.cases = job.mechanism().handMoves();
    this.grid =
        new Grid(
            cases
                ? List.of(
                    head("what", 43),
                    head("asked", 10),
                    head("has", 12.5f),
                    head("case", 25),
                    head("verdict", 9.5f))
                : List.of(
                    head("what", 61), head("asked", 13), head("has", 13), head("verdict", 13)));
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
    String fast = wording.text("document.asked.case.fast");
    if (Double.isFinite(part.limits().pressure())) {
      double peak = fit.outcome().peakPressure();
      most("peak-pressure", part.limits().pressure(), peak, BAR, 0, fast);
    }
    double factor = fit.outcome().bucklingFactor();
    least("buckling", Assessment.LEAST_BUCKLING_FACTOR, factor, null, 1, fast);
    fit.seat().ifPresent(seat -> lock(seat.strength()));
    fit.figures().ifPresent(figures -> fittings(figures.strength(), fast));
  }

  private void lock(SeatFigures.Strength has) {
    double lock = ((LockingSpring) fit.part().spring()).lockForce();
    most("lock-load", lock, has.lockLoad(), NEWTON, 0, "");
  }

  private void fittings(Figures.Strength has, String fast) {
    double rating = Math.min(fit.rodFitting().rating(), fit.tubeFitting().rating());
    boolean pushed = has.peakMountLoad() >= has.stopLoad();
    String hardest = pushed ? fast : wording.text("document.asked.case.stop");
    double load = Math.max(has.peakMountLoad(), has.stopLoad());
    most("fitting-load", rating, load, NEWTON, 0, hardest);
    double swing = Math.min(fit.rodFitting().swing(), fit.tubeFitting().swing());
    most("swing", swing, has.swing(), DEGREE, 1, "");
  }

  private void requirement(Kept kept) {
    FigureText text = FigureText.in(wording);
    Unit unit = kept.criterion().unit(job.mechanism().movement());
    String worst = kept.corner() == null ? "" : CornerText.of(kept.corner(), wording);
    row(
        text.label(kept.criterion()),
        text.asked(kept, unit),
        text.has(kept, unit),
        worst,
        kept.met());
  }

  private void most(String name, double asked, double has, Unit unit, int decimals, String worst) {
    row(
        wording.text("document.asked." + name),
        wording.text("fit.criterion.at-most", shown(asked, unit, decimals, HALF_UP)),
        shown(has, unit, decimals, CEILING),
        worst,
        has <= asked);
  }

  private void least(String name, double asked, double has, Unit unit, int decimals, String worst) {
    row(
        wording.text("document.asked." + name),
        wording.text("fit.criterion.at-least", shown(asked, unit, decimals, HALF_UP)),
        shown(has, unit, decimals, FLOOR),
        worst,
        has >= asked);
  }

  private void row(String what, String asked, String has, String worst, boolean met) {
    String verdict = wording.text("document.asked." + (met ? "ok" : "missed"));
    List<String> cells =
        cases ? List.of(what, asked, has, worst, verdict) : List.of(what, asked, has, verdict);
    if (met) {
      grid.row(cells);
    } else {
      grid.alarm(cells);
    }
  }

  /** A rod that is pulled never buckles. */
  private String shown(double si, Unit unit, int decimals, RoundingMode rounding) {
    return Double.isInfinite(si)
        ? wording.text("document.never-buckles")
        : wording.quantity(si, unit, decimals, rounding);
  }
}
