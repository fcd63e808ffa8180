package org.staywright.document.chart;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;
import static java.math.RoundingMode.HALF_UP;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;
import static org.staywright.unit.Unit.NEWTON_PER_MILLIMETRE;

import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.staywright.document.draw.Axis;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic.Anchor;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Labels;
import org.staywright.document.draw.Plot;
import org.staywright.document.draw.Readings;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.fit.assess.SeatCurve;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.SeatFigures;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.SeatColumn;
import org.staywright.part.Part;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/** What a column does under a seat, over the height that is set: open, and locked. */
public final class SeatChart {

  private static final Plot.Extent SCREEN = new Plot.Extent(34, 20);

  /** As wide as a page and no higher than it leaves, its type as large as the text. */
  private static final Plot.Extent PAPER = new Plot.Extent(47, 10);

  private static final double ROW_WIDTH = 10;
  private static final double ROW_HEIGHT = 2.6;

  private final Job job;
  private final Part column;
  private final Plot.Extent size;
  private final Wording wording;
  private final SeatColumn seat;
  private final SeatCurve curve;
  private final double[] height;

  private SeatChart(Job job, Part column, SeatFigures figures, Plot.Extent size, Wording wording) {
    this.job = job;
    this.column = column;
    this.size = size;
    this.wording = wording;
    this.seat = figures.seat();
    this.curve = SeatCurve.of(job, column, figures);
    this.height = shown(curve.height(), MILLIMETRE);
  }

  /** All of them, those first that a sitter feels. */
  static List<FitCharts.Chart> all(Job job, Part column, SeatFigures figures, Wording wording) {
    return all(job, column, figures, SCREEN, wording);
  }

  /** The same for a page. */
  static List<FitCharts.Chart> forPaper(
      Job job, Part column, SeatFigures figures, Wording wording) {
    return all(job, column, figures, PAPER, wording);
  }

  private static List<FitCharts.Chart> all(
      Job job, Part column, SeatFigures figures, Plot.Extent size, Wording wording) {
    SeatChart charts = new SeatChart(job, column, figures, size, wording);
    SeatCurve.Give give = charts.curve.give(job, column, figures);
    return List.of(
        new FitCharts.Chart(wording.text("seat.chart.open"), charts.open()),
        new FitCharts.Chart(wording.text("seat.chart.give"), charts.give(give)),
        new FitCharts.Chart(wording.text("seat.chart.locked"), charts.locked()),
        new FitCharts.Chart(wording.text("seat.chart.stiffness"), charts.stiffness(give)));
  }

  /** The open column, small enough for a table's row. */
  public static Drawing small(Job job, Part column, SeatFigures figures, Wording wording) {
    return new SeatChart(job, column, figures, SCREEN, wording).small();
  }

  /** The open column rising and sinking, between the weight that it lifts and the one it yields. */
  private Drawing open() {
    double top = Math.max(seat.light(), most(curve.sinkingStrong()));
    Plot plot = plot(0, top, 7);
    frame(plot, "seat.push", NEWTON);
    String rising = wording.text("seat.rising");
    String sinking = wording.text("seat.sinking");
    int weak = edge(plot, Role.CURVE_2, "document.least", rising, curve.risingWeak());
    plot.band(Role.BAND_2, weak, plot.curve(Role.CURVE_2, rising, height, curve.rising()));
    int usual = plot.curve(Role.CURVE_3, sinking, height, curve.sinking());
    int strong = edge(plot, Role.CURVE_3, "document.most", sinking, curve.sinkingStrong());
    plot.band(Role.BAND_3, usual, strong);
    level(plot, seat.empty(), "seat.level.empty");
    level(plot, seat.light(), "seat.level.lightest");
    ends(
        plot,
        new Ending(Role.CURVE_2, curve.rising(), "seat.rising"),
        new Ending(Role.CURVE_3, curve.sinking(), "seat.sinking"));
    plot.caption(wording.text("seat.chart.open.caption"));
    return drawing(
        plot,
        "open",
        newtons(least(curve.risingWeak()), FLOOR),
        newtons(seat.empty(), HALF_UP),
        newtons(most(curve.sinkingStrong()), CEILING),
        newtons(seat.light(), HALF_UP));
  }

  /** How far it gives: the lightest and the heaviest sitter at once, the heaviest in the end. */
  private Drawing give(SeatCurve.Give give) {
    double[] light = shown(give.light(), MILLIMETRE);
    double[] heavy = shown(give.heavy(), MILLIMETRE);
    double[] settled = shown(give.settled(), MILLIMETRE);
    Plot plot = plot(0, Math.max(most(settled), 1), 6);
    frame(plot, "seat.give", MILLIMETRE);
    String heaviest = wording.text("seat.heaviest");
    plot.curve(
        Role.CURVE_1, wording.text("seat.at-once", wording.text("seat.lightest")), height, light);
    plot.curve(Role.CURVE_3, wording.text("seat.at-once", heaviest), height, heavy);
    plot.dashed(Role.CURVE_3, wording.text("seat.settled", heaviest), height, settled);
    ends(
        plot,
        new Ending(Role.CURVE_1, light, "seat.lightest"),
        new Ending(Role.CURVE_3, heavy, "seat.heaviest"));
    int worst =
        IntStream.range(0, heavy.length)
            .reduce((a, b) -> heavy[a] < heavy[b] ? b : a)
            .orElseThrow();
    String most = atMost(give.heavy()[worst]);
    String said =
        wording.text(
            "seat.give.most", most, wording.quantity(curve.height()[worst], MILLIMETRE, 0));
    Point at = plot.mark(Role.CURVE_3, said, height[worst], heavy[worst]);
    new Labels(plot.sketch()).place(Role.CURVE_3, at, Plot.RING, Size.SMALL, most);
    plot.caption(wording.text("seat.chart.give.caption"));
    return drawing(
        plot,
        "give",
        atMost(most(give.heavy())),
        atMost(most(give.settled())),
        atMost(most(give.light())));
  }

