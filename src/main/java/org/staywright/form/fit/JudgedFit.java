package org.staywright.form.fit;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;

/** One fit alone, which may miss something. */
public record JudgedFit(@JsonUnwrapped RankedFit fit, @JsonUnwrapped @Nullable Misses misses) {

  public static JudgedFit of(Job job, Fit fit, Function<Fit, List<Note>> cautions) {
    return new JudgedFit(RankedFit.of(job, fit, 1, cautions), Misses.of(job, fit));
  }
}
