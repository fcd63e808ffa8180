package org.staywright.web;

import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;
import static org.staywright.unit.Unit.NEWTON_METRE;

import java.util.ArrayList;
import java.util.List;
import org.staywright.fit.Figures;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/** The figures of a fit with their labels, in the order of a reader's questions. */
final class FitFigures {

  private final Wording wording;
  private final List<Figure> list = new ArrayList<>();

  private FitFigures(Wording wording) {
    this.wording = wording;
  }

  static List<Figure> of(Figures figures, Wording wording) {
    FitFigures all = new FitFigures(wording);
    all.add("hand-open", figures.handOpenMax(), NEWTON, 0);
    all.add("hand-close", figures.handCloseMax(), NEWTON, 0);
    all.add("hand-open-weak", figures.handOpenMaxWeak(), NEWTON, 0);
    all.add("hand-close-strong", figures.handCloseMaxStrong(), NEWTON, 0);
    all.add("hand-rms", figures.handRms(), NEWTON, 0);
    if (figures.holdRatioOpen() != null) {
      all.add("hold-ratio", wording.number(figures.holdRatioOpen(), 2));
    }
    all.add("opening-angle", figures.openingAngle(), DEGREE, 1);
    all.add("self-opens", figures.selfOpensFrom(), DEGREE, 0);
    all.add("stays", figures.staysFrom(), DEGREE, 0);
    all.closed("", figures.closedHold());
    all.closed("-strong", figures.closedHoldStrong());
    all.add("length-closed", figures.lengthClosed(), MILLIMETRE, 1);
    all.add("length-open", figures.lengthOpen(), MILLIMETRE, 1);
    all.add("length-min", figures.lengthMin(), MILLIMETRE, 1);
    all.add("length-max", figures.lengthMax(), MILLIMETRE, 1);
    all.add("compressed", figures.compressed(), MILLIMETRE, 1);
    all.add("extended", figures.extended(), MILLIMETRE, 1);
    all.add("compressed-reserve", figures.compressedReserve(), MILLIMETRE, 1);
    all.add("extended-reserve", figures.extendedReserve(), MILLIMETRE, 1);
    all.add("peak-pressure", figures.peakPressure(), BAR, 0);
    all.add("peak-mount-load", figures.peakMountLoad(), NEWTON, 0);
    if (figures.stopLoad() > 0) {
      all.add("stop-load", figures.stopLoad(), NEWTON, 0);
    }
    all.add("buckling", wording.number(figures.bucklingFactor(), 1));
    all.add("swing", figures.swing(), DEGREE, 1);
    return all.list;
  }

  /** A moment that keeps the flap shut, or one that opens it. */
  private void closed(String load, double moment) {
    String way = moment < 0 ? "closed-push" : "closed-hold";
    add(way + load, Math.abs(moment), NEWTON_METRE, 1);
  }

  private void add(String name, Double si, Unit unit, int decimals) {
    add(name, si == null ? wording.text("page.fit.nowhere") : wording.quantity(si, unit, decimals));
  }

  private void add(String name, String value) {
    list.add(new Figure(wording.text("fit.figure." + name), value));
  }
}
