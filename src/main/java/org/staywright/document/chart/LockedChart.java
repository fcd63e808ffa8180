package org.staywright.document.chart;

import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;
import static org.staywright.unit.Unit.NEWTON_PER_MILLIMETRE;
import static org.staywright.unit.Unit.ROOM;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.staywright.document.draw.Axis;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic.Anchor;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Plot;
import org.staywright.document.draw.Role;
import org.staywright.mechanism.Point;
import org.staywright.part.Part;
import org.staywright.spring.LockedCurve;
import org.staywright.spring.LockedSpring;
import org.staywright.spring.LockingSpring;
import org.staywright.wording.Wording;

/** What a locked spring holds beyond its open force, 20 °C, and how stiff it is over its stroke. */
public final class LockedChart {

  private static final double WIDTH = 34;
  private static final double HEIGHT = 20;
  private static final int SAMPLES = 41;

  /** Places of the stroke that are drawn, as shares of it. */
  private static final double[] SHARES = {0.1, 0.5, 0.9};

  /** Drawn as far as this, less where stroke, gas or lock end it, m. */
  private static final double FAR = 20e-3;

  private static final Role[] CURVES = {Role.CURVE_1, Role.CURVE_2, Role.CURVE_3};

  private LockedChart() {}

  /**
   * A place to lock at.
   *
   * @param compression m
   * @param name beside its curve
   */
  public record LockedAt(double compression, String name) {}

  /** Force over deflection inwards, slow and fast, locked at three places. */
  public static Drawing forces(Part part, Wording wording) {
    double stroke = part.spring().stroke();
    List<LockedAt> places =
        Arrays.stream(SHARES)
            .mapToObj(share -> share * stroke)
            .map(at -> new LockedAt(at, wording.quantity(at, MILLIMETRE, 0)))
            .toList();
    String caption = wording.text("document.locked.caption");
    return forces(part, places, ROOM, caption, new Plot.Extent(WIDTH, HEIGHT), wording);
  }

  /**
   * The same.
   *
   * @param places three, the middle one told in words
   */
  static Drawing forces(
      Part part,
      List<LockedAt> places,
      double kelvin,
      String caption,
      Plot.Extent size,
      Wording wording) {
    LockingSpring spring = part.lock().orElseThrow();
    LockedCurve[] curves = new LockedCurve[places.size()];
    double far = 0;
    double most = 0;
    for (int i = 0; i < curves.length; i++) {
      LockedSpring locked = spring.locked(places.get(i).compression(), kelvin);
      double deflection = Math.min(FAR, locked.greatest());
      curves[i] = LockedCurve.of(locked, deflection, SAMPLES);
      far = Math.max(far, deflection);
      most = Math.max(most, curves[i].fast()[SAMPLES - 1]);
    }
    Plot plot = new Plot(Axis.within(0, MILLIMETRE.of(far), 8), size.upwards(0, most, 6), size);
    plot.frame(
        wording,
        wording.text("document.locked.deflection"),
        MILLIMETRE,
        wording.text("document.force"),
        NEWTON);
    double[] heights = new double[curves.length];
    for (int i = 0; i < curves.length; i++) {
      double[] x = millimetres(curves[i].deflection());
      String name = places.get(i).name();
      plot.curve(
          CURVES[i], wording.text("document.overlay-locked.solid", name), x, curves[i].slow());
      plot.dashed(
          CURVES[i], wording.text("document.overlay-locked.dashed", name), x, curves[i].fast());
      heights[i] = plot.place(0, curves[i].slow()[SAMPLES - 1]).y();
    }
    Integer[] upwards = {0, 1, 2};
    Arrays.sort(upwards, Comparator.comparingDouble(i -> heights[i]));
    double[] apart =
        OverlayChart.apart(Arrays.stream(heights).sorted().toArray(), 0, size.height());
    for (int i = 0; i < apart.length; i++) {
      int which = upwards[i];
      double[] x = millimetres(curves[which].deflection());
      Point beside = new Point(plot.place(x[SAMPLES - 1], 0).x() + 0.6, apart[i]);
      label(plot, CURVES[which], beside, places.get(which).name());
    }
    plot.caption(caption);
    LockedCurve middle = curves[1];
    return plot.drawing(
        "locked-forces",
        wording.text("document.locked-forces", part.number()),
        wording.text(
            "document.locked-forces.about",
            wording.quantity(middle.deflection()[SAMPLES - 1], MILLIMETRE, 1),
            wording.quantity(middle.slow()[SAMPLES - 1], NEWTON, 0),
            wording.quantity(middle.fast()[SAMPLES - 1], NEWTON, 0)));
  }

  /** Slope at the lock over the compression, and the open spring's beside it. */
  public static Drawing stiffness(Part part, Wording wording) {
    LockingSpring spring = part.lock().orElseThrow();
    double[] x = new double[SAMPLES];
    double[] locked = new double[SAMPLES];
    double[] open = new double[SAMPLES];
    double most = 0;
    int softest = 0;
    for (int i = 0; i < SAMPLES; i++) {
      double compression = spring.stroke() * i / (SAMPLES - 1);
      LockedSpring here = spring.locked(compression, ROOM);
      x[i] = MILLIMETRE.of(compression);
      locked[i] = MILLIMETRE.si(here.stiffness());
      open[i] = MILLIMETRE.si(here.openStiffness());
      most = Math.max(most, locked[i]);
      softest = locked[i] < locked[softest] ? i : softest;
    }
    Plot plot = new Plot(Axis.within(0, x[SAMPLES - 1], 8), Axis.around(0, most, 6), WIDTH, HEIGHT);
    plot.frame(
        wording,
        wording.text("document.compression"),
        MILLIMETRE,
        wording.text("document.locked.stiffness"),
        NEWTON_PER_MILLIMETRE);
    plot.curve(Role.CURVE_1, wording.text("document.locked.locked"), x, locked);
    plot.curve(Role.CURVE_2, wording.text("document.locked.open"), x, open);
    Point least = plot.place(x[softest], locked[softest]);
    plot.sketch().circle(Role.MARK, least, 0.22);
    label(
        plot,
        Role.CURVE_1,
        new Point(WIDTH + 0.6, plot.place(0, locked[SAMPLES - 1]).y()),
        wording.text("document.locked.locked"));
    label(
        plot,
        Role.CURVE_2,
        new Point(WIDTH + 0.6, plot.place(0, open[SAMPLES - 1]).y()),
        wording.text("document.locked.open"));
    return plot.drawing(
        "locked-stiffness",
        wording.text("document.locked-stiffness", part.number()),
        wording.text(
            "document.locked-stiffness.about",
            wording.bare(NEWTON_PER_MILLIMETRE.si(locked[softest]), NEWTON_PER_MILLIMETRE, 1),
            wording.bare(MILLIMETRE.si(x[softest]), MILLIMETRE, 0)));
  }

  private static void label(Plot plot, Role role, Point at, String text) {
    plot.sketch().text(role, at, Anchor.START, Size.NORMAL, text);
  }

  private static double[] millimetres(double[] metres) {
    double[] values = new double[metres.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = MILLIMETRE.of(metres[i]);
    }
    return values;
  }
}
