package org.staywright.document.chart;

import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.staywright.document.draw.Axis;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic;
import org.staywright.document.draw.Graphic.Anchor;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Labels;
import org.staywright.document.draw.Plot;
import org.staywright.document.draw.Readings;
import org.staywright.document.draw.Role;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.job.Extreme;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Requirements;
import org.staywright.mechanism.Mechanism.Movement;
import org.staywright.mechanism.Point;
import org.staywright.unit.Unit;
import org.staywright.wording.CornerText;
import org.staywright.wording.Wording;

/**
 * Hand force over the travel, opening and closing: above zero the hand works, below it the flap
 * moves by itself. Nominal in lines; a band each from the least to the most in any corner, its
 * worst point marked and named.
 */
public final class HandForceChart {

  /** A way the hand goes, with its colours. */
  private enum Way {
    OPENING("document.opening", Role.BAND_2, Role.CURVE_2),
    CLOSING("document.closing", Role.BAND_3, Role.CURVE_3);

    private final String key;
    private final Role band;
    private final Role curve;

    Way(String key, Role band, Role curve) {
      this.key = key;
      this.band = band;
      this.curve = curve;
    }
  }

  /** Least distance of the names at the ends of the curves, in type sizes. */
  private static final double APART = 1.3;

  /** Before what is said of a marked point. */
  private static final String MARK = "● ";

  private final FitCurve curve;
  private final Figures.Hand hand;
  private final Requirements asked;
  private final Unit unit;
  private final Wording wording;
  private final double[] travel;
  private final Plot plot;

  private HandForceChart(
      Job job, Fit fit, Figures.Hand hand, double width, double height, Wording wording) {
    this.curve = FitCurve.of(job, fit);
    this.hand = hand;
    this.asked = job.requirements();
    this.unit = job.mechanism().movement() == Movement.TURNS ? DEGREE : MILLIMETRE;
    this.wording = wording;
    this.travel = Arrays.stream(curve.travel().q()).map(unit::of).toArray();
    double most = Math.max(asked.handOpenLimit(), asked.handCloseLimit());
    double low = Math.min(0, all().min().orElseThrow());
    double high = Math.max(most, all().max().orElseThrow());
    this.plot =
        new Plot(
            Axis.within(travel[0], travel[travel.length - 1], 8),
            Axis.around(low, high, height > 12 ? 7 : 4),
            width,
            height);
  }

  /** Of a fit in its job. */
  public static Drawing of(Job job, Fit fit, Figures figures, Wording wording) {
    return new HandForceChart(job, fit, figures.hand(), 34, 20, wording).draw();
  }

  /** The same as wide as a page and no higher than it leaves, its type as large as the text. */
  public static Drawing forPaper(Job job, Fit fit, Figures figures, Wording wording) {
    return new HandForceChart(job, fit, figures.hand(), 47, 10, wording).draw();
  }

  private Drawing draw() {
    plot.frame(
        wording,
        wording.text(unit == DEGREE ? "document.opened" : "document.travelled"),
        unit,
        wording.text("document.hand-force"),
        NEWTON);
    band(Way.OPENING, curve.openLeast(), curve.openMost());
    band(Way.CLOSING, curve.closeLeast(), curve.closeMost());
    plot.level(Role.AXIS, 0);
    limits().forEach((name, newtons) -> plot.level(Role.LIMIT, name, newtons));
    nominal(Way.OPENING, curve.nominal().open());
    nominal(Way.CLOSING, curve.nominal().close());
    free();
    names();
    plot.above(
        List.of(
            new Plot.Above(Role.AXIS, wording.text("document.hand-force.bands")),
            new Plot.Above(Way.OPENING.curve, MARK + worst(Way.OPENING, hand.openWorst())),
            new Plot.Above(Way.CLOSING.curve, MARK + worst(Way.CLOSING, hand.closeWorst()))));
    marks();
    return plot.drawing("hand-force", wording.text("document.hand-force-chart"), about());
  }

  private void band(Way way, double[] least, double[] most) {
    String name = wording.text(way.key);
    int lower = edge(way.curve, wording.text("document.least", name), least);
    plot.band(way.band, lower, edge(way.curve, wording.text("document.most", name), most));
  }

  private int edge(Role role, String name, double[] forces) {
    return plot.told(role, name, Readings.Look.EDGE, travel, forces);
  }

  private void nominal(Way way, double[] forces) {
    plot.curve(way.curve, wording.text("document.nominal", wording.text(way.key)), travel, forces);
  }

