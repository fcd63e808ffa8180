package org.staywright.fit.assess;

import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Extreme;
import org.staywright.fit.job.Figures.Hold;
import org.staywright.fit.job.SpringState;
import org.staywright.mechanism.Travel;

/** What keeps a load open and shut in its four corners, friction left out. */
public final class Holding {

  /**
   * Moment of the springs alone, N·m or N.
   *
   * @param closed at the start of the travel
   * @param open at its end
   */
  public record Ends(double closed, double open) {}

  private Holding() {}

  /**
   * @param weak springs
   * @param strong springs
   * @param nominal moment of the nominal springs at the start
   * @param overCentre where they pass their dead centre, null for nowhere
   */
  public static Hold of(Travel travel, Ends weak, Ends strong, double nominal, Double overCentre) {
    int last = travel.last();
    Extreme ratio = null;
    Extreme open = null;
    Extreme shut = null;
    double shuts = Double.NEGATIVE_INFINITY;
    for (Corner corner : Corner.ALL) {
      Ends springs = corner.spring() == SpringState.WEAK ? weak : strong;
      double[] load = corner.load().of(travel);
      double each = ratio(springs.open, load[last]);
      ratio = each < Double.POSITIVE_INFINITY ? lesser(ratio, each, travel, last, corner) : ratio;
      open = lesser(open, (springs.open + load[last]) / travel.hand(), travel, last, corner);
      double closing = -(springs.closed + load[0]);
      shut = lesser(shut, closing, travel, 0, corner);
      shuts = Math.max(shuts, closing / travel.hand());
    }
    return new Hold(
        ratio,
        open,
        -(nominal + travel.load()[0]),
        shut,
        -shut.value() / travel.hand(),
        shuts,
        overCentre);
  }

  /** (max(S, 0) + max(Q, 0)) / (max(−S, 0) + max(−Q, 0)), infinite where nothing closes. */
  public static double ratio(double springs, double load) {
    double closes = closes(springs, load);
    return closes == 0
        ? Double.POSITIVE_INFINITY
        : (Math.max(springs, 0) + Math.max(load, 0)) / closes;
  }

  private static double closes(double springs, double load) {
    return Math.max(-springs, 0) + Math.max(-load, 0);
  }

  private static Extreme lesser(
      Extreme least, double value, Travel travel, int sample, Corner corner) {
    return least == null || value < least.value()
        ? new Extreme(value, travel.q()[sample], corner)
        : least;
  }

  /**
   * How far the least ratio may be off.
   *
   * @param error of the springs' moment at the end, N·m or N
   */
  public static double ratioError(Travel travel, Ends weak, Ends strong, double error) {
    int last = travel.last();
    double most = 0;
    for (Corner corner : Corner.ALL) {
      double springs = (corner.spring() == SpringState.WEAK ? weak : strong).open;
      double load = corner.load().of(travel)[last];
      double closes = closes(springs, load);
      if (closes > 0) {
        most = Math.max(most, error * (1 + ratio(springs, load)) / closes);
      }
    }
    return most;
  }
}
