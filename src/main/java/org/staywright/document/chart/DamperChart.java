package org.staywright.document.chart;

import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.MILLIMETRE_PER_SECOND;
import static org.staywright.unit.Unit.NEWTON;

import org.staywright.document.draw.Axis;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic.Anchor;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Plot;
import org.staywright.document.draw.Role;
import org.staywright.mechanism.Point;
import org.staywright.spring.Damper;
import org.staywright.wording.Wording;

/** Resistance of a damper over its speed, each way its own curve. */
public final class DamperChart {

  private static final double WIDTH = 34;
  private static final double HEIGHT = 20;
  private static final int SAMPLES = 81;

  /** Drawn up to so many times the speed at which it is told. */
  private static final double FAR = 2.5;

  /** Least distance of the names of both curves, in type sizes. */
  private static final double APART = 1.3;

  private DamperChart() {}

  public static Drawing of(String number, Damper damper, Wording wording) {
    double fastest = FAR * damper.compressing().speed();
    double[] speed = new double[SAMPLES];
    double[] in = new double[SAMPLES];
    double[] out = new double[SAMPLES];
    for (int i = 0; i < SAMPLES; i++) {
      double v = fastest * i / (SAMPLES - 1);
      speed[i] = MILLIMETRE.of(v);
      in[i] = damper.force(v);
      out[i] = -damper.force(-v);
    }
    double most = Math.max(in[SAMPLES - 1], out[SAMPLES - 1]);
    Plot plot =
        new Plot(Axis.within(0, MILLIMETRE.of(fastest), 8), Axis.around(0, most, 6), WIDTH, HEIGHT);
    plot.frame(
        wording,
        wording.text("document.speed"),
        MILLIMETRE_PER_SECOND,
        wording.text("document.force"),
        NEWTON);
    double outAt = plot.place(0, out[SAMPLES - 1]).y();
    double inAt = plot.place(0, in[SAMPLES - 1]).y();
    if (damper.extending().equals(damper.compressing())) {
      String both = wording.text("document.damper.both");
      plot.curve(Role.CURVE_1, both, speed, out);
      label(plot, Role.CURVE_1, outAt, both);
    } else {
      plot.curve(Role.CURVE_1, wording.text("document.damper.out"), speed, out);
      plot.curve(Role.CURVE_2, wording.text("document.damper.in"), speed, in);
      double apart = Math.max(0, APART - Math.abs(inAt - outAt)) / 2;
      double away = inAt < outAt ? -apart : apart;
      label(plot, Role.CURVE_1, outAt - away, wording.text("document.damper.out"));
      label(plot, Role.CURVE_2, inAt + away, wording.text("document.damper.in"));
    }
    return plot.drawing(
        "damper-forces",
        wording.text("document.damper-chart", number),
        wording.text(
            "document.damper-chart.about",
            wording.bare(damper.compressing().speed(), MILLIMETRE_PER_SECOND, 0),
            wording.quantity(damper.extending().force(), NEWTON, 0),
            wording.quantity(damper.compressing().force(), NEWTON, 0)));
  }

  private static void label(Plot plot, Role role, double y, String text) {
    plot.sketch().text(role, new Point(WIDTH + 0.6, y), Anchor.START, Size.NORMAL, text);
  }
}
