package org.staywright.web;

import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import io.quarkus.qute.RawString;
import java.util.List;
import org.staywright.document.HandForceChart;
import org.staywright.document.OverlayChart;
import org.staywright.document.SideView;
import org.staywright.document.Sparkline;
import org.staywright.fit.Extreme;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.fit.FitCurve;
import org.staywright.fit.Job;
import org.staywright.mechanism.Mechanism;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/** In words, what a hand feels that moves a load and what holds it. */
record HandWords(Job job, Fit fit, Wording wording) implements FitWords {

  @Override
  public String sentence() {
    Extreme ratio = has().hold().ratio();
    Double hold = ratio == null ? null : ratio.value();
    String hand = newtons(Math.max(0, has().hand().worst()));
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
  public List<Labelled> cells() {
    Extreme ratio = has().hold().ratio();
    String hold = ratio == null ? "–" : wording.number(ratio.value(), 2);
    return List.of(
        new Labelled(
            wording.text("page.row.hand"),
            pair(has().hand().openWorst().value(), has().hand().closeWorst().value(), NEWTON)),
        new Labelled(wording.text("page.row.hold"), hold),
        new Labelled(
            wording.text("page.row.reserves"),
            pair(
                has().lengths().compressedReserve(),
                has().lengths().extendedReserve(),
                MILLIMETRE)));
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
    return Graph.of(HandForceChart.of(job, fit, wording), wording.text("page.fit.chart"), wording);
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

  private String newtons(double force) {
    return wording.quantity(force, NEWTON, 0);
  }

  private String pair(double one, double other, Unit unit) {
    return wording.bare(one, unit, 0) + " / " + wording.bare(other, unit, 0);
  }
}
