package org.staywright.web.fit;

import io.quarkus.qute.RawString;
import java.util.List;
import org.staywright.document.chart.OverlayChart;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.assess.Figure.Subject;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.unit.Unit;
import org.staywright.web.chart.Graph;
import org.staywright.web.field.ComparedFigure;
import org.staywright.web.field.Labelled;
import org.staywright.wording.FigureText;
import org.staywright.wording.Wording;

/** What a part does in a job, in words: of one kind at a hand, of another under a seat. */
public sealed interface FitWords permits HandWords, SeatWords {

  /**
   * @param wording in the words of the job's mechanism
   */
  static FitWords of(Job job, Fit fit, Wording wording) {
    return fit.outcome()
        .as(
            figures -> new HandWords(job, fit, figures, wording),
            seat -> new SeatWords(job, fit, seat, wording));
  }

  Job job();

  Fit fit();

  Wording wording();

  /** What it does, in sentences: what it asks of the hand first, the worst named in each. */
  List<String> sentences();

  /** What of it is weak enough to be told in a list. */
  List<String> marks();

  /** How the verdict looks: no green for what meets all that is asked and yet is weak. */
  default String verdict() {
    return fit().fits() && marks().isEmpty() ? "fits" : "near";
  }

  /** What to know of it besides: one of its springs failed, how they are hung on. */
  List<String> besides();

  /** The figures that it is ranked by, the foremost first. */
  List<Labelled> cells();

  /** Its curve, small enough for a row. */
  RawString curve();

  /** Its charts and its side view. */
  List<Graph> graphs();

  /** Its curve among others. */
  OverlayChart.Line line(String letter);

  /** The first of its charts. */
  default Graph chart() {
    return graphs().get(0);
  }

  /** All its figures, in the order of a reader's questions. */
  default List<Labelled> figures() {
    return Figure.of(fit()).stream().filter(this::told).map(this::labelled).toList();
  }

  /** Those about a subject, for a comparison. */
  default List<ComparedFigure> about(Subject subject) {
    return Figure.of(fit()).stream()
        .filter(figure -> figure.subject() == subject && told(figure))
        .map(this::trait)
        .toList();
  }

  /** Left out where there is nothing of what is seldom told. */
  private boolean told(Figure figure) {
    Double si = figure.value(fit());
    return !figure.seldom() || si != null && si > 0;
  }

  /** One figure with its label. */
  default Labelled labelled(Figure figure) {
    ComparedFigure trait = trait(figure);
    return new Labelled(trait.label(), trait.text());
  }

  /** A figure alone, "–" where it never comes to that. */
  default String bare(Figure figure) {
    Double si = figure.value(fit());
    return si == null ? "–" : FigureText.in(wording()).bare(figure, si, unit(figure));
  }

  private Unit unit(Figure figure) {
    return figure.unit(job().mechanism().movement());
  }

  private ComparedFigure trait(Figure figure) {
    Double si = figure.value(fit());
    Unit unit = unit(figure);
    FigureText text = FigureText.in(wording());
    String label = text.label(figure, si);
    String value = text.value(figure, si, unit);
    return switch (figure.better()) {
      case LESS -> ComparedFigure.less(label, value, si);
      case MORE -> ComparedFigure.more(label, value, si);
      case BALANCED -> ComparedFigure.less(label, value, si == null ? null : Math.abs(si));
      case NEITHER -> ComparedFigure.plain(label, value);
    };
  }
}
