package org.staywright.fit.rank;

import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.PriorityQueue;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Bare;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.part.Range;

/**
 * A range judged for a job. The books balance: considered = fitsTotal + nearTotal + all rejected.
 *
 * @param considered candidates, part × count
 * @param fitsTotal of them that meet every requirement
 * @param nearTotal of them that miss only what could be given way on
 * @param rejected the others by the first reason
 * @param fits the best, in order
 * @param near of those the ones that miss least, in order
 * @param bare the load without a spring, null under a seat
 */
public record Ranking(
    int considered,
    int fitsTotal,
    int nearTotal,
    Map<Rejection, Integer> rejected,
    List<Fit> fits,
    List<Fit> near,
    Bare bare) {

  public Ranking {
    rejected = Collections.unmodifiableMap(new EnumMap<>(rejected));
    fits = List.copyOf(fits);
    near = List.copyOf(near);
  }

  /** Judges every part of a range, each in every number asked for. */
  public static Ranking of(Range range, Job job) {
    Screening screening = new Screening(job, range);
    Standing standing = new Standing(job, screening.fits(), screening.near());
    return new Ranking(
        range.size() * job.counts().size(),
        screening.fits().size(),
        screening.near().size(),
        screening.rejected(),
        best(screening, screening.fits(), standing),
        best(screening, screening.near(), standing),
        screening.paths().bare());
  }

  /** The first rows of a list, assessed plainly. */
  private static List<Fit> best(
      Screening screening, List<Candidate> candidates, Standing standing) {
    return first(candidates, standing.order(), screening.job().limit()).stream()
        .map(screening::exact)
        .sorted(standing.order())
        .map(
            candidate ->
                Objects.requireNonNull(candidate.exact()).scored(standing.score(candidate)))
        .toList();
  }

  /** Those that come first in an order, in no order: a large range has too many to sort. */
  private static Collection<Candidate> first(
      List<Candidate> candidates, Comparator<Candidate> order, int most) {
    PriorityQueue<Candidate> lastFirst = new PriorityQueue<>(order.reversed());
    for (Candidate candidate : candidates) {
      if (lastFirst.size() < most) {
        lastFirst.add(candidate);
      } else if (most > 0 && order.compare(candidate, lastFirst.peek()) < 0) {
        lastFirst.poll();
        lastFirst.add(candidate);
      }
    }
    return lastFirst;
  }

  /** Whether springs are needed at all; under a seat they are. */
  public boolean springNeeded() {
    return bare == null || bare.springNeeded();
  }
}
