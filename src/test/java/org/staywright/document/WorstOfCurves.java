package org.staywright.document;

import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.job.Corner;

/**
 * What the curves of the hand alone come to at worst. Half of closing less opening is what the load
 * is held by.
 */
final class WorstOfCurves {

  /** The greatest of something over corners. */
  record Worst(double value, int sample, Corner corner) {}

  private WorstOfCurves() {}

  interface Way {
    double[] of(FitCurve.Hand hand);
  }

  static Worst greatest(FitCurve curve, Way way) {
    Worst most = null;
    for (FitCurve.Hand hand : curve.corners()) {
      double[] forces = way.of(hand);
      for (int i = 0; i < forces.length; i++) {
        if (most == null || forces[i] > most.value) {
          most = new Worst(forces[i], i, hand.corner());
        }
      }
    }
    return most;
  }

  /** Above zero it stays open. */
  static Worst leastHeld(FitCurve curve, int sample) {
    Worst least = null;
    for (FitCurve.Hand hand : curve.corners()) {
      double held = held(hand, sample);
      if (least == null || held < least.value) {
        least = new Worst(held, sample, hand.corner());
      }
    }
    return least;
  }

  static double greatestHeld(FitCurve curve, int sample) {
    return curve.corners().stream().mapToDouble(hand -> held(hand, sample)).max().orElseThrow();
  }

  static double held(FitCurve.Hand hand, int sample) {
    return (hand.close()[sample] - hand.open()[sample]) / 2;
  }

  static double rms(FitCurve curve) {
    double[] open = curve.nominal().open();
    double[] close = curve.nominal().close();
    double squares = 0;
    for (int i = 0; i < open.length; i++) {
      squares += open[i] * open[i] + close[i] * close[i];
    }
    return Math.sqrt(squares / (2 * open.length));
  }
}
