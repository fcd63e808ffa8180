package org.staywright.document;

import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;
import static org.staywright.unit.Unit.NEWTON_METRE;

import java.util.List;
import org.staywright.fit.Assessment;
import org.staywright.fit.Behaviour;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.fit.Opening;
import org.staywright.fit.SeatFigures;
import org.staywright.mechanism.Mechanism;
import org.staywright.spring.LockingSpring;
import org.staywright.unit.Unit;
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
            List.of(head("what", 46), head("asked", 18), head("has", 18), head("verdict", 18)));
  }

  private Grid.Head head(String name, float width) {
    return new Grid.Head(wording.text("document.asked." + name), width, false);
  }

  Grid grid() {
    return fit.outcome() instanceof SeatFigures seat ? seat(seat) : hand();
  }

  private Grid seat(SeatFigures has) {
    LockingSpring column = (LockingSpring) fit.part().spring();
    least("rises-empty", 1, has.risesEmpty(), null, 2);
    least("sinks-under-lightest", 1, has.sinksUnderLightest(), null, 2);
    least("height-travel", has.travel(), has.stroke(), MILLIMETRE, 1);
    most("lock-load", column.lockForce(), has.strength().lockLoad(), NEWTON, 0);
    most("peak-pressure", fit.part().limits().pressure(), has.strength().peakPressure(), BAR, 0);
    least("buckling", Assessment.LEAST_BUCKLING_FACTOR, has.strength().bucklingFactor(), null, 1);
    return grid;
  }

  private Grid hand() {
    Job.Requirements asked = job.requirements();
    Figures has = fit.figures();
    Behaviour behaviour = asked.behaviour();
    if (behaviour.maxHandOpen() == null && behaviour.maxHandClose() == null) {
      most("hand-force", asked.maxHandForce(), has.handForce(), NEWTON, 1);
    } else {
      most("hand-open", asked.handOpenLimit(), has.handOpenMaxWeak(), NEWTON, 1);
      most("hand-close", asked.handCloseLimit(), has.handCloseMaxStrong(), NEWTON, 1);
    }
    if (has.holdRatioOpen() != null) {
      least("hold-ratio", asked.minHoldRatio(), has.holdRatioOpen(), null, 2);
    }
    least("compressed-reserve", asked.compressedReserve(), has.compressedReserve(), MILLIMETRE, 1);
    if (asked.openStop() == Job.OpenStop.FLAP_STOP) {
      least("extended-reserve", asked.extendedReserve(), has.extendedReserve(), MILLIMETRE, 1);
    }
    if (asked.staysShut()) {
      boolean turns = job.mechanism().kind() == Mechanism.Kind.TURNS;
      least("stays-shut", 0, has.closedHoldStrong(), turns ? NEWTON_METRE : NEWTON, 1);
    }
    behaviour(behaviour, has);
    for (Opening.Kept kept : Opening.kept(job, fit)) {
      double value = Double.isInfinite(kept.has()) ? Double.NaN : kept.has();
      Unit unit = kept.code().unit(job.mechanism().kind());
      row(kept.code().code(), "at-most", kept.most(), value, unit, 1, kept.met());
    }
    most("peak-pressure", fit.part().limits().pressure(), has.peakPressure(), BAR, 0);
    least("buckling", Assessment.LEAST_BUCKLING_FACTOR, has.bucklingFactor(), null, 1);
    double rating = Math.min(fit.rodFitting().rating(), fit.tubeFitting().rating());
    most("fitting-load", rating, Math.max(has.peakMountLoad(), has.stopLoad()), NEWTON, 0);
    double swing = Math.min(fit.rodFitting().swing(), fit.tubeFitting().swing());
    most("swing", swing, has.swing(), DEGREE, 1);
    return grid;
  }

  private void behaviour(Behaviour asked, Figures has) {
    Unit travel = job.mechanism().kind() == Mechanism.Kind.TURNS ? DEGREE : MILLIMETRE;
    if (asked.risesFrom() != null) {
      by("rises", asked.risesFrom(), has.selfOpensFromWeak(), travel);
    }
    if (asked.staysPut()) {
      row("stays-put", "more-than", 0, has.staysPut(), NEWTON, 1, has.staysPut() > 0);
    }
    if (asked.maxLatchPush() != null) {
      most("latch-push", asked.maxLatchPush(), has.latchPush(), NEWTON, 1);
    }
    if (asked.overCentreBy() != null) {
      by("over-centre", asked.overCentreBy(), has.overCentre(), travel);
    }
  }

  /**
   * @param has null where it never does
   */
  private void by(String name, double asked, Double has, Unit unit) {
    row(
        name,
        "at-most",
        asked,
        has == null ? Double.NaN : has,
        unit,
        1,
        has != null && has <= asked);
  }

  private void most(String name, double asked, double has, Unit unit, int decimals) {
    row(name, "at-most", asked, has, unit, decimals, has <= asked);
  }

  private void least(String name, double asked, double has, Unit unit, int decimals) {
    row(name, "at-least", asked, has, unit, decimals, has >= asked);
  }

  private void row(
      String name, String bound, double asked, double has, Unit unit, int decimals, boolean met) {
    List<String> cells =
        List.of(
            wording.text("document.asked." + name),
            wording.text("document.asked." + bound, shown(asked, unit, decimals)),
            shown(has, unit, decimals),
            wording.text("document.asked." + (met ? "ok" : "missed")));
    if (met) {
      grid.row(cells);
    } else {
      grid.alarm(cells);
    }
  }

  private String shown(double si, Unit unit, int decimals) {
    if (Double.isNaN(si)) {
      return wording.text("document.asked.never");
    }
    return unit == null ? wording.number(si, decimals) : wording.quantity(si, unit, decimals);
  }
}
