package org.staywright.caution;

import java.util.Optional;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.part.Part;

/** One thing that could hurt, and when to say so. */
interface CautionRule {

  /** Source of a rule that no standard states. */
  String COMMON_PRACTICE = "common practice, no source";

  /** What a part calls for wherever it is used. */
  Optional<Caution> of(Part part);

  /** What it calls for in a job; the same, unless the job tells more. */
  default Optional<Caution> of(Job job, Fit fit) {
    return of(fit.part());
  }
}
