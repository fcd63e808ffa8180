package org.staywright.document.chart;

import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.MILLIMETRE_PER_SECOND;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.staywright.document.draw.Axis;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic.Anchor;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Plot;
import org.staywright.document.draw.Role;
import org.staywright.fit.time.TimeFigures.Case;
import org.staywright.mechanism.Mechanism.Movement;
import org.staywright.mechanism.Point;
import org.staywright.motion.Motion;
import org.staywright.unit.Unit;
import org.staywright.wording.CornerText;
import org.staywright.wording.Wording;

/** Travel or speed over time after a release, a curve for each corner of springs and load. */
public final class MotionChart {

  private static final double WIDTH = 34;
  private static final double HEIGHT = 15;
  private static final Role[] ROLES = {Role.CURVE_1, Role.CURVE_2, Role.CURVE_3, Role.CURVE_4};

  private MotionChart() {}

  /**
   * @param code of what moves it, in addresses
   * @param cases one a corner
   * @param motion which of a case
   * @param speed whether speed is drawn, else travel
   */
  public static Drawing of(
      String code,
      List<Case> cases,
      Function<Case, Motion> motion,
      boolean speed,
      Movement kind,
      Wording wording) {
    Unit unit = kind == Movement.TURNS ? DEGREE : MILLIMETRE;
    double[][] times = new double[cases.size()][];
    double[][] values = new double[cases.size()][];
    for (int i = 0; i < cases.size(); i++) {
      Motion each = motion.apply(cases.get(i));
      times[i] = each.time();
      double[] si = speed ? each.speed() : each.q();
      values[i] = Arrays.stream(si).map(unit::of).toArray();
    }
    double latest = Arrays.stream(times).flatMapToDouble(Arrays::stream).max().orElse(0);
    double low = Arrays.stream(values).flatMapToDouble(Arrays::stream).min().orElse(0);
    double high = Arrays.stream(values).flatMapToDouble(Arrays::stream).max().orElse(0);
    Plot plot =
        new Plot(
            Axis.within(0, latest > 0 ? latest : 1, 8),
            Axis.around(Math.min(0, low), Math.max(0, high), 6),
            WIDTH,
            HEIGHT);
    String what = (speed ? "document.motion.speed." : "document.motion.travel.") + unit(kind);
    Unit shown = unit == MILLIMETRE && speed ? MILLIMETRE_PER_SECOND : unit;
    plot.frame(wording, wording.text("document.motion.time"), null, wording.text(what), shown);
    plot.level(Role.AXIS, 0);
    for (int i = 0; i < values.length; i++) {
      String at = CornerText.of(cases.get(i).corner(), wording);
      plot.curve(ROLES[i], at, times[i], values[i]);
      // A key at the right: ends of motions lie too close together for labels.
      plot.sketch()
          .text(ROLES[i], new Point(WIDTH + 0.6, 2 + 1.6 * i), Anchor.START, Size.NORMAL, at);
    }
    return plot.drawing(
        code + (speed ? "-speed" : "-travel"),
        wording.text("document.motion"),
        wording.text("document.motion.about", wording.number(latest, 2)));
  }

  private static String unit(Movement kind) {
    return kind == Movement.TURNS ? "turns" : "shifts";
  }
}
