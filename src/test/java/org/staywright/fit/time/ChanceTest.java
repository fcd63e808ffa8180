package org.staywright.fit.time;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.fit.time.Uncertainties.Source;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.Rigid;
import org.staywright.mechanism.Travel;
import org.staywright.part.Part;
import org.staywright.part.Range;

class ChanceTest {

  private static final Range RANGE = SampleRange.read();
  private static final Job LID = Samples.lid();
  private static final Fit FIT = Ranking.of(RANGE, LID).fits().get(0);
  private static final Part PART = FIT.part();

  @Test
  void meetsTheClosedFormForAMassThatAloneStrays() {
    // It holds while the mass factor stays under the hold ratio: a normal variable under a bound.
    double ratio = ChanceChecks.holdRatio(FIT);
    int draws = 100_000;
    for (double half : new double[] {0.2, 0.5, 1}) {
      Chance chance = Chance.of(LID, FIT, ChanceChecks.only(Source.MASS, half), draws, 7);
      double closed = new NormalDistribution(1, half / 2).cumulativeProbability(ratio);
      double error = Math.sqrt(closed * (1 - closed) / draws);
      assertEquals(closed, chance.holds(), 4 * error + 1e-9, "half-width " + half);
      assertEquals(Source.MASS, chance.mattersMost());
      assertEquals(1, chance.holdShares().get(Source.MASS), 0.02);
    }
  }

  @Test
  void isSureWhereNothingStrays() {
    Chance chance = Chance.of(LID, FIT, ChanceChecks.only(Source.MASS, 0), 10, 1);
    assertEquals(ChanceChecks.holdRatio(FIT) >= 1 ? 1 : 0, chance.holds());
    assertNull(chance.mattersMost());
    assertEquals(chance.years()[0], chance.years()[9], 0);
  }

  @Test
  void drawsTheSameForTheSameSeed() {
    Uncertainties usual = Uncertainties.usual(LID, PART);
    Chance once = Chance.of(LID, FIT, usual, 1000, 3);
    assertEquals(once.holds(), Chance.of(LID, FIT, usual, 1000, 3).holds());
    assertArrayEquals(once.years(), Chance.of(LID, FIT, usual, 1000, 3).years());
    assertTrue(once.yearsUntil(0.05) <= once.yearsUntil(0.5));
  }

  @Test
  void givesTheYearsAfterWhichTheMomentIsGone() {
    Chance sure = Chance.of(LID, FIT, ChanceChecks.only(Source.MASS, 0), 1, 1);
    double years = sure.yearsUntil(0.5);
    assertTrue(years > 0 && years < 100, years + " years");
    Travel travel = LID.mechanism().travel(LID.mechanism().end());
    int end = travel.last();
    double left = PART.wear().gasLeft(years, LID.conditions().cyclesPerYear());
    double x = FIT.figures().orElseThrow().lengths().extended() - travel.length()[end];
    double moment =
        FIT.count()
                * PART.spring().law(1, left).force(x, LID.conditions().nominal())
                * travel.lever()[end]
            + travel.load()[end];
    assertEquals(0, moment / travel.load()[end], 1e-3);
  }

  @Test
  void sharesAddUpToNearlyOne() {
    Chance chance = Chance.of(LID, FIT, Uncertainties.usual(LID, PART), 20_000, 11);
    double sum = chance.holdShares().values().stream().mapToDouble(Double::doubleValue).sum();
    assertEquals(1, sum, 0.05);
    assertEquals(0, chance.holdShares().get(Source.FRICTION), 1e-3);
    assertTrue(chance.handShares().get(Source.FRICTION) > 0);
  }

  @Test
  void placesLoadsOffTheirPlaceAsTheMechanismItselfWould() {
    long seed = 42;
    System.out.println("seed " + seed);
    Random random = new Random(seed);
    for (int i = 0; i < 50; i++) {
      Job job = random.nextBoolean() ? Samples.randomJob(random) : Samples.randomLift(random);
      Rigid meant = (Rigid) job.mechanism();
      StrayedGeometry placing = StrayedGeometry.of(meant, meant.travel(meant.end()));
      double[] off = random.doubles(7, -0.003, 0.003).toArray();
      placing.place(1 + off[0], off[1], off[2], off[3], off[4], off[5], off[6]);
      Travel is = moved(meant, off).travel(meant.end());
      for (int k = 0; k <= is.last(); k++) {
        assertEquals(is.length()[k], placing.length(k), 1e-12);
        assertEquals(is.lever()[k], placing.lever(k), 1e-12);
        assertEquals(is.load()[k], placing.load(k), 1e-9 * Math.max(1, Math.abs(is.load()[k])));
      }
    }
  }

  private static Rigid moved(Rigid meant, double[] off) {
    Mounts was = meant.mounts();
    Mounts mounts =
        new Mounts(
            new Point(was.frame().x() + off[3], was.frame().y() + off[4]),
            new Point(was.moving().x() + off[5], was.moving().y() + off[6]),
            was.lateralOffset(),
            was.rodEnd());
    return Samples.moved(meant, 1 + off[0], off[1], off[2], mounts);
  }
}
