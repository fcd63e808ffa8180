package org.staywright.form.fit;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.clear.Change;
import org.staywright.fit.job.Job;

/** A fit that misses something, and what would clear it. */
public record NearFit(@JsonUnwrapped RankedFit fit, @JsonUnwrapped Misses misses) {

  static NearFit of(
      Job job,
      Fit near,
      int rank,
      Function<Fit, List<Note>> cautions,
      Optional<Change> cleared,
      Optional<Change> holds) {
    return new NearFit(
        RankedFit.of(job, near, rank, cautions), Misses.of(job, near, cleared, holds));
  }

  /** What would clear it is not looked for. */
  public static NearFit of(Job job, Fit near, int rank, Function<Fit, List<Note>> cautions) {
    return of(job, near, rank, cautions, Optional.empty(), Optional.empty());
  }
}
