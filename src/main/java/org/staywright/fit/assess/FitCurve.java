package org.staywright.fit.assess;

import java.util.List;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Job;
import org.staywright.mechanism.Travel;

/**
 * Hand forces over the travel of one fit, N; positive where the hand must work.
 *
 * @param travel the samples
 * @param nominal what is most likely
 * @param corners the four worst
 */
public record FitCurve(Travel travel, Hand nominal, List<Hand> corners) {

  /**
   * @param corner that it is in
   * @param open opening slowly
   * @param close closing slowly
   */
  public record Hand(Corner corner, double[] open, double[] close) {

    private static Hand of(Corner corner, Travel travel, Forces forces) {
      double[] load = corner.load().of(travel);
      Hand hand = new Hand(corner, new double[load.length], new double[load.length]);
      for (int i = 0; i < load.length; i++) {
        hand.open[i] = forces.open(travel, load, i);
        hand.close[i] = forces.close(travel, load, i);
      }
      return hand;
    }
  }

  public FitCurve {
    corners = List.copyOf(corners);
  }

  /** The curve of a fit in its job. */
  public static FitCurve of(Job job, Fit fit) {
    Hung hung = Hung.of(fit);
    Path path = new Paths(job).of(hung.extended());
    Travel travel = path.travel();
    Figuring.States states = Figuring.States.of(state -> Forces.of(job, path, hung, state));
    return new FitCurve(
        travel,
        Hand.of(Corner.NOMINAL, travel, states.nominal()),
        Corner.ALL.stream()
            .map(corner -> Hand.of(corner, travel, states.of(corner.spring())))
            .toList());
  }

  /** The greatest of the corners at every sample, opening. */
  public double[] openMost() {
    return extreme(true, 1);
  }

  /** The least of the corners at every sample, opening. */
  public double[] openLeast() {
    return extreme(true, -1);
  }

  public double[] closeMost() {
    return extreme(false, 1);
  }

  public double[] closeLeast() {
    return extreme(false, -1);
  }

  private double[] extreme(boolean open, int sign) {
    double[] extreme = (open ? corners.get(0).open : corners.get(0).close).clone();
    for (Hand hand : corners) {
      double[] each = open ? hand.open : hand.close;
      for (int i = 0; i < extreme.length; i++) {
        extreme[i] = sign * Math.max(sign * extreme[i], sign * each[i]);
      }
    }
    return extreme;
  }
}
