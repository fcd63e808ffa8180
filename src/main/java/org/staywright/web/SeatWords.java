package org.staywright.web;

import static org.staywright.unit.Unit.BAR;
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
  public List<Figure> cells() {
    return List.of(
        new Figure(
            wording.text("seat.row.moves"),
            ratio(has().risesEmpty()) + " / " + ratio(has().sinksUnderLightest())),
        new Figure(
            wording.text("seat.row.gives"), wording.bare(has().greatestBounce(), MILLIMETRE, 1)),
        new Figure(
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
  public List<Figure> figures() {
    return Stream.concat(doing().stream(), holding().stream())
        .map(trait -> new Figure(trait.label(), trait.text()))
        .toList();
  }

  @Override
  public List<Trait> doing() {
    return List.of(
        more("seat.figure.rises-empty", has().risesEmpty()),
        more("seat.figure.sinks-under-lightest", has().sinksUnderLightest()),
        length("seat.figure.bounce-low", has().bounce().low()),
        length("seat.figure.bounce-middle", has().bounce().middle()),
        length("seat.figure.bounce-high", has().bounce().high()),
        Trait.less(
            wording.text("seat.figure.lowering"), newtons(has().lowering()), has().lowering()),
        more("fit.figure.constancy", fit.constancy()));
  }

  @Override
  public List<Trait> holding() {
    return List.of(
        length("seat.figure.travel", has().travel()),
        length("seat.figure.stroke", has().stroke()),
        Trait.plain(wording.text("seat.figure.thrust"), newtons(has().strength().thrust())),
        Trait.plain(wording.text("seat.figure.lock-load"), newtons(has().strength().lockLoad())),
        Trait.less(
            wording.text("fit.figure.peak-pressure"),
            wording.quantity(has().strength().peakPressure(), BAR, 0),
            has().strength().peakPressure()),
        Trait.more(
            wording.text("fit.figure.buckling"),
            wording.number(has().strength().bucklingFactor(), 1),
            has().strength().bucklingFactor()));
  }

  @Override
  public OverlayChart.Line line(String letter) {
    return OverlayChart.Line.locked(letter, SeatCurve.lockedHalfWay(job, fit));
  }

  private SeatFigures has() {
    return fit.seat();
  }

  private Trait more(String key, double value) {
    return Trait.more(wording.text(key), ratio(value), value);
  }

  /** Hard or soft is a matter of taste. */
  private Trait length(String key, double metres) {
    return Trait.plain(wording.text(key), wording.quantity(metres, MILLIMETRE, 1));
  }

  private String ratio(double value) {
    return wording.number(value, 2);
  }

  private String newtons(double force) {
    return wording.quantity(force, NEWTON, 0);
  }
}
