package org.staywright.fit.rank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.staywright.fit.RandomRange;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.part.Range;

/** The parts behind a count of the rejected. */
class RejectedTest {

  private static final Range RANGE = RandomRange.of(new Random(11), 1500);

  @Test
  void eachReasonListsAsManyAsTheRankingCountsAndEachIsOutForIt() {
    Job job = Samples.lid();
    Ranking ranking = Ranking.of(RANGE, job);
    int reasons = 0;
    for (Rejection reason : Rejection.values()) {
      List<Rejected> out = Rejected.of(job, RANGE, reason);
      assertEquals(ranking.rejected().get(reason), out.size(), reason.code());
      for (Rejected each : out.subList(0, Math.min(40, out.size()))) {
        Assessment plain = Assessment.of(job, RANGE, RANGE.part(each.row()), each.count());
        assertEquals(reason, plain.rejection());
      }
      for (int i = 1; i < out.size(); i++) {
        assertTrue(out.get(i - 1).row() <= out.get(i).row(), "not in the order of the range");
      }
      reasons += out.isEmpty() ? 0 : 1;
    }
    assertTrue(reasons >= 3, "too few reasons to tell anything");
  }
}
