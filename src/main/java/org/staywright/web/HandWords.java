package org.staywright.web;

import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import io.quarkus.qute.RawString;
import java.util.List;
import org.staywright.document.HandForceChart;
import org.staywright.document.OverlayChart;
import org.staywright.document.SideView;
import org.staywright.document.Sparkline;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.fit.FitCurve;
import org.staywright.fit.Job;
import org.staywright.mechanism.Mechanism;
import org.staywright.part.Fitting;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/** In words, what a hand feels that moves a load and what holds it. */
record HandWords(Job job, Fit fit, Wording wording) implements FitWords {

  @Override
  public String sentence() {
    Double hold = has().holdRatioOpen();
    String hand = newtons(Math.max(0, has().handForce()));
    String key =
        hold == null
            ? "page.verdict.fits-unloaded"
            : hold < 1 ? "page.verdict.fits-eased" : "page.verdict.fits";
    double share = hold == null ? 0 : hold < 1 ? hold : hold - 1;
    return wording.text(
        key,
        fit.count(),
        newtons(fit.part().spring().force()),
        fit.part().number(),
        hand,
        wording.number(100 * share, 0));
  }

  @Override
  public List<Figure> cells() {
    String hold = has().holdRatioOpen() == null ? "–" : wording.number(has().holdRatioOpen(), 2);
    return List.of(
        new Figure(
            wording.text("page.row.hand"), pair(has().handOpenMax(), has().handCloseMax(), NEWTON)),
        new Figure(wording.text("page.row.hold"), hold),
        new Figure(
            wording.text("page.row.reserves"),
            pair(has().compressedReserve(), has().extendedReserve(), MILLIMETRE)));
  }

  @Override
  public RawString curve() {
    return Pictures.of(Sparkline.of(FitCurve.of(job, fit), limit(), wording));
  }

  @Override
  public List<Graph> graphs() {
    return List.of(
        chart(), Graph.of(SideView.of(job, fit, wording), wording.text("page.fit.view"), wording));
  }

  @Override
  public Graph chart() {
    return Graph.of(
        HandForceChart.of(FitCurve.of(job, fit), kind(), limit(), wording),
        wording.text("page.fit.chart"),
        wording);
  }

  @Override
  public List<Figure> figures() {
    return FitFigures.of(job.mechanism(), fit, wording);
  }

  @Override
  public List<Trait> doing() {
    return List.of(
        balance("fit.figure.hand-open", has().handOpenMax()),
        balance("fit.figure.hand-close", has().handCloseMax()),
        balance("fit.figure.hand-open-weak", has().handOpenMaxWeak()),
        balance("fit.figure.hand-close-strong", has().handCloseMaxStrong()),
        less("fit.figure.hand-rms", has().handRms(), NEWTON),
        more("fit.figure.hold-ratio", has().holdRatioOpen(), null, 2),
        travel("fit.figure.self-opens", has().selfOpensFrom()),
        travel("fit.figure.self-opens-weak", has().selfOpensFromWeak()),
        travel("fit.figure.stays", has().staysFrom()),
        less("fit.figure.latch-push", has().latchPush(), NEWTON));
  }

  @Override
  public List<Trait> holding() {
    return List.of(
        travel("fit.figure.opening-angle", has().openingAngle()),
        Trait.plain(
            wording.text("fit.figure.compressed"), shown(has().compressed(), MILLIMETRE, 1)),
        Trait.plain(wording.text("fit.figure.extended"), shown(has().extended(), MILLIMETRE, 1)),
        more("fit.figure.compressed-reserve", has().compressedReserve(), MILLIMETRE, 1),
        more("fit.figure.extended-reserve", has().extendedReserve(), MILLIMETRE, 1),
        less("fit.figure.peak-pressure", has().peakPressure(), BAR),
        less("fit.figure.peak-mount-load", has().peakMountLoad(), NEWTON),
        more("fit.figure.buckling", has().bucklingFactor(), null, 1),
        fitting("page.field.fittings.rodEnd", fit.rodFitting()),
        fitting("page.field.fittings.tubeEnd", fit.tubeFitting()));
  }

  @Override
  public OverlayChart.Line line(String letter) {
    return OverlayChart.Line.hand(letter, FitCurve.of(job, fit), kind(), limit());
  }

  private Figures has() {
    return fit.figures();
  }

  private Mechanism.Kind kind() {
    return job.mechanism().kind();
  }

  private double limit() {
    return job.requirements().maxHandForce();
  }

  /** The nearer to balance the better: below zero it moves by itself. */
  private Trait balance(String key, double newtons) {
    return Trait.less(wording.text(key), newtons(newtons), Math.abs(newtons));
  }

  private Trait less(String key, double si, Unit unit) {
    return Trait.less(wording.text(key), shown(si, unit, 0), si);
  }

  private Trait more(String key, Double si, Unit unit, int decimals) {
    return Trait.more(wording.text(key), shown(si, unit, decimals), si);
  }

  /** A place on the way, in the unit of its mechanism. */
  private Trait travel(String key, Double si) {
    boolean turns = kind() == Mechanism.Kind.TURNS;
    return Trait.plain(wording.text(key), shown(si, turns ? DEGREE : MILLIMETRE, turns ? 0 : 1));
  }

  private Trait fitting(String key, Fitting fitting) {
    return Trait.plain(wording.text(key), FitRow.fitting(fitting, wording));
  }

  private String shown(Double si, Unit unit, int decimals) {
    if (si == null) {
      return wording.text("page.fit.nowhere");
    }
    return unit == null ? wording.number(si, decimals) : wording.quantity(si, unit, decimals);
  }

  private String newtons(double force) {
    return wording.quantity(force, NEWTON, 0);
  }

  private String pair(double one, double other, Unit unit) {
    return wording.bare(one, unit, 0) + " / " + wording.bare(other, unit, 0);
  }
}
