package org.staywright.document;

import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.staywright.document.Shape.Anchor;
import org.staywright.document.Shape.Size;
import org.staywright.fit.FitCurve;
import org.staywright.mechanism.Mechanism.Kind;
import org.staywright.mechanism.Point;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/**
 * Hand force over the travel, opening and closing: above zero the hand works, below it the flap
 * moves by itself. A band each from the weakest to the strongest spring.
 */
public final class HandForceChart {

  private static final double WIDTH = 34;
  private static final double HEIGHT = 20;

  private final FitCurve curve;
  private final Kind kind;
  private final double limit;
  private final Wording wording;
  private final double[] travel;
  private final Plot plot;

  private HandForceChart(FitCurve curve, Kind kind, double limit, Wording wording) {
    this.curve = curve;
    this.kind = kind;
    this.limit = limit;
    this.wording = wording;
    this.travel = Arrays.stream(curve.travel().q()).map(unit(kind)::of).toArray();
    double low = Math.min(0, all().min().orElseThrow());
    double high = Math.max(limit, all().max().orElseThrow());
    this.plot =
        new Plot(
            Axis.within(travel[0], travel[travel.length - 1], 8),
            Axis.around(low, high, 7),
            WIDTH,
            HEIGHT);
  }

  /**
   * @param kind whether the travel turns or shifts
   * @param limit largest hand force allowed, N
   */
  public static Drawing of(FitCurve curve, Kind kind, double limit, Wording wording) {
    return new HandForceChart(curve, kind, limit, wording).draw();
  }

  private static Unit unit(Kind kind) {
    return kind == Kind.TURNS ? DEGREE : MILLIMETRE;
  }

  private Drawing draw() {
    plot.frame(
        wording,
        wording.text(kind == Kind.TURNS ? "document.opened" : "document.travelled"),
        unit(kind),
        wording.text("document.hand-force"),
        NEWTON);
    band(Role.BAND_2, Role.CURVE_2, "opening", curve.openLeast(), curve.openMost());
    band(Role.BAND_3, Role.CURVE_3, "closing", curve.closeLeast(), curve.closeMost());
    plot.level(Role.AXIS, 0);
    plot.level(Role.LIMIT, wording.text("document.limit", newtons(limit)), limit);
    plot.curve(Role.CURVE_2, wording.text("document.opening"), travel, curve.nominal().open());
    plot.curve(Role.CURVE_3, wording.text("document.closing"), travel, curve.nominal().close());
    for (Free.Stretch each :
        Free.stretches(travel, curve.nominal().open(), curve.nominal().close())) {
      plot.stretch(each.way().role(), wording.text(each.way().key()), each.from(), each.to());
    }
    labels();
    return plot.drawing(
        "hand-force",
        wording.text("document.hand-force-chart"),
        wording.text(
            "document.hand-force-chart.about",
            newtons(most(curve.nominal().open())),
            newtons(most(curve.nominal().close())),
            newtons(limit)));
  }

  private void band(Role band, Role role, String way, double[] weak, double[] strong) {
    String name = wording.text("document." + way);
    int lower = edge(role, "document.least", name, weak);
    plot.band(band, lower, edge(role, "document.most", name, strong));
  }

  private int edge(Role role, String key, String name, double[] forces) {
    return plot.told(role, wording.text(key, name), Readings.Look.EDGE, travel, forces);
  }

  private void labels() {
    int last = travel.length - 1;
    double opening = plot.place(travel[0], curve.nominal().open()[last]).y();
    double closing = plot.place(travel[0], curve.nominal().close()[last]).y();
    // Kept apart about their middle where both end close together.
    double apart = Math.max(0, 1.3 - Math.abs(opening - closing)) / 2;
    double up = opening > closing ? apart : -apart;
    endLabel(Role.CURVE_2, opening + up, "document.opening");
    endLabel(Role.CURVE_3, closing - up, "document.closing");
    double top = plot.place(travel[0], limit).y();
    plot.sketch()
        .text(
            Role.LIMIT,
            new Point(plot.width() - 0.4, top - 0.8),
            Anchor.END,
            Size.SMALL,
            wording.text("document.limit", newtons(limit)));
    plot.caption(wording.text("document.hand-force.bands"));
  }

  private void endLabel(Role role, double y, String key) {
    Point at = new Point(plot.width() + 0.6, y);
    plot.sketch().text(role, at, Anchor.START, Size.NORMAL, wording.text(key));
  }

  private DoubleStream all() {
    return Stream.of(
            curve.nominal().open(),
            curve.nominal().close(),
            curve.openLeast(),
            curve.closeLeast(),
            curve.openMost(),
            curve.closeMost())
        .flatMapToDouble(Arrays::stream);
  }

  private static double most(double[] forces) {
    return Arrays.stream(forces).max().orElseThrow();
  }

  private String newtons(double force) {
    return wording.quantity(force, NEWTON, 0);
  }
}
