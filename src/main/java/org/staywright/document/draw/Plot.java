package org.staywright.document.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.staywright.document.draw.Graphic.Anchor;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.mechanism.Point;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/** The frame of a chart, one unit a type size: axes, grid, ticks, and places for values. */
public final class Plot {

  /** Below the ticks and the name of x. */
  private static final double BAR = -3.6;

  /** A small letter is about so wide. */
  private static final double LETTER = 0.45;

  /** From the frame up to a row of text, and from one to the next. */
  private static final double ROW = 1.3;

  /** Radius around a marked place. */
  public static final double RING = 0.36;

  /** How far a text may reach beyond the frame, where the names of curves end. */
  private static final double BEYOND = 6;

  private final Sketch sketch = new Sketch(1);
  private final Axis x;
  private final Axis y;
  private final double width;
  private final double height;

  private final List<Readings.Series> series = new ArrayList<>();
  private final List<Readings.Band> bands = new ArrayList<>();
  private final List<Readings.Level> levels = new ArrayList<>();
  private final List<Readings.Stretch> stretches = new ArrayList<>();
  private final List<Readings.Mark> marks = new ArrayList<>();
  private Readings.Measure along;
  private Readings.Measure up;

  /** Right end of the name of y. */
  private double nameEnd;

  /** Of the frame, in type sizes. */
  public record Extent(double width, double height) {

    private static final double LOW = 12;

    /** An axis of at most so many steps, fewer where it is low. */
    public Axis upwards(double low, double high, int steps) {
      return Axis.around(low, high, height > LOW ? steps : 4);
    }
  }

  public Plot(Axis x, Axis y, Extent size) {
    this(x, y, size.width(), size.height());
  }

  public Plot(Axis x, Axis y, double width, double height) {
    this.x = x;
    this.y = y;
    this.width = width;
    this.height = height;
  }

  public Sketch sketch() {
    return sketch;
  }

  public double width() {
    return width;
  }

  public Point place(double xValue, double yValue) {
    return new Point(x.share(xValue) * width, y.share(yValue) * height);
  }

