package org.staywright.fit.rank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.staywright.Effort;
import org.staywright.fit.RandomRange;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.fit.job.Shortfall;
import org.staywright.part.Part;
import org.staywright.part.Range;

/** A part asked about by its number. */
class WhyTest {

  private static final Range RANGE = RandomRange.of(new Random(5), 2000);

  @Test
  void theRankIsThePlaceInTheRanking() {
    Job job = Samples.lid();
    Ranking ranking = Ranking.of(RANGE, job);
    for (List<Fit> list : List.of(ranking.fits(), ranking.near())) {
      assertTrue(list.size() > 5, "too few to tell anything");
      for (int i = 0; i < 6; i++) {
        Fit fit = list.get(i);
        int rank =
            Why.of(job, RANGE, fit.part()).counts().stream()
                .filter(each -> each.count() == fit.count())
                .mapToInt(Why.Count::rank)
                .sum();
        assertEquals(i + 1, rank, fit.part().number());
      }
    }
  }

  @Test
  void whatIsOutHasNoRankAndExceedsItsLimitWhereThatCanBeCounted() {
    Set<Rejection> counted = EnumSet.noneOf(Rejection.class);
    for (int row = 0; row < 300; row += Effort.of(1, 12)) {
      Part part = RANGE.part(row);
      for (Why.Count each : Why.of(Samples.lid(), RANGE, part).counts()) {
        Assessment judged = each.assessment();
        assertEquals(judged.rejection() == null, each.rank() > 0, part.number());
        Shortfall by = judged.shortfall();
        if (by == null) {
          continue;
        }
        boolean atLeast =
            switch (judged.rejection()) {
              case TOO_SHORT_OPEN, BUCKLING, AGEING, STOCK -> true;
              default -> false;
            };
        assertTrue(atLeast ? by.has() < by.needed() : by.has() > by.needed(), judged.toString());
        counted.add(judged.rejection());
      }
    }
    assertTrue(counted.size() >= 4, "only these were counted: " + counted);
  }
}
