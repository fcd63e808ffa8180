package org.staywright.document.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.staywright.document.draw.Readings;
import org.staywright.document.draw.Role;

/** What a load does by itself, told from the forces that a hand needs. */
class FreeTest {

  private static final double[] TRAVEL = {0, 10, 20, 30};

  @Test
  void shutsThenStaysThenOpens() {
    double[] open = {30, 20, 10, -10};
    double[] close = {-10, 10, 20, 40};
    assertEquals(
        List.of(
            new Free.Stretch(Free.SHUTS, 0, 5),
            new Free.Stretch(Free.STAYS, 5, 25),
            new Free.Stretch(Free.OPENS, 25, 30)),
        Free.stretches(TRAVEL, open, close));
  }

  @Test
  void staysBetweenEvenWhereBothWaysLieBetweenTwoSamples() {
    double[] open = {30, 30, -10, -10};
    double[] close = {-10, -10, 30, 30};
    assertEquals(
        List.of(
            new Free.Stretch(Free.SHUTS, 0, 12.5),
            new Free.Stretch(Free.STAYS, 12.5, 17.5),
            new Free.Stretch(Free.OPENS, 17.5, 30)),
        Free.stretches(TRAVEL, open, close));
  }

  @Test
  void isOneStretchWhereNothingChanges() {
    double[] hand = {5, 5, 5, 5};
    assertEquals(List.of(new Free.Stretch(Free.STAYS, 0, 30)), Free.stretches(TRAVEL, hand, hand));
  }

  /** Held against reading the two curves place by place. */
  @Test
  void agreesWithTheCurvesEverywhere() {
    long seed = Long.getLong("staywright.seed", 20_261_125);
    System.out.println("FreeTest seed " + seed);
    Random random = new Random(seed);
    for (int run = 0; run < 200; run++) {
      double[] open = new double[TRAVEL.length];
      double[] close = new double[TRAVEL.length];
      for (int i = 0; i < TRAVEL.length; i++) {
        double friction = 1 + 10 * random.nextDouble();
        double balance = 40 * random.nextDouble() - 20;
        open[i] = friction + balance;
        close[i] = friction - balance;
      }
      List<Free.Stretch> stretches = Free.stretches(TRAVEL, open, close);
      Readings.Series opening = series(open);
      Readings.Series closing = series(close);
      for (double at = 0.05; at < 30; at += 0.1) {
        double place = at;
        Free way =
            stretches.stream()
                .filter(each -> each.from() <= place && place <= each.to())
                .findFirst()
                .orElseThrow()
                .way();
        double o = opening.at(at);
        double c = closing.at(at);
        if (Math.min(Math.abs(o), Math.abs(c)) > 1e-6) {
          assertEquals(
              o < 0 ? Free.OPENS : c < 0 ? Free.SHUTS : Free.STAYS,
              way,
              "seed " + seed + ", at " + at);
        }
      }
    }
  }

  private static Readings.Series series(double[] forces) {
    return new Readings.Series("", Role.CURVE_1, Readings.Look.SOLID, TRAVEL, forces);
  }
}
