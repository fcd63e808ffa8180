package org.staywright.fit;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.staywright.part.Range;

/**
 * A range judged for a job. The books balance: considered = fitsTotal + nearTotal + all rejected.
 *
 * @param considered candidates, part × count
 * @param fitsTotal of them that meet every requirement
 * @param nearTotal of them that miss only what could be given way on
 * @param rejected the others by the first reason
 * @param fits the best, in order
 * @param near the best of those, in order
 */
public record Ranking(
    int considered,
    int fitsTotal,
    int nearTotal,
    Map<Rejection, Integer> rejected,
    List<Fit> fits,
    List<Fit> near) {

  public Ranking {
    rejected = Collections.unmodifiableMap(new EnumMap<>(rejected));
    fits = List.copyOf(fits);
    near = List.copyOf(near);
  }

  /** Judges every part of a range. */
  public static Ranking of(Range range, Job job) {
    throw new UnsupportedOperationException("written next");
  }
}
