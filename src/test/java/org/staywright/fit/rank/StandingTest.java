package org.staywright.fit.rank;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.Weights;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.StraightLift;
import org.staywright.part.Range;

class StandingTest {

  private static final Candidate CALM = candidate(0, 1, 10, 0.1, "40.00", 7);
  private static final Candidate CHEAP = candidate(1, 1, 25, 0.2, "20.00", 14);
  private static final Candidate SOON = candidate(2, 2, 30, 0.3, "60.00", 0);
  private static final Candidate PRICELESS = candidate(3, 2, 40, 0.9, null, 0);
  private static final List<Candidate> ALL = List.of(PRICELESS, SOON, CHEAP, CALM);

  private static Candidate candidate(
      int row, int count, double rms, double margin, String price, int days) {
    return new Candidate(
        row,
        count,
        Misses.NONE,
        rms,
        margin,
        () -> 0.25,
        price == null ? null : new BigDecimal(price),
        days,
        null);
  }

  private static List<Integer> order(RankBy by) {
    Job lid = Samples.lid();
    Job job = Samples.job(lid.mechanism(), lid.requirements().openStop(), by);
    Standing standing = new Standing(job, ALL, List.of());
    return ALL.stream().sorted(standing.order()).map(Candidate::row).toList();
  }

  /**
   * Worked by hand from the contract's formula, with a hand limit of 50 N and 20.00 the cheapest.
   */
  @Test
  void balancedScoreIsTheWeightedSumOfItsFiveTermsLessWhatOneSideLoses() {
    Standing standing = new Standing(Samples.lid(), ALL, List.of());
    // effort 1 − 10/50 = 0.8, margin 0.1/0.5 = 0.2, landing 1 − 0.25/1 = 0.75, price 20/40 = 0.5,
    // supply 1/(1 + 1) = 0.5; one spring at one side of a flap loses ten points
    assertEquals(
        100 * (0.4 * 0.8 + 0.25 * 0.2 + 0.1 * 0.75 + 0.15 * 0.5 + 0.1 * 0.5) - 10,
        standing.score(CALM),
        1e-9);
    // effort 0.2, margin 1 (capped), landing 0.75, price 0 (unknown), supply 1; a pair loses
    // nothing
    assertEquals(100 * (0.4 * 0.2 + 0.25 + 0.1 * 0.75 + 0.1), standing.score(PRICELESS), 1e-9);
  }

  @Test
  void theTermsOfAFitAddUpToItsScoreInTheRanking() {
    Job job = Samples.lid();
    Range range = SampleRange.read();
    List<Fit> fits = Ranking.of(range, job).fits();
    List<Score> scores = Score.of(job, range, fits);
    for (int i = 0; i < fits.size(); i++) {
      assertEquals(fits.get(i).score(), scores.get(i).total(job.weights()), 1e-9);
    }
    assertEquals(100, new Score(1, 1, 1, 1, 1, 0).total(Weights.of(3, 1, 1, 0, 2)), 1e-9);
  }

  @Test
  void eachOrderPutsFirstWhatItNames() {
    assertEquals(List.of(0, 1, 2, 3), order(RankBy.LEAST_EFFORT));
    assertEquals(List.of(1, 0, 2, 3), order(RankBy.LOWEST_COST));
    assertEquals(List.of(2, 3, 0, 1), order(RankBy.SOONEST));
    assertEquals(List.of(3, 2, 1, 0), order(RankBy.MOST_MARGIN));
  }

  @Test
  void tiesGoByPartNumberThenCount() {
    Candidate a1 = candidate(4, 2, 10, 0.1, "40.00", 7);
    Candidate a2 = candidate(4, 3, 10, 0.1, "40.00", 7);
    Candidate b1 = candidate(5, 2, 10, 0.1, "40.00", 7);
    Standing standing = new Standing(Samples.lid(), List.of(a1, a2, b1), List.of());
    assertEquals(List.of(a1, a2, b1), Stream.of(b1, a2, a1).sorted(standing.order()).toList());
  }

  @Test
  void aTermIsNeverBelowNoneNorAboveAll() {
    assertEquals(0, Standing.margin(-1));
    assertEquals(0.2, Standing.margin(0.1), 1e-12);
    assertEquals(1, Standing.margin(0.7));
    assertEquals(0, Standing.landing(null));
    assertEquals(1, Standing.landing(0.0));
    assertEquals(0.75, Standing.landing(0.25));
    assertEquals(0, Standing.landing(3.0));
    Score score = new Standing(Samples.lid(), ALL, List.of()).terms(candidate(6, 2, 80, 0, "0", 7));
    assertEquals(0, score.effort());
    assertEquals(0, score.price());
    assertEquals(0.5, score.supply(), 1e-12);
  }

  @Test
  void onlyOneSpringAtAFlapIsOneSided() {
    Mounts mounts = new Mounts(new Point(0, 0), new Point(0.3, 0), 0, Mounts.RodEnd.EITHER);
    StraightLift lift = new StraightLift(new Masses(5, 5, 5), 0.2, 0, 0, mounts);
    assertEquals(10, Standing.lost(Samples.lid(), 1));
    assertEquals(0, Standing.lost(Samples.lid(), 2));
    Job lifting = Samples.job(lift, Samples.lid().requirements().openStop(), RankBy.BALANCED);
    assertEquals(0, Standing.lost(lifting, 1));
  }

  @Test
  void whereNothingFitsTheCheapestOfTheNearSetsThePrice() {
    Standing standing = new Standing(Samples.lid(), List.of(), ALL);
    assertEquals(0.5, standing.terms(CALM).price(), 1e-12);
    assertEquals(1, standing.terms(CHEAP).price(), 1e-12);
  }

  @Test
  void whatIsNearComesByItsMissesWhateverTheOrder() {
    Candidate little = near(1, new Misses(1, 0.1), 60);
    Candidate more = near(0, new Misses(1, 0.3), 10);
    Candidate twice = near(2, new Misses(2, 0.05), 5);
    Candidate calmer = near(3, new Misses(1, 0.1), 20);
    Job lid = Samples.lid();
    Job job = Samples.job(lid.mechanism(), lid.requirements().openStop(), RankBy.LOWEST_COST);
    Standing standing = new Standing(job, List.of(), List.of(little, more, twice, calmer));
    assertEquals(
        List.of(calmer, little, more, twice),
        Stream.of(twice, more, little, calmer).sorted(standing.order()).toList());
    assertEquals(
        List.of(PRICELESS, calmer), Stream.of(calmer, PRICELESS).sorted(standing.order()).toList());
  }

  private static Candidate near(int row, Misses misses, double rms) {
    return new Candidate(row, 2, misses, rms, 0, () -> null, BigDecimal.TEN, 0, null);
  }
}
