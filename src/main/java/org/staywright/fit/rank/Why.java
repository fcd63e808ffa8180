package org.staywright.fit.rank;

import java.util.ArrayList;
import java.util.List;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.job.Job;
import org.staywright.part.Part;
import org.staywright.part.Range;

/**
 * Why a part is where it is in the ranking of a job, for every number of springs asked for.
 *
 * @param part asked about
 * @param counts one each
 */
public record Why(Part part, List<Count> counts) {

  /**
   * @param count of springs
   * @param assessment of the part in that number
   * @param rank from 1 among what fits, or among what is near; 0 where it is out
   */
  public record Count(int count, Assessment assessment, int rank) {}

  public Why {
    counts = List.copyOf(counts);
  }

  /**
   * @param part of the range
   */
  public static Why of(Job job, Range range, Part part) {
    int row = range.row(part.number()).orElseThrow();
    Screening screening = new Screening(job, range);
    Standing standing = new Standing(job, screening.fits(), screening.near());
    List<Count> counts = new ArrayList<>();
    for (int count : job.counts()) {
      Assessment assessment = Assessment.of(job, range, part, count);
      int rank =
          rank(screening.fits(), standing, row, count)
              + rank(screening.near(), standing, row, count);
      counts.add(new Count(count, assessment, rank));
    }
    return new Why(part, counts);
  }

  /** From 1; 0 where it is not in the list. */
  private static int rank(List<Candidate> list, Standing standing, int row, int count) {
    return list.stream()
        .filter(candidate -> candidate.row() == row && candidate.count() == count)
        .mapToInt(
            own ->
                1
                    + (int)
                        list.stream()
                            .filter(other -> standing.order().compare(other, own) < 0)
                            .count())
        .sum();
  }
}
