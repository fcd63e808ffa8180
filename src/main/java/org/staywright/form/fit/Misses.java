package org.staywright.form.fit;

import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.clear.Change;
import org.staywright.fit.job.Job;

/** What a near fit misses, and what would clear it. */
record Misses(
    List<BlockerAnswer> blockedBy,
    @Nullable ChangeAnswer clearedBy,
    @Nullable HoldsFromAnswer holdsFrom) {

  /** One entry of the job, changed. */
  record ChangeAnswer(
      @Schema(ref = "change-path") String path, Object from, Object to, String unit) {

    static ChangeAnswer of(Change change) {
      return new ChangeAnswer(change.path(), change.from(), change.to(), change.unit());
    }
  }

  /** A condition of the job from which on it holds. */
  record HoldsFromAnswer(
      @Schema(ref = "holds-from-path") String path,
      @Schema(implementation = double.class) Object from,
      @Schema(implementation = double.class) Object to,
      String unit) {

    static HoldsFromAnswer of(Change change) {
      return new HoldsFromAnswer(change.path(), change.from(), change.to(), change.unit());
    }
  }

  static Misses of(Job job, Fit near, Optional<Change> cleared, Optional<Change> holds) {
    return new Misses(
        BlockerAnswer.of(job.mechanism(), near),
        cleared.map(ChangeAnswer::of).orElse(null),
        holds.map(HoldsFromAnswer::of).orElse(null));
  }

  /** What would clear it is not looked for; null where it fits. */
  static @Nullable Misses of(Job job, Fit fit) {
    return fit.fits() ? null : of(job, fit, Optional.empty(), Optional.empty());
  }
}