  /**
   * @param xUnit of the values along x, null for one that all readers share
   * @param yUnit of the values along y, null for one that all readers share
   */
  public void frame(Wording wording, String xName, Unit xUnit, String yName, Unit yUnit) {
    along = new Readings.Measure(xName, xUnit, x.decimals() + 1);
    up = new Readings.Measure(yName, yUnit, y.decimals() + 1);
    for (Tick tick : ticks(x, xUnit, wording)) {
      double at = place(tick.value(), 0).x();
      sketch.line(Role.GRID, at, 0, at, height);
      sketch.text(Role.AXIS, new Point(at, -1.05), Anchor.MIDDLE, Size.SMALL, tick.label());
    }
    for (Tick tick : ticks(y, yUnit, wording)) {
      double at = place(0, tick.value()).y();
      sketch.line(Role.GRID, 0, at, width, at);
      sketch.text(Role.AXIS, new Point(-0.6, at), Anchor.END, Size.SMALL, tick.label());
    }
    sketch.line(Role.AXIS, 0, 0, width, 0);
    sketch.text(Role.AXIS, new Point(width, -2.3), Anchor.END, Size.SMALL, xName);
    Graphic.Text name = row(0, new Above(Role.AXIS, yName));
    nameEnd = name.bounds().right();
    sketch.add(name);
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
  public void level(Role role, double yValue) {
    double at = place(0, yValue).y();
    sketch.line(role, 0, at, width, at);
  }

  /** A text above the frame. */
  public record Above(Role role, String text) {}

  /** How to read the chart: beside the name of y where there is room, else above it. */
  public void caption(String text) {
    Point end = new Point(width + BEYOND, height + ROW);
    Graphic.Text beside = sketch.label(Role.AXIS, end, Anchor.END, Size.SMALL, text);
    if (beside.bounds().left() > nameEnd + 1) {
      sketch.add(beside);
    } else {
      above(List.of(new Above(Role.AXIS, text)));
    }
  }

  /** Texts above the name of y from top to bottom, broken where they would be wider than that. */
  public void above(List<Above> texts) {
    List<Above> rows = texts.stream().flatMap(text -> broken(text).stream()).toList();
    for (int i = 0; i < rows.size(); i++) {
      sketch.add(row(rows.size() - i, rows.get(i)));
    }
  }

  private Graphic.Text row(int row, Above text) {
    Point at = new Point(-0.6, height + (1 + row) * ROW);
    return sketch.label(text.role(), at, Anchor.START, Size.SMALL, text.text());
  }

  private List<Above> broken(Above text) {
    List<Above> rows = new ArrayList<>();
    String row = "";
    for (String word : text.text().split(" ")) {
      String longer = row.isEmpty() ? word : row + ' ' + word;
      if (!row.isEmpty()
          && row(0, new Above(text.role(), longer)).bounds().right() > width + BEYOND) {
        rows.add(new Above(text.role(), row));
        row = word;
      } else {
        row = longer;
      }
    }
    rows.add(new Above(text.role(), row));
    return rows;
  }

  /** A curve that is told in numbers too. */
  public int curve(Role role, String name, double[] xs, double[] ys) {
    curve(role, xs, ys);
    return told(role, name, Readings.Look.SOLID, xs, ys);
  }

  /** The same in dashes. */
  public void dashed(Role role, String name, double[] xs, double[] ys) {
    dashed(role, xs, ys);
    told(role, name, Readings.Look.DASHED, xs, ys);
  }

  /** A curve drawn otherwise than as a curve, in numbers. */
  public int told(Role role, String name, Readings.Look look, double[] xs, double[] ys) {
    series.add(new Readings.Series(name, role, look, xs, ys));
    return series.size() - 1;
  }

  /** The area between two series. */
  public void band(Role role, int lower, int upper) {
    Readings.Series low = series.get(lower);
    band(role, low.xs(), low.ys(), series.get(upper).ys());
    bands.add(new Readings.Band(role, lower, upper));
  }

  /** A line across at a value that has a name. */
  public void level(Role role, String name, double yValue) {
    level(role, yValue);
    levels.add(new Readings.Level(name, role, yValue));
  }

  /** A ring about a place that has something to tell, in words of its own. */
  public Point mark(Role role, String name, double xValue, double yValue) {
    marks.add(new Readings.Mark(name, role, xValue, yValue));
    Point at = place(xValue, yValue);
    sketch.circle(role, at, RING);
    sketch.circle(Role.MARK, at, RING / 2);
    return at;
  }

  /** A stretch of x, as a bar below the axis with its name under it where there is room. */
  public void stretch(Role role, String name, double from, double to) {
    stretches.add(new Readings.Stretch(name, role, from, to));
    double left = place(from, 0).x();
    double right = place(to, 0).x();
    sketch.rectangle(role, left, BAR - 0.25, right, BAR + 0.25);
    if (right - left > name.length() * LETTER) {
      Point middle = new Point((left + right) / 2, BAR - 1.1);
      sketch.text(Role.AXIS, middle, Anchor.MIDDLE, Size.SMALL, name);
    }
  }

  /** Before the bar of the stretches, what they hold of. */
  public void beforeStretches(String text) {
    sketch.text(Role.AXIS, new Point(-0.6, BAR), Anchor.END, Size.SMALL, text);
  }

  /**
   * What was drawn, with its numbers.
   *
   * @param code of the chart, in addresses
   */
  public Drawing drawing(String code, String title, String description) {
    Readings readings = new Readings(code, along, up, series, bands, levels, stretches, marks);
    return sketch.drawing(title, description, 0.6).with(readings);
  }

  public void curve(Role role, double[] xs, double[] ys) {
    sketch.path(role, points(xs, ys));
  }

  /** Every other stretch between two samples: so it is dashed on every medium, in any colour. */
  public void dashed(Role role, double[] xs, double[] ys) {
    for (int i = 0; i + 1 < xs.length; i += 2) {
      curve(role, Arrays.copyOfRange(xs, i, i + 2), Arrays.copyOfRange(ys, i, i + 2));
    }
  }

  /** The area between two curves. */
  public void band(Role role, double[] xs, double[] lower, double[] upper) {
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
