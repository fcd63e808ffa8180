package org.staywright.web;

import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;
import static org.staywright.unit.Unit.NEWTON_METRE;

import java.util.ArrayList;
import java.util.List;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.mechanism.Mechanism;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/** The figures of a fit at a hand with their labels, in the order of a reader's questions. */
final class FitFigures {

  private final Wording wording;
  private final List<Figure> list = new ArrayList<>();

  private FitFigures(Wording wording) {
    this.wording = wording;
  }

  static List<Figure> of(Mechanism mechanism, Fit fit, Wording wording) {
    Figures figures = fit.figures();
    boolean turns = mechanism.kind() == Mechanism.Kind.TURNS;
    Unit travel = turns ? DEGREE : MILLIMETRE;
    Unit load = turns ? NEWTON_METRE : NEWTON;
    double far = figures.openingAngle() - mechanism.start();
    FitFigures all = new FitFigures(wording);
    all.add("fit.figure.hand-open", figures.handOpenMax(), NEWTON, 0);
    all.add("fit.figure.hand-close", figures.handCloseMax(), NEWTON, 0);
    all.add("fit.figure.hand-open-weak", figures.handOpenMaxWeak(), NEWTON, 0);
    all.add("fit.figure.hand-close-strong", figures.handCloseMaxStrong(), NEWTON, 0);
    all.add("fit.figure.hand-rms", figures.handRms(), NEWTON, 0);
    if (figures.holdRatioOpen() != null) {
      all.add("fit.figure.hold-ratio", wording.number(figures.holdRatioOpen(), 2));
    }
    all.add("fit.figure.constancy", wording.number(fit.constancy(), 2));
    all.add("fit.figure.opening-angle", far, travel, 1);
    all.add("fit.figure.self-opens", figures.selfOpensFrom(), travel, 0);
    all.add("fit.figure.self-opens-weak", figures.selfOpensFromWeak(), travel, 0);
    all.add("fit.figure.stays", figures.staysFrom(), travel, 0);
    if (figures.staysPut() != null) {
      all.add("fit.figure.stays-put", figures.staysPut(), NEWTON, 0);
    }
    if (figures.latchPush() > 0) {
      all.add("fit.figure.latch-push", figures.latchPush(), NEWTON, 0);
    }
    if (figures.overCentre() != null) {
      all.add("fit.figure.over-centre", figures.overCentre(), travel, 0);
    }
    double hold = figures.closedHold();
    String nominal = hold < 0 ? "fit.figure.closed-push" : "fit.figure.closed-hold";
    all.add(nominal, Math.abs(hold), load, 1);
    double strongHold = figures.closedHoldStrong();
    String strong =
        strongHold < 0 ? "fit.figure.closed-push-strong" : "fit.figure.closed-hold-strong";
    all.add(strong, Math.abs(strongHold), load, 1);
    all.add("fit.figure.length-closed", figures.lengthClosed(), MILLIMETRE, 1);
    all.add("fit.figure.length-open", figures.lengthOpen(), MILLIMETRE, 1);
    all.add("fit.figure.length-min", figures.lengthMin(), MILLIMETRE, 1);
    all.add("fit.figure.length-max", figures.lengthMax(), MILLIMETRE, 1);
    all.add("fit.figure.compressed", figures.compressed(), MILLIMETRE, 1);
    all.add("fit.figure.extended", figures.extended(), MILLIMETRE, 1);
    all.add("fit.figure.compressed-reserve", figures.compressedReserve(), MILLIMETRE, 1);
    all.add("fit.figure.extended-reserve", figures.extendedReserve(), MILLIMETRE, 1);
    all.add("fit.figure.peak-pressure", figures.peakPressure(), BAR, 0);
    all.add("fit.figure.peak-mount-load", figures.peakMountLoad(), NEWTON, 0);
    if (figures.stopLoad() > 0) {
      all.add("fit.figure.stop-load", figures.stopLoad(), NEWTON, 0);
    }
    all.add("fit.figure.buckling", wording.number(figures.bucklingFactor(), 1));
    all.add("fit.figure.swing", figures.swing(), DEGREE, 1);
    return all.list;
  }

  private void add(String key, Double si, Unit unit, int decimals) {
    add(key, si == null ? wording.text("page.fit.nowhere") : wording.quantity(si, unit, decimals));
  }

  private void add(String key, String value) {
    list.add(new Figure(wording.text(key), value));
  }
}
