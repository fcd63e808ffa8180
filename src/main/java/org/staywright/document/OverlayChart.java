package org.staywright.document;

import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.staywright.document.Shape.Anchor;
import org.staywright.document.Shape.Size;
import org.staywright.fit.FitCurve;
import org.staywright.mechanism.Mechanism.Kind;
import org.staywright.mechanism.Point;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/**
 * Nominal hand forces of several fits over one travel: opening solid, closing dashed, each named at
 * its end.
 */
public final class OverlayChart {

  /** So many can still be told apart. */
  public static final int MOST = 5;

  /**
   * @param letter it is called by
   * @param curve its forces
   */
  public record Line(String letter, FitCurve curve) {}

  private record Label(Role role, double y, String text) {}

  private static final Role[] ROLES = {
    Role.CURVE_1, Role.CURVE_2, Role.CURVE_3, Role.CURVE_4, Role.CURVE_5
  };
  private static final double WIDTH = 34;
  private static final double HEIGHT = 20;
  private static final double LABEL_STEP = 1.25;

  /** A label below it would meet the ticks of the travel. */
  private static final double FOOT = 0.3;

  private final List<Line> lines;
  private final Unit unit;
  private final Double limit;
  private final Wording wording;
  private final Plot plot;
  private final List<Label> labels = new ArrayList<>();

  private OverlayChart(List<Line> lines, Kind kind, Double limit, Wording wording) {
    this.lines = lines;
    this.unit = kind == Kind.TURNS ? DEGREE : MILLIMETRE;
    this.limit = limit;
    this.wording = wording;
    double[] ends = lines.stream().flatMapToDouble(line -> travel(line)).toArray();
    double[] forces = lines.stream().flatMapToDouble(OverlayChart::forces).toArray();
    double low = Math.min(0, Arrays.stream(forces).min().orElseThrow());
    double high = Math.max(limit == null ? 0 : limit, Arrays.stream(forces).max().orElseThrow());
    this.plot =
        new Plot(
            Axis.within(
                Arrays.stream(ends).min().orElseThrow(),
                Arrays.stream(ends).max().orElseThrow(),
                8),
            Axis.around(low, high, 7),
            WIDTH,
            HEIGHT);
  }

  /**
   * @param lines one to {@link #MOST}
   * @param kind whether the travel turns or shifts: the same for all
   * @param limit largest hand force allowed, N, null where they differ
   */
  public static Drawing of(List<Line> lines, Kind kind, Double limit, Wording wording) {
    return new OverlayChart(lines, kind, limit, wording).draw();
  }

  private Drawing draw() {
    plot.frame(
        wording,
        wording.text(unit == DEGREE ? "document.opened" : "document.travelled"),
        unit,
        wording.text("document.hand-force"),
        NEWTON);
    plot.level(Role.AXIS, 0);
    if (limit != null) {
      plot.level(Role.LIMIT, limit);
      Point above = new Point(plot.width() - 0.4, plot.place(0, limit).y() - 0.8);
      String text = wording.text("document.limit", wording.quantity(limit, NEWTON, 0));
      plot.sketch().text(Role.LIMIT, above, Anchor.END, Size.SMALL, text);
    }
    for (int i = 0; i < lines.size(); i++) {
      draw(ROLES[i], lines.get(i));
    }
    placeLabels();
    plot.caption(wording.text("document.overlay.caption"));
    return plot.sketch()
        .drawing(
            wording.text("document.overlay"),
            lines.stream().map(this::about).collect(Collectors.joining(" ")),
            0.6);
  }

  private void draw(Role role, Line line) {
    double[] travel = travel(line).toArray();
    double[] open = line.curve().open();
    double[] close = line.curve().close();
    plot.curve(role, travel, open);
    // Every other stretch between two samples: so the line is dashed on every medium.
    for (int i = 0; i + 1 < travel.length; i += 2) {
      plot.curve(role, Arrays.copyOfRange(travel, i, i + 2), Arrays.copyOfRange(close, i, i + 2));
    }
    int last = travel.length - 1;
    label(role, open[last], "document.overlay.opening", line);
    label(role, close[last], "document.overlay.closing", line);
  }

  private void label(Role role, double force, String key, Line line) {
    double y = plot.place(0, force).y();
    labels.add(new Label(role, y, wording.text(key, line.letter())));
  }

  /** Each beside its end, and where they would cover each other, spread about their middle. */
  private void placeLabels() {
    labels.sort(Comparator.comparingDouble(Label::y));
    double[] at = apart(labels.stream().mapToDouble(Label::y).toArray(), FOOT, HEIGHT);
    for (int i = 0; i < at.length; i++) {
      Label label = labels.get(i);
      Point place = new Point(plot.width() + 0.6, at[i]);
      plot.sketch().text(label.role(), place, Anchor.START, Size.SMALL, label.text());
    }
  }

  /**
   * Places at least {@link #LABEL_STEP} apart that move the least in all: pooling of adjacent
   * violators on what is left when the steps are taken off.
   *
   * @param wanted in rising order
   * @param low least place
   * @param high greatest place
   */
  static double[] apart(double[] wanted, double low, double high) {
    List<double[]> pools = new ArrayList<>();
    for (int i = 0; i < wanted.length; i++) {
      double[] pool = {wanted[i] - i * LABEL_STEP, 1};
      while (!pools.isEmpty() && pools.get(pools.size() - 1)[0] > pool[0]) {
        double[] below = pools.remove(pools.size() - 1);
        double size = below[1] + pool[1];
        pool = new double[] {(below[0] * below[1] + pool[0] * pool[1]) / size, size};
      }
      pools.add(pool);
    }
    double[] at = new double[wanted.length];
    double top = high - (wanted.length - 1) * LABEL_STEP;
    int i = 0;
    for (double[] pool : pools) {
      for (int n = 0; n < pool[1]; n++, i++) {
        at[i] = Math.max(low, Math.min(top, pool[0])) + i * LABEL_STEP;
      }
    }
    return at;
  }

  private String about(Line line) {
    return wording.text(
        "document.overlay.about",
        line.letter(),
        wording.quantity(Arrays.stream(line.curve().open()).max().orElseThrow(), NEWTON, 0),
        wording.quantity(Arrays.stream(line.curve().close()).max().orElseThrow(), NEWTON, 0));
  }

  private DoubleStream travel(Line line) {
    return Arrays.stream(line.curve().travel().q()).map(unit::of);
  }

  private static DoubleStream forces(Line line) {
    return DoubleStream.concat(
        Arrays.stream(line.curve().open()), Arrays.stream(line.curve().close()));
  }
}
