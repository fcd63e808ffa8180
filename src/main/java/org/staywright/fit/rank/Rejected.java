package org.staywright.fit.rank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.part.Range;

/**
 * A part that is out for a job in one number of springs.
 *
 * @param row of the range
 * @param count of springs
 */
public record Rejected(int row, int count) {

  /** All that are out for one reason, in the order of the range. */
  public static List<Rejected> of(Job job, Range range, Rejection reason) {
    List<Rejected> found = new ArrayList<>();
    new Screening(
        job,
        range,
        (row, count, each) -> {
          if (each == reason) {
            found.add(new Rejected(row, count));
          }
        });
    found.sort(Comparator.comparingInt(Rejected::row).thenComparingInt(Rejected::count));
    return found;
  }
}
