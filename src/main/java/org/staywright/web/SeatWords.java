package org.staywright.web;

import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import io.quarkus.qute.RawString;
import java.util.List;
import java.util.stream.Stream;
import org.staywright.document.FitCharts;
import org.staywright.document.OverlayChart;
import org.staywright.document.SeatChart;
import org.staywright.document.SideView;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.fit.SeatCurve;
import org.staywright.fit.SeatFigures;
import org.staywright.wording.Wording;

/** In words, what a column does under a seat. */
record SeatWords(Job job, Fit fit, Wording wording) implements FitWords {

  @Override
  public String sentence() {
    return wording.text(
        "seat.verdict",
        fit.part().number(),
        ratio(has().risesEmpty()),
        ratio(has().sinksUnderLightest()),
        wording.quantity(has().greatestBounce(), MILLIMETRE, 1),
        newtons(has().strength().thrust()));
  }

  @Override
  public List<Labelled> cells() {
    return List.of(
        new Labelled(
            wording.text("seat.row.moves"),
            ratio(has().risesEmpty()) + " / " + ratio(has().sinksUnderLightest())),
        new Labelled(
            wording.text("seat.row.gives"), wording.bare(has().greatestBounce(), MILLIMETRE, 1)),
        new Labelled(
            wording.text("seat.row.stroke"),
            wording.bare(has().stroke() - has().travel(), MILLIMETRE, 0)));
  }

  @Override
  public RawString curve() {
    return Pictures.of(SeatChart.small(job, fit, wording));
  }

  @Override
  public List<Graph> graphs() {
    Graph view = Graph.of(SideView.of(job, fit, wording), wording.text("page.fit.view"), wording);
    return Stream.concat(
            FitCharts.of(job, fit, wording).stream()
                .map(each -> Graph.of(each.drawing(), each.heading(), wording)),
            Stream.of(view))
        .toList();
  }

  @Override
  public OverlayChart.Line line(String letter) {
    return OverlayChart.Line.locked(letter, SeatCurve.lockedHalfWay(job, fit));
  }

  private SeatFigures has() {
    return fit.seat();
  }

  private String ratio(double value) {
    return wording.number(value, 2);
  }

  private String newtons(double force) {
    return wording.quantity(force, NEWTON, 0);
  }
}
