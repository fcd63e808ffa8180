package org.staywright.document.chart;

import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.staywright.document.draw.Axis;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic.Anchor;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Plot;
import org.staywright.document.draw.Role;
import org.staywright.fit.assess.FitCurve;
import org.staywright.mechanism.Mechanism.Movement;
import org.staywright.mechanism.Point;
import org.staywright.spring.LockedCurve;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/**
 * Nominal curves of several fits in one frame: one solid and one dashed each, named at their ends.
 * Of hand forces, opening and closing; of locked columns, sat down on slowly and fast.
 */
public final class OverlayChart {

  /** So many can still be told apart. */
  public static final int MOST = 5;

  /** What curves must share to stand in one frame. */
  private enum Subject {
    TURNS(DEGREE, "opened", "overlay.up", "overlay"),
    SHIFTS(MILLIMETRE, "travelled", "overlay.up", "overlay"),
    LOCKED(MILLIMETRE, "locked.deflection", "overlay-locked.up", "overlay-locked");

    private final Unit unit;
    private final String along;
    private final String up;
    private final String name;

    Subject(Unit unit, String along, String up, String name) {
      this.unit = unit;
      this.along = "document." + along;
      this.up = "document." + up;
      this.name = "document." + name;
    }
  }

  /** The curves of one fit. */
  public static final class Line {

    private final String letter;
    private final Subject subject;
    private final Double limit;
    private final double[] along;
    private final double[] solid;
    private final double[] dashed;

    private Line(
        String letter,
        Subject subject,
        Double limit,
        double[] si,
        double[] solid,
        double[] dashed) {
      this.letter = letter;
      this.subject = subject;
      this.limit = limit;
      this.along = Arrays.stream(si).map(subject.unit::of).toArray();
      this.solid = solid;
      this.dashed = dashed;
    }

    /**
     * @param letter it is called by
     * @param curve its forces
     * @param kind whether the travel turns or shifts
     * @param limit largest hand force allowed, N
     */
    public static Line hand(String letter, FitCurve curve, Movement kind, double limit) {
      Subject subject = kind == Movement.TURNS ? Subject.TURNS : Subject.SHIFTS;
      return new Line(
          letter,
          subject,
          limit,
          curve.travel().q(),
          curve.nominal().open(),
          curve.nominal().close());
    }

    /**
     * @param letter it is called by
     * @param curve what it holds locked, beyond its open force
     */
    public static Line locked(String letter, LockedCurve curve) {
      return new Line(letter, Subject.LOCKED, null, curve.deflection(), curve.slow(), curve.fast());
    }

    private DoubleStream forces() {
      return DoubleStream.concat(Arrays.stream(solid), Arrays.stream(dashed));
    }
  }

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
  private final Subject subject;
  private final Double limit;
  private final Wording wording;
  private final Plot plot;
  private final List<Label> labels = new ArrayList<>();

  private OverlayChart(List<Line> lines, Wording wording) {
    this.lines = lines;
    this.subject = lines.get(0).subject;
    this.wording = wording;
    List<Double> limits = lines.stream().map(line -> line.limit).distinct().toList();
    this.limit = limits.size() == 1 ? limits.get(0) : null;
    double[] ends = lines.stream().flatMapToDouble(line -> Arrays.stream(line.along)).toArray();
    double[] forces = lines.stream().flatMapToDouble(Line::forces).toArray();
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

  /** Whether lines, one at least, can stand in one frame. */
  public static boolean shareable(List<Line> lines) {
    return lines.stream().map(line -> line.subject).distinct().count() == 1;
  }

  /**
   * @param lines one to {@link #MOST} that can share a frame; their limit is drawn where all have
   *     the same
   */
  public static Drawing of(List<Line> lines, Wording wording) {
    return new OverlayChart(lines, wording).draw();
  }

  private Drawing draw() {
    plot.frame(
        wording, wording.text(subject.along), subject.unit, wording.text(subject.up), NEWTON);
    plot.level(Role.AXIS, 0);
    if (limit != null) {
      String text = wording.text("document.limit", wording.quantity(limit, NEWTON, 0));
      plot.level(Role.LIMIT, text, limit);
      Point above = new Point(plot.width() - 0.4, plot.place(0, limit).y() - 0.8);
      plot.sketch().text(Role.LIMIT, above, Anchor.END, Size.SMALL, text);
    }
    for (int i = 0; i < lines.size(); i++) {
      draw(ROLES[i], lines.get(i));
    }
    placeLabels();
    plot.caption(wording.text(subject.name + ".caption"));
    return plot.drawing(
        "side-by-side",
        wording.text(subject.name),
        lines.stream().map(this::about).collect(Collectors.joining(" ")));
  }

  private void draw(Role role, Line line) {
    String solid = wording.text(subject.name + ".solid", line.letter);
    String dashed = wording.text(subject.name + ".dashed", line.letter);
    plot.curve(role, solid, line.along, line.solid);
    plot.dashed(role, dashed, line.along, line.dashed);
    int last = line.along.length - 1;
    label(role, line.solid[last], solid);
    label(role, line.dashed[last], dashed);
  }

  private void label(Role role, double force, String text) {
    double y = plot.place(0, force).y();
    labels.add(new Label(role, y, text));
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

  /** Rounded up, so that no curve exceeds it. */
  private String most(double[] forces) {
    double most = Arrays.stream(forces).max().orElseThrow();
    return wording.quantity(Math.max(0, most), NEWTON, 0, RoundingMode.CEILING);
  }

  private String about(Line line) {
    return wording.text(subject.name + ".about", line.letter, most(line.solid), most(line.dashed));
  }
}
