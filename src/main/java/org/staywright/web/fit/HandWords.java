package org.staywright.web.fit;

import io.quarkus.qute.RawString;
import java.util.List;
import org.staywright.document.chart.HandForceChart;
import org.staywright.document.chart.OverlayChart;
import org.staywright.document.chart.Sparkline;
import org.staywright.document.view.SideView;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.mechanism.Mechanism;
import org.staywright.web.chart.Graph;
import org.staywright.web.chart.Pictures;
import org.staywright.web.field.Labelled;
import org.staywright.wording.HandText;
import org.staywright.wording.Wording;

/** In words, what a hand feels that moves a load and what holds it. */
record HandWords(Job job, Fit fit, Figures has, Wording wording) implements FitWords {

  @Override
  public List<String> sentences() {
    return text().headline();
  }

  @Override
  public List<String> marks() {
    return text().marks();
  }

  @Override
  public List<String> besides() {
    return text().besides();
  }

  @Override
  public List<Labelled> cells() {
    return List.of(
        pair("row.hand", Figure.HAND_OPEN_WORST, Figure.HAND_CLOSE_WORST),
        pair("row.hold", Figure.HOLD_OPEN, Figure.HOLD_RATIO_OPEN),
        pair("row.reserves", Figure.COMPRESSED_RESERVE, Figure.EXTENDED_RESERVE));
  }

  @Override
  public RawString curve() {
    return Pictures.of(Sparkline.of(FitCurve.of(job, fit), limit(), wording));
  }

  @Override
  public List<Graph> graphs() {
    return List.of(
        chart(), Graph.of(SideView.of(job, fit, wording), wording.text("fit.view"), wording));
  }

  @Override
  public Graph chart() {
    return Graph.of(HandForceChart.of(job, fit, has, wording), wording.text("fit.chart"), wording);
  }

  @Override
  public OverlayChart.Line line(String letter) {
    return OverlayChart.Line.hand(letter, FitCurve.of(job, fit), kind(), limit());
  }

  private HandText text() {
    return HandText.of(fit, has, job.requirements(), Figure.OPENING_ANGLE.unit(kind()), wording);
  }

  private Labelled pair(String key, Figure one, Figure other) {
    return new Labelled(wording.text(key), bare(one) + " / " + bare(other));
  }

  private Mechanism.Movement kind() {
    return job.mechanism().movement();
  }

  private double limit() {
    return job.requirements().maxHandForce();
  }
}
