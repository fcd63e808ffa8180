package org.staywright.motion;

import java.util.Arrays;
import org.staywright.mechanism.Travel;

/**
 * A travel between its samples, as motion needs it: cubics that keep the lever the exact derivative
 * of the length, so that no energy is made or lost between them.
 */
public final class TravelSpline {

  private final double start;
  private final double end;
  private final double step;
  private final double[] length;
  private final double[] lever;
  private final double[] load;
  private final double[] slope;
  private final double[] work;
  private final double hand;
  private final double[] friction;
  private final Drag drag;

  /** With the mechanism's own friction alone. */
  public TravelSpline(Travel travel, double[] load, Drag drag) {
    this(travel, load, constant(travel), drag);
  }

  private static double[] constant(Travel travel) {
    double[] friction = new double[travel.q().length];
    Arrays.fill(friction, travel.friction());
    return friction;
  }

  /**
   * @param travel sampled evenly
   * @param load generalised load of the mass that moves, one of the travel's
   * @param friction at every sample, N·m or N
   * @param drag what resists its speed
   */
  public TravelSpline(Travel travel, double[] load, double[] friction, Drag drag) {
    this.friction = friction;
    this.drag = drag;
    start = travel.q()[0];
    end = travel.q()[travel.last()];
    step = (end - start) / travel.last();
    length = travel.length();
    lever = travel.lever();
    this.load = load;
    hand = travel.hand();
    int last = travel.last();
    slope = new double[last + 1];
    work = new double[last + 1];
    for (int i = 0; i <= last; i++) {
      int before = Math.max(0, i - 1);
      int after = Math.min(last, i + 1);
      slope[i] = (load[after] - load[before]) / ((after - before) * step);
    }
    for (int i = 1; i <= last; i++) {
      work[i] = work[i - 1] + step * area(load, slope, i - 1, 1);
    }
  }

  public double start() {
    return start;
  }

  public double end() {
    return end;
  }

  /** Lever of the hand, m or 1. */
  public double hand() {
    return hand;
  }

  /** Friction of the mechanism and of what acts along with its springs, N·m or N. */
  public double friction(double q) {
    int i = cell(q);
    double t = (q - start) / step - i;
    return (1 - t) * friction[i] + t * friction[i + 1];
  }

  /** What resists its speed besides the springs, N·m or N. */
  public double drag(double q, double speed) {
    return drag.at(q, speed);
  }

  /** Mount centre to mount centre, m. */
  public double length(double q) {
    int i = cell(q);
    return value(length, lever, i, (q - start) / step - i);
  }

  /** dL/dq, m/rad or 1. */
  public double lever(double q) {
    int i = cell(q);
    double t = (q - start) / step - i;
    return 6 * t * (1 - t) * (length[i + 1] - length[i]) / step
        + (1 + t * (3 * t - 4)) * lever[i]
        + t * (3 * t - 2) * lever[i + 1];
  }

  /** Q(q), positive where it opens, N·m or N. */
  public double load(double q) {
    int i = cell(q);
    return value(load, slope, i, (q - start) / step - i);
  }

  /** What the load does from the start to q, J. */
  public double work(double q) {
    int i = cell(q);
    return work[i] + step * area(load, slope, i, (q - start) / step - i);
  }

  private int cell(double q) {
    return Math.max(0, Math.min(length.length - 2, (int) Math.floor((q - start) / step)));
  }

  private double value(double[] y, double[] dy, int i, double t) {
    double u = 1 - t;
    return u * u * ((1 + 2 * t) * y[i] + t * step * dy[i])
        + t * t * ((3 - 2 * t) * y[i + 1] - u * step * dy[i + 1]);
  }

  /** ∫ of the same cubic from 0 to t. */
  private double area(double[] y, double[] dy, int i, double t) {
    double t2 = t * t;
    double t3 = t2 * t;
    double t4 = t3 * t;
    return y[i] * (t4 / 2 - t3 + t)
        + step * dy[i] * (t4 / 4 - 2 * t3 / 3 + t2 / 2)
        + y[i + 1] * (t3 - t4 / 2)
        + step * dy[i + 1] * (t4 / 4 - t3 / 3);
  }
}
