package org.staywright.document.chart;

import static org.staywright.unit.Unit.CELSIUS;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;
import static org.staywright.unit.Unit.ROOM;

import java.util.Comparator;
import java.util.stream.IntStream;
import org.staywright.document.draw.Axis;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic.Anchor;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Plot;
import org.staywright.document.draw.Role;
import org.staywright.mechanism.Point;
import org.staywright.part.Part;
import org.staywright.spring.ForceLaw;
import org.staywright.spring.Spring;
import org.staywright.wording.Wording;

/**
 * Force over compression at a part's coldest, at 20 °C and at its hottest: a band each, its lower
 * edge the rod coming out, its upper edge the rod pushed in.
 */
public final class ForceChart {

  private static final double WIDTH = 34;
  private static final double PAPER_WIDTH = 46;
  private static final double HEIGHT = 20;
  private static final double FLAT = 9;
  private static final int SAMPLES = 41;
  private static final Role[] BANDS = {Role.BAND_1, Role.BAND_2, Role.BAND_3};
  private static final Role[] CURVES = {Role.CURVE_1, Role.CURVE_2, Role.CURVE_3};

  private final Part part;
  private final ForceLaw law;
  private final Wording wording;
  private final boolean fast;
  private final int sense;
  private final double rest;
  private final double[] kelvin;
  private final double[] compression = new double[SAMPLES];
  private final Plot plot;

  private ForceChart(Part part, boolean fast, double width, double height, Wording wording) {
    this.part = part;
    this.law = part.spring().law();
    this.wording = wording;
    this.fast = fast && part.gas().isPresent();
    this.kelvin = new double[] {part.limits().coldest(), ROOM, part.limits().hottest()};
    this.sense = part.spring().sense();
    this.rest = part.spring().restCompression();
    double stroke = part.spring().stroke();
    for (int i = 0; i < SAMPLES; i++) {
      compression[i] = stroke * i / (SAMPLES - 1);
    }
    double most = 0;
    for (double each : kelvin) {
      most = Math.max(most, law.taking(stroke - rest, each));
    }
    if (this.fast) {
      most = Math.max(most, sense * law.fast(rest, stroke - rest, ROOM).force(stroke - rest));
    }
    this.plot =
        new Plot(
            Axis.within(0, MILLIMETRE.of(stroke), 8),
            Axis.around(0, most, height == FLAT ? 4 : 6),
            width,
            height);
  }

  /** Slow strokes alone. */
  public static Drawing of(Part part, Wording wording) {
    return new ForceChart(part, false, WIDTH, HEIGHT, wording).draw();
  }

  /** With the limit of a stroke too fast for heat to pass, at 20 °C; a coil has none. */
  public static Drawing withFastLimit(Part part, Wording wording) {
    return new ForceChart(part, true, WIDTH, HEIGHT, wording).draw();
  }

  /** The same as wide as a page, its type no larger than the text around it. */
  public static Drawing forPaper(Part part, Wording wording) {
    return new ForceChart(part, true, PAPER_WIDTH, HEIGHT, wording).draw();
  }

  /** The same where the page has other things to hold. */
  public static Drawing flat(Part part, Wording wording) {
    return new ForceChart(part, true, PAPER_WIDTH, FLAT, wording).draw();
  }

  private Drawing draw() {
    plot.frame(
        wording,
        wording.text("document.compression"),
        MILLIMETRE,
        wording.text("document.force"),
        NEWTON);
    for (int i = 0; i < kelvin.length; i++) {
      double[] out = forces(kelvin[i], false);
      double[] in = forces(kelvin[i], true);
      String at = celsius(kelvin[i]);
      int lower = plot.curve(CURVES[i], wording.text("document.force.out", at), millimetres(), out);
      int upper = plot.curve(CURVES[i], wording.text("document.force.in", at), millimetres(), in);
      plot.band(BANDS[i], lower, upper);
    }
    plot.caption(wording.text("document.force.bands"));
    if (fast) {
      plot.curve(Role.FAST, wording.text("document.force.fast"), millimetres(), fastForces());
      fastLabel();
    }
    marks();
    endLabels();
    return plot.drawing(
        "force",
        wording.text("document.force-chart", part.number()),
        wording.text(
            "document.force-chart.about",
            celsius(kelvin[0]),
            celsius(kelvin[2]),
            newtons(law.giving(part.spring().nearGauge(), ROOM)),
            newtons(law.giving(part.spring().farGauge(), ROOM))));
  }

  private double[] forces(double temperature, boolean in) {
    double[] forces = new double[SAMPLES];
    for (int i = 0; i < SAMPLES; i++) {
      forces[i] =
          in ? law.taking(compression[i], temperature) : law.giving(compression[i], temperature);
    }
    return forces;
  }

  private double[] fastForces() {
    ForceLaw.Fast stroke = law.fast(rest, part.spring().stroke() - rest, ROOM);
    double[] forces = new double[SAMPLES];
    for (int i = 0; i < SAMPLES; i++) {
      forces[i] = sense * stroke.force(compression[i]);
    }
    return forces;
  }

  /** Low in the chart, where no curve of a charged spring comes. */
  private void fastLabel() {
    plot.sketch().line(Role.FAST, 1, 1.3, 4, 1.3);
    String text = wording.text("document.force.fast");
    plot.sketch().text(Role.LABEL, new Point(4.6, 1.3), Anchor.START, Size.SMALL, text);
  }

  private double[] millimetres() {
    double[] millimetres = new double[SAMPLES];
    for (int i = 0; i < SAMPLES; i++) {
      millimetres[i] = MILLIMETRE.of(compression[i]);
    }
    return millimetres;
  }

  /** F1 to F4 where they are measured. */
  private void marks() {
    Spring spring = part.spring();
    double[] places = {spring.nearGauge(), spring.farGauge()};
    for (int i = 0; i < 2; i++) {
      mark(places[i], law.giving(places[i], ROOM), "F" + (1 + i), -1);
      mark(places[i], law.taking(places[i], ROOM), "F" + (3 + i), 1);
    }
  }

  private void mark(double at, double force, String name, int side) {
    Point place = plot.place(MILLIMETRE.of(at), force);
    plot.sketch().circle(Role.MARK, place, 0.22);
    // Off the axis, however long the stroke.
    double clear = Math.max(1, Math.min(plot.width() - 1, place.x()));
    Point beside = new Point(clear, place.y() + side);
    plot.sketch().text(Role.LABEL, beside, Anchor.MIDDLE, Size.SMALL, name);
  }

  /** Temperatures at the right ends in their order, pushed apart where the curves lie close. */
  private void endLabels() {
    double stroke = part.spring().stroke();
    double least = 0;
    for (int i : rising(stroke)) {
      Point at = plot.place(MILLIMETRE.of(stroke), middle(stroke, i));
      double y = Math.max(least, at.y());
      least = y + 1.2;
      plot.sketch()
          .text(
              CURVES[i],
              new Point(plot.width() + 0.6, y),
              Anchor.START,
              Size.NORMAL,
              celsius(kelvin[i]));
    }
  }

  /** Which temperature gives least, which more: gas gets stronger when hot, a coil weaker. */
  private int[] rising(double compression) {
    return IntStream.range(0, kelvin.length)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> middle(compression, i)))
        .mapToInt(i -> i)
        .toArray();
  }

  private double middle(double compression, int i) {
    return sense * law.force(compression, kelvin[i]);
  }

  private String celsius(double temperature) {
    return wording.quantity(temperature, CELSIUS, 0);
  }

  private String newtons(double force) {
    return wording.quantity(force, NEWTON, 0);
  }
}
