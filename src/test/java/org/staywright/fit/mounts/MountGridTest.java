package org.staywright.fit.mounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.staywright.Effort;
import org.staywright.fit.RandomRange;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Criteria;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.rank.Candidate;
import org.staywright.fit.rank.Screening;
import org.staywright.fit.rank.Standing;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.part.Range;

/**
 * The mount search against every part at every point of a grid, on random jobs. Replay a failure
 * with -Dstaywright.seed=….
 */
class MountGridTest {

  /** Of these jobs some point of the grid has a fit; most random jobs have none. */
  private static final int[] JOBS = {
    6, 12, 13, 21, 33, 39, 40, 46, 52, 61, 63, 67, 69, 75, 82, 87, 97, 99, 109, 117
  };

  private static final int PARTS = 150;
  private static final int STEPS = 5;

  /** The search may miss the grid's best by so much of its figure. */
  private static final double WORSE = 0.03;

  private static final long SEED = 20_261_125;

  private final long seed = Long.getLong("staywright.seed", SEED);

  /** Of those, where some point of the grid keeps what {@link #asked} adds. */
  private static final int[] BEHAVED = {13, 18, 21, 33};

  @Test
  void isNeverMuchWorseThanAGrid() {
    System.out.println("MountGridTest seed " + seed);
    List<String> missed = new ArrayList<>();
    int[] jobs = Effort.of(JOBS, 3);
    int compared = 0;
    for (int i : jobs) {
      compared += compare(i, false, missed) ? 1 : 0;
    }
    assertTrue(missed.isEmpty(), String.join("; ", missed));
    if (seed == SEED) {
      assertEquals(jobs.length, compared, "jobs that the grid fits");
    }
  }

  @Test
  void norIsItWhereTheLoadIsToBehave() {
    System.out.println("MountGridTest seed " + seed);
    List<String> missed = new ArrayList<>();
    int[] jobs = Effort.of(BEHAVED, 2);
    int compared = 0;
    for (int i : jobs) {
      compared += compare(i, true, missed) ? 1 : 0;
    }
    assertTrue(missed.isEmpty(), String.join("; ", missed));
    if (seed == SEED) {
      assertEquals(jobs.length, compared, "jobs that the grid fits");
    }
  }

  /** What may be asked besides, by turns. */
  private static Requirements asked(int turn, Job job) {
    Mechanism mechanism = job.mechanism();
    double way = mechanism.end() - mechanism.start();
    double late = mechanism.start() + 0.7 * way;
    return turn % 3 == 0
        ? job.requirements().with(Criterion.LATCH_PUSH, 100)
        : job.requirements().with(Criterion.RISES, late);
  }

  /**
   * @param behaving whether something is asked besides, by turns
   * @return whether the grid has a fit at all
   */
  private boolean compare(int i, boolean behaving, List<String> missed) {
    Random random = new Random(seed + i);
    Range range = RandomRange.of(random, PARTS);
    Job drawn = i % 3 == 2 ? Samples.randomLift(random) : Samples.randomJob(random);
    Job job = behaving ? drawn.asking(asked(i / 3, drawn)) : drawn;
    Zones zones = around(random, job.mechanism().rigid().orElseThrow().mounts());
    List<Candidate> grid = grid(job, range, zones);
    if (grid.isEmpty()) {
      return false;
    }
    String where = "seed " + (seed + i) + ", by " + job.rankBy();
    Found found = MountSearch.of(range, job, zones, 1, Progress.UNSEEN);
    assertFalse(found.arrangements().isEmpty(), where);
    Fit first = found.arrangements().get(0).fit();
    Candidate ours =
        Candidate.of(Criteria.of(job), range.row(first.part().number()).orElseThrow(), first);
    List<Candidate> all = new ArrayList<>(grid);
    all.add(ours);
    Standing standing = new Standing(job, all, List.of());
    Candidate best = grid.stream().min(standing.order()).orElseThrow();
    boolean good =
        switch (job.rankBy()) {
          case LEAST_EFFORT -> ours.handRms() <= (1 + WORSE) * best.handRms();
          case MOST_MARGIN -> ours.margin() >= (1 - WORSE) * best.margin();
          case BALANCED -> standing.score(ours) >= (1 - WORSE) * standing.score(best);
          case LOWEST_COST -> price(ours) <= (1 + WORSE) * price(best);
          case SOONEST ->
              ours.days() < best.days()
                  || ours.days() == best.days() && price(ours) <= (1 + WORSE) * price(best);
        };
    if (!good) {
      missed.add(where + ": grid " + said(best) + ", ours " + said(ours));
    }
    return true;
  }

  private static String said(Candidate each) {
    return String.format(
        "%d × %d: rms %.3f, margin %.3f, price %s, %d days",
        each.count(), each.row(), each.handRms(), each.margin(), each.setPrice(), each.days());
  }

  private static double price(Candidate candidate) {
    return candidate.setPrice() == null
        ? Double.POSITIVE_INFINITY
        : candidate.setPrice().doubleValue();
  }

  private static Zones around(Random random, Mounts mounts) {
    return new Zones(
        around(random, mounts.frame()),
        around(random, mounts.moving()),
        List.of(),
        mounts.lateralOffset(),
        mounts.rodEnd());
  }

  private static Zone around(Random random, Point point) {
    double width = 0.2 * random.nextDouble();
    double height = random.nextInt(4) == 0 ? 0 : 0.2 * random.nextDouble();
    return new Zone(
        point.x() - width * random.nextDouble(),
        point.x() + width * random.nextDouble(),
        point.y() - height * random.nextDouble(),
        point.y() + height * random.nextDouble());
  }

  /** What fits at any point of the grid. */
  private static List<Candidate> grid(Job job, Range range, Zones zones) {
    List<Candidate> fits = new ArrayList<>();
    int dimension = zones.free();
    int points = (int) Math.pow(STEPS, dimension);
    for (int i = 0; i < points; i++) {
      double[] share = new double[dimension];
      int rest = i;
      for (int d = 0; d < dimension; d++) {
        share[d] = (double) (rest % STEPS) / (STEPS - 1);
        rest /= STEPS;
      }
      Job there = job.at(zones.at(share));
      if (there.mechanism().faults().isEmpty()) {
        fits.addAll(new Screening(there, range).fits());
      }
    }
    return fits;
  }
}
