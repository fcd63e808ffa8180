package org.staywright.document.chart;

import static org.staywright.unit.Unit.NEWTON;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.fit.assess.FitCurve;
import org.staywright.mechanism.Point;
import org.staywright.wording.Wording;

/**
 * Hand force over the travel at its worst in any corner, small enough for a table's row: opening,
 * closing, zero, limit.
 */
public final class Sparkline {

  /** In type sizes. */
  private static final double WIDTH = 10;

  private static final double HEIGHT = 2.6;

  private Sparkline() {}

  /**
   * @param limit largest hand force allowed, N: forces beyond twice that run along the edge
   */
  public static Drawing of(FitCurve curve, double limit, Wording wording) {
    Sketch sketch = new Sketch(1);
    double zero = HEIGHT / 2;
    double scale = zero / (2 * limit);
    sketch.line(Role.GRID, 0, zero, WIDTH, zero);
    sketch.line(Role.LIMIT, 0, zero + limit * scale, WIDTH, zero + limit * scale);
    double[] open = curve.openMost();
    double[] close = curve.closeMost();
    sketch.path(Role.CURVE_2, points(open, scale));
    sketch.path(Role.CURVE_3, points(close, scale));
    String about =
        wording.text("document.sparkline.about", most(open, wording), most(close, wording));
    return sketch.drawing(wording.text("document.sparkline"), about, 0.2);
  }

  /** Rounded up, so that no curve exceeds it; below zero nothing is asked of the hand. */
  private static String most(double[] forces, Wording wording) {
    double most = Arrays.stream(forces).max().orElseThrow();
    return wording.quantity(Math.max(0, most), NEWTON, 0, RoundingMode.CEILING);
  }

  private static List<Point> points(double[] forces, double scale) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < forces.length; i += 2) {
      double y = HEIGHT / 2 + forces[i] * scale;
      double x = WIDTH * i / (forces.length - 1);
      points.add(new Point(x, Math.max(0, Math.min(HEIGHT, y))));
    }
    return points;
  }
}