  /** What is allowed, by its name. */
  private Map<String, Double> limits() {
    double open = asked.handOpenLimit();
    double close = asked.handCloseLimit();
    return open == close
        ? Map.of(wording.text("document.limit", newtons(open)), open)
        : Map.of(
            wording.text("document.limit.opening", newtons(open)), open,
            wording.text("document.limit.closing", newtons(close)), close);
  }

  /** Under or over its line, at either end or in its middle. */
  private void limit(Labels labels, String text, double newtons) {
    double y = plot.place(0, newtons).y();
    List<Graphic.Text> places = new ArrayList<>();
    for (double off : new double[] {-0.8, 0.8}) {
      places.add(limit(plot.width() - 0.4, y + off, Anchor.END, text));
      places.add(limit(plot.width() / 2, y + off, Anchor.MIDDLE, text));
      places.add(limit(0.4, y + off, Anchor.START, text));
    }
    labels.place(places);
  }

  private Graphic.Text limit(double x, double y, Anchor anchor, String text) {
    return plot.sketch().label(Role.LIMIT, new Point(x, y), anchor, Size.SMALL, text);
  }

  /** What it does by itself with nominal springs and load. */
  private void free() {
    for (Free.Stretch each :
        Free.stretches(travel, curve.nominal().open(), curve.nominal().close())) {
      plot.stretch(each.way().role(), wording.text(each.way().key()), each.from(), each.to());
    }
    plot.beforeStretches(wording.text("document.free.nominal"));
  }

  /** Of the curves at their right ends, kept apart about their middle where both end close. */
  private void names() {
    int last = travel.length - 1;
    double opening = plot.place(0, curve.nominal().open()[last]).y();
    double closing = plot.place(0, curve.nominal().close()[last]).y();
    double apart = Math.max(0, APART - Math.abs(opening - closing)) / 2;
    double up = opening > closing ? apart : -apart;
    name(Way.OPENING, opening + up);
    name(Way.CLOSING, closing - up);
  }

  private void name(Way way, double y) {
    Point at = new Point(plot.width() + 0.6, y);
    plot.sketch().text(way.curve, at, Anchor.START, Size.NORMAL, wording.text(way.key));
  }

  /** Where the hand has most to do, whatever springs and load turn out to be; and the limits. */
  private void marks() {
    Point open = mark(Way.OPENING, hand.openWorst());
    Point close = mark(Way.CLOSING, hand.closeWorst());
    Labels labels = new Labels(plot.sketch());
    limits().forEach((name, newtons) -> limit(labels, name, newtons));
    label(labels, Way.OPENING, open, hand.openWorst());
    label(labels, Way.CLOSING, close, hand.closeWorst());
  }

  private Point mark(Way way, Extreme worst) {
    return plot.mark(way.curve, worst(way, worst), unit.of(worst.travel()), worst.value());
  }

  private void label(Labels labels, Way way, Point at, Extreme worst) {
    labels.place(way.curve, at, Plot.RING, Size.SMALL, most(worst.value()));
  }

  private String worst(Way way, Extreme worst) {
    boolean itself = worst.value() <= 0;
    return wording.text(
        itself ? "document.worst.itself" : "document.worst",
        wording.text(way.key),
        itself ? least(-worst.value()) : most(worst.value()),
        wording.quantity(worst.travel(), unit, 0),
        CornerText.of(worst.corner(), wording));
  }

  private String about() {
    String limit =
        asked.handOpenLimit() == asked.handCloseLimit()
            ? newtons(asked.handOpenLimit())
            : newtons(asked.handOpenLimit()) + " / " + newtons(asked.handCloseLimit());
    return wording.text(
        "document.hand-force-chart.about",
        worst(Way.OPENING, hand.openWorst()),
        worst(Way.CLOSING, hand.closeWorst()),
        most(Math.max(0, hand.open())),
        most(Math.max(0, hand.close())),
        limit);
  }

  private DoubleStream all() {
    return Stream.of(curve.openLeast(), curve.closeLeast(), curve.openMost(), curve.closeMost())
        .flatMapToDouble(Arrays::stream);
  }

  /** Rounded up, so that no curve exceeds it. */
  private String most(double force) {
    return wording.quantity(force, NEWTON, 0, RoundingMode.CEILING);
  }

  private String least(double force) {
    return wording.quantity(force, NEWTON, 0, RoundingMode.FLOOR);
  }

  private String newtons(double force) {
    return wording.quantity(force, NEWTON, 0);
  }
}