  /** Force over deflection inwards, slow and fast, locked low, half-way and high. */
  private Drawing locked() {
    int last = height.length - 1;
    return LockedChart.forces(
        column,
        List.of(
            new LockedChart.LockedAt(curve.compression()[0], wording.text("seat.low")),
            new LockedChart.LockedAt(curve.compression()[0] / 2, wording.text("seat.middle")),
            new LockedChart.LockedAt(curve.compression()[last], wording.text("seat.high"))),
        job.conditions().nominal(),
        wording.text("seat.chart.locked.caption"),
        size,
        wording);
  }

  private Drawing stiffness(SeatCurve.Give give) {
    double[] stiffness = shown(give.stiffness(), NEWTON_PER_MILLIMETRE);
    Plot plot = plot(0, most(stiffness), 6);
    frame(plot, "seat.stiffness", NEWTON_PER_MILLIMETRE);
    plot.curve(Role.CURVE_1, wording.text("document.locked.locked"), height, stiffness);
    int softest = 0;
    for (int i = 0; i < stiffness.length; i++) {
      softest = stiffness[i] < stiffness[softest] ? i : softest;
    }
    plot.sketch().circle(Role.MARK, plot.place(height[softest], stiffness[softest]), 0.22);
    plot.caption(wording.text("seat.chart.stiffness.caption"));
    return drawing(
        plot,
        "stiffness",
        wording.quantity(give.stiffness()[softest], NEWTON_PER_MILLIMETRE, 0),
        wording.quantity(curve.height()[softest], MILLIMETRE, 0));
  }

  private Drawing small() {
    Sketch sketch = new Sketch(1);
    double top = Math.max(seat.light(), most(curve.sinkingStrong()));
    for (double level : new double[] {seat.empty(), seat.light()}) {
      double y = ROW_HEIGHT * level / top;
      sketch.line(Role.LIMIT, 0, y, ROW_WIDTH, y);
    }
    sketch.path(Role.CURVE_2, row(curve.risingWeak(), top));
    sketch.path(Role.CURVE_3, row(curve.sinkingStrong(), top));
    return sketch.drawing(
        wording.text("seat.chart.small"),
        wording.text(
            "seat.chart.small.about",
            newtons(least(curve.risingWeak()), FLOOR),
            newtons(most(curve.sinkingStrong()), CEILING)),
        0.2);
  }

  private List<Point> row(double[] forces, double top) {
    return IntStream.range(0, forces.length)
        .mapToObj(
            i ->
                new Point(
                    ROW_WIDTH * i / (forces.length - 1), Math.max(0, ROW_HEIGHT * forces[i] / top)))
        .toList();
  }

  private Plot plot(double low, double high, int steps) {
    Axis along = Axis.within(height[0], height[height.length - 1], 8);
    return new Plot(along, size.upwards(low, high, steps), size);
  }

  private void frame(Plot plot, String up, Unit unit) {
    plot.frame(wording, wording.text("seat.height"), MILLIMETRE, wording.text(up), unit);
  }

  private void level(Plot plot, double newtons, String key) {
    String text = wording.text(key, newtons(newtons, HALF_UP));
    plot.level(Role.LIMIT, text, newtons);
    Point above = new Point(0.4, plot.place(0, newtons).y() - 0.8);
    plot.sketch().text(Role.LIMIT, above, Anchor.START, Size.SMALL, text);
  }

  private int edge(Plot plot, Role role, String key, String name, double[] forces) {
    return plot.told(role, wording.text(key, name), Readings.Look.EDGE, height, forces);
  }

  private record Ending(Role role, double[] values, String key) {}

  /** Names two curves at their right ends, kept apart about their middle where they are close. */
  private void ends(Plot plot, Ending one, Ending other) {
    int last = height.length - 1;
    double y1 = plot.place(0, one.values()[last]).y();
    double y2 = plot.place(0, other.values()[last]).y();
    double apart = Math.max(0, 1.3 - Math.abs(y1 - y2)) / 2;
    double up = y1 > y2 ? apart : -apart;
    end(plot, one, y1 + up);
    end(plot, other, y2 - up);
  }

  private void end(Plot plot, Ending ending, double y) {
    Point at = new Point(plot.width() + 0.6, y);
    plot.sketch().text(ending.role(), at, Anchor.START, Size.NORMAL, wording.text(ending.key()));
  }

  private Drawing drawing(Plot plot, String name, Object... values) {
    return plot.drawing(
        "seat-" + name,
        wording.text("seat.chart." + name),
        wording.text("seat.chart." + name + ".about", values));
  }

  private static double[] shown(double[] si, Unit unit) {
    return Arrays.stream(si).map(unit::of).toArray();
  }

  private static double most(double[] values) {
    return Arrays.stream(values).max().orElseThrow();
  }

  private static double least(double[] values) {
    return Arrays.stream(values).min().orElseThrow();
  }

  private String newtons(double force, RoundingMode rounding) {
    return wording.quantity(force, NEWTON, 0, rounding);
  }

  private String atMost(double metres) {
    return wording.quantity(metres, MILLIMETRE, 1, CEILING);
  }
}
