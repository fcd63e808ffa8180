package org.staywright.fit.mounts;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.staywright.fit.RandomRange;
import org.staywright.fit.Samples;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Travel;
import org.staywright.part.Range;

/** The rough look with its bounds against the same that makes figures of every candidate. */
class CoarseSearchTest {

  private static final int JOBS = 24;
  private static final int PAIRS = 64;
  private static final long SEED = 20_261_130;

  private final long seed = Long.getLong("staywright.seed", SEED);

  @Test
  void passesOverNothingThatIsBetter() {
    System.out.println("CoarseSearchTest seed " + seed);
    int found = 0;
    int stops = 0;
    for (int i = 0; i < JOBS; i++) {
      Random random = new Random(seed + i);
      Range range = RandomRange.of(random, 150);
      Job drawn = i % 3 == 2 ? Samples.randomLift(random) : Samples.randomJob(random);
      Job job =
          i % 2 == 0 ? drawn : drawn.asking(drawn.requirements().with(Criterion.HOLD_OPEN, 20));
      Mounts hung = job.mechanism().rigid().orElseThrow().mounts();
      Zones zones = Room.of(job.mechanism().rigid().orElseThrow());
      UsableParts parts = new UsableParts(job, range);
      CoarseSearch bounded = new CoarseSearch(job, zones, parts, 1);
      CoarseSearch whole =
          new CoarseSearch(job, zones, parts, 1) {
            @Override
            boolean promising(int lane, int c, Travel travel, double than) {
              return true;
            }
          };
      SobolPoints points = SobolPoints.of(zones.free(), PAIRS, seed);
      for (CoarseSearch search : List.of(bounded, whole)) {
        for (int pair = 0; pair < points.size(); pair++) {
          search.look(pair, 0, zones.at(points.point(pair)));
        }
        search.look(points.size(), 0, hung);
      }
      String where = "seed " + (seed + i);
      assertArrayEquals(whole.best, bounded.best, where);
      assertArrayEquals(whole.where, bounded.where, where);
      found += (int) Arrays.stream(whole.best).filter(value -> value < Objective.OUT).count();
      stops += job.requirements().openStop() == Job.OpenStop.SPRING_STOP ? 1 : 0;
    }
    if (seed == SEED) {
      assertTrue(found > 500, "only " + found + " candidates to tell anything");
      assertTrue(stops >= 4, "only " + stops + " stopped by their springs");
    }
  }
}
