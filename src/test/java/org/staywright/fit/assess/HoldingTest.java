package org.staywright.fit.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Figures.Hold;
import org.staywright.fit.job.LoadState;
import org.staywright.fit.job.SpringState;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.StraightLift;
import org.staywright.mechanism.Travel;

/** A weight that is lifted plumb, worked by hand: forces up and down, no levers. */
class HoldingTest {

  private static final double G = 9.80665;

  private static Travel plumb(double degrees) {
    Mounts mounts = new Mounts(new Point(0, -0.3), new Point(0, 0), 0, Mounts.RodEnd.EITHER);
    Masses masses = new Masses(10, 12, 8);
    return new StraightLift(masses, 0.2, Math.toRadians(degrees), 5, mounts).travel(0.2);
  }

  private static Hold hold(Travel travel) {
    return Holding.of(travel, new Holding.Ends(60, 100), new Holding.Ends(150, 120), 80, 0.03);
  }

  /** Up it is 12·g = 117.7 N and 8·g = 78.5 N against 100 N and 120 N. */
  @Test
  void eachFigureIsTheWorstOfFourCornersWithoutFriction() {
    Hold hold = hold(plumb(90));
    Corner weakHeavy = new Corner(SpringState.WEAK, LoadState.HEAVY);
    Corner strongLight = new Corner(SpringState.STRONG, LoadState.LIGHT);
    assertEquals(100 / (12 * G), hold.ratio().value(), 1e-12);
    assertEquals(weakHeavy, hold.ratio().corner());
    assertEquals(0.2, hold.ratio().travel(), 1e-12);
    assertEquals(100 - 12 * G, hold.open().value(), 1e-9);
    assertEquals(weakHeavy, hold.open().corner());
    assertEquals(10 * G - 80, hold.closed(), 1e-9);
    assertEquals(8 * G - 150, hold.closedLeast().value(), 1e-9);
    assertEquals(strongLight, hold.closedLeast().corner());
    assertEquals(0, hold.closedLeast().travel());
    assertEquals(150 - 8 * G, hold.latchPush(), 1e-9);
    assertEquals(12 * G - 60, hold.shuts(), 1e-9);
    assertEquals(0.03, hold.overCentre());
  }

  @Test
  void whereNothingClosesThereIsNoRatio() {
    assertNull(hold(plumb(-90)).ratio());
  }

  @Test
  void theRatioIsOfWhatOpensToWhatClosesWhicheverItIs() {
    assertEquals(1.25, Holding.ratio(100, -80));
    assertEquals(1.5, Holding.ratio(-20, 30));
    assertEquals(0, Holding.ratio(-20, -30));
    assertEquals(0, Holding.ratio(0, -30));
    assertEquals(Double.POSITIVE_INFINITY, Holding.ratio(20, 30));
  }

  /** By trying: no error of the springs up to the one stated changes the ratio by more. */
  @Test
  void theRatioIsNoMoreOffThanItSays() {
    for (double[] springs : new double[][] {{100, 120}, {-60, -50}, {-130, 110}}) {
      for (double degrees : new double[] {90, -90}) {
        Travel travel = plumb(degrees);
        double error = 0.01;
        double told = Holding.ratioError(travel, ends(springs[0]), ends(springs[1]), error);
        double most = 0;
        for (Corner corner : Corner.ALL) {
          double push = corner.spring() == SpringState.WEAK ? springs[0] : springs[1];
          double load = corner.load().of(travel)[travel.last()];
          double ratio = Holding.ratio(push, load);
          for (double off : new double[] {-error, error}) {
            double other = Holding.ratio(push + off, load);
            most = Double.isInfinite(ratio) ? most : Math.max(most, Math.abs(other - ratio));
          }
        }
        assertTrue(most <= told * 1.001, most + " / " + told);
        assertTrue(most == 0 || told <= 4 * most, most + " / " + told);
      }
    }
  }

  private static Holding.Ends ends(double open) {
    return new Holding.Ends(0, open);
  }
}
