package org.staywright.document;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.staywright.document.Shape.Anchor;
import org.staywright.document.Shape.Size;
import org.staywright.mechanism.Point;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/** The frame of a chart, one unit a type size: axes, grid, ticks, and places for values. */
final class Plot {

  private final Sketch sketch = new Sketch(1);
  private final Axis x;
  private final Axis y;
  private final double width;
  private final double height;

  Plot(Axis x, Axis y, double width, double height) {
    this.x = x;
    this.y = y;
    this.width = width;
    this.height = height;
  }

  Sketch sketch() {
    return sketch;
  }

  double width() {
    return width;
  }

  Point place(double xValue, double yValue) {
    return new Point(x.share(xValue) * width, y.share(yValue) * height);
  }

  /**
   * @param xUnit of the values along x, null for one that all readers share
   * @param yUnit of the values along y, null for one that all readers share
   */
  void frame(Wording wording, String xName, Unit xUnit, String yName, Unit yUnit) {
    for (Tick tick : ticks(x, xUnit, wording)) {
      double at = place(tick.value(), 0).x();
      sketch.line(Role.GRID, at, 0, at, height);
      sketch.text(Role.AXIS, new Point(at, -1), Anchor.MIDDLE, Size.SMALL, tick.label());
    }
    for (Tick tick : ticks(y, yUnit, wording)) {
      double at = place(0, tick.value()).y();
      sketch.line(Role.GRID, 0, at, width, at);
      sketch.text(Role.AXIS, new Point(-0.6, at), Anchor.END, Size.SMALL, tick.label());
    }
    sketch.line(Role.AXIS, 0, 0, width, 0);
    sketch.text(Role.AXIS, new Point(width, -2.3), Anchor.END, Size.SMALL, xName);
    sketch.text(Role.AXIS, new Point(-0.6, height + 1.3), Anchor.START, Size.SMALL, yName);
  }

  private record Tick(double value, String label) {}

  /** At round numbers of the unit that the reader sees. */
  private static List<Tick> ticks(Axis axis, Unit unit, Wording wording) {
    Unit seen = unit == null ? null : wording.units().instead(unit);
    if (seen == unit) {
      return Arrays.stream(axis.ticks())
          .mapToObj(tick -> new Tick(tick, wording.number(tick, axis.decimals())))
          .toList();
    }
    int steps = (int) Math.round((axis.high() - axis.low()) / axis.step());
    Axis shown = Axis.within(seen.of(unit.si(axis.low())), seen.of(unit.si(axis.high())), steps);
    return Arrays.stream(shown.ticks())
        .mapToObj(t -> new Tick(unit.of(seen.si(t)), wording.number(t, shown.decimals())))
        .toList();
  }

  /** A line across at a value. */
  void level(Role role, double yValue) {
    double at = place(0, yValue).y();
    sketch.line(role, 0, at, width, at);
  }

  /** How to read the chart, above its right end. */
  void caption(String text) {
    sketch.text(Role.AXIS, new Point(width + 4, height + 1.3), Anchor.END, Size.SMALL, text);
  }

  void curve(Role role, double[] xs, double[] ys) {
    sketch.path(role, points(xs, ys));
  }

  /** Every other stretch between two samples: so it is dashed on every medium, in any colour. */
  void dashed(Role role, double[] xs, double[] ys) {
    for (int i = 0; i + 1 < xs.length; i += 2) {
      curve(role, Arrays.copyOfRange(xs, i, i + 2), Arrays.copyOfRange(ys, i, i + 2));
    }
  }

  /** The area between two curves. */
  void band(Role role, double[] xs, double[] lower, double[] upper) {
    List<Point> around = points(xs, lower);
    List<Point> back = points(xs, upper);
    for (int i = back.size() - 1; i >= 0; i--) {
      around.add(back.get(i));
    }
    sketch.polygon(role, around);
  }

  private List<Point> points(double[] xs, double[] ys) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xs.length; i++) {
      points.add(place(xs[i], ys[i]));
    }
    return points;
  }
}
