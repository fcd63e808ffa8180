package org.staywright.web.fit;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import io.quarkus.qute.RawString;
import java.util.List;
import java.util.stream.Stream;
import org.staywright.document.chart.FitCharts;
import org.staywright.document.chart.OverlayChart;
import org.staywright.document.chart.SeatChart;
import org.staywright.document.view.SideView;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.SeatCurve;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.SeatFigures;
import org.staywright.web.chart.Graph;
import org.staywright.web.chart.Pictures;
import org.staywright.web.field.Labelled;
import org.staywright.wording.Wording;

/** In words, what a column does under a seat. */
record SeatWords(Job job, Fit fit, SeatFigures has, Wording wording) implements FitWords {

  @Override
  public List<String> sentences() {
    return List.of(
        wording.text(
            "seat.verdict.open",
            fit.part().number(),
            bare(Figure.RISES_EMPTY_RATIO),
            bare(Figure.SINKS_UNDER_LIGHTEST_RATIO)),
        wording.text(
            "seat.verdict.locked",
            wording.text("seat.locked." + softest()),
            wording.quantity(has.greatestBounce(), MILLIMETRE, 1, CEILING),
            wording.quantity(has.strength().thrust(), NEWTON, 0, CEILING)));
  }

  /** Locked at this height it gives the most. */
  private String softest() {
    double most = has.greatestBounce();
    return has.bounce().low() == most ? "low" : has.bounce().middle() == most ? "middle" : "high";
  }

  @Override
  public List<String> marks() {
    return List.of();
  }

  @Override
  public List<String> besides() {
    return List.of();
  }

  @Override
  public List<Labelled> cells() {
    return List.of(
        new Labelled(
            wording.text("seat.row.gives"),
            wording.bare(has.greatestBounce(), MILLIMETRE, 1, CEILING)),
        new Labelled(
            wording.text("seat.row.moves"),
            bare(Figure.RISES_EMPTY_RATIO) + " / " + bare(Figure.SINKS_UNDER_LIGHTEST_RATIO)),
        new Labelled(
            wording.text("seat.row.stroke"),
            wording.bare(has.stroke() - has.travel(), MILLIMETRE, 0, FLOOR)));
  }

  @Override
  public RawString curve() {
    return Pictures.of(SeatChart.small(job, fit.part(), has, wording));
  }

  @Override
  public List<Graph> graphs() {
    Graph view = Graph.of(SideView.of(job, fit, wording), wording.text("fit.view"), wording);
    return Stream.concat(
            FitCharts.of(job, fit, wording).stream()
                .map(each -> Graph.of(each.drawing(), each.heading(), wording)),
            Stream.of(view))
        .toList();
  }

  @Override
  public OverlayChart.Line line(String letter) {
    return OverlayChart.Line.locked(letter, SeatCurve.lockedHalfWay(job, fit.part(), has));
  }
}
