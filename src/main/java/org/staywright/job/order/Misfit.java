package org.staywright.job.order;

import java.util.List;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Blocker;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.mechanism.Mechanism;

/**
 * Why a chosen part does not fit its job.
 *
 * @param rejection where it is out altogether, else null
 * @param blockers what it misses
 * @param kind of the job's mechanism, which tells the units
 * @param mechanism its code, which tells the words
 */
public record Misfit(
    Rejection rejection, List<Blocker> blockers, Mechanism.Movement kind, String mechanism) {

  public Misfit {
    blockers = List.copyOf(blockers);
  }

  /** Null where the part fits. */
  public static Misfit of(Job job, Assessment assessment) {
    Rejection rejection = assessment.rejection();
    List<Blocker> blockers = rejection == null ? assessment.fit().blockedBy() : List.of();
    return rejection == null && blockers.isEmpty()
        ? null
        : new Misfit(rejection, blockers, job.mechanism().movement(), job.mechanism().code());
  }

  /** Names of the reasons. */
  public String codes() {
    return rejection != null
        ? rejection.code()
        : String.join(", ", blockers.stream().map(blocker -> blocker.criterion().code()).toList());
  }
}
