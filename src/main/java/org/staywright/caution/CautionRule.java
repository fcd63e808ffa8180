package org.staywright.caution;

import java.util.Optional;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.part.Part;

/** One thing that could hurt, and when to say so. */
public interface CautionRule {

  /** What a part calls for wherever it is used; nothing, where only a job can tell. */
  default Optional<Caution> of(Part part) {
    return Optional.empty();
  }

  /** What it calls for where a hand moves a load; the same, unless the job tells more. */
  default Optional<Caution> of(Job job, Fit fit, Figures figures) {
    return of(fit.part());
  }

  /** What it calls for in a job; under a seat the same as anywhere, unless a rule knows more. */
  default Optional<Caution> of(Job job, Fit fit) {
    return fit.outcome().as(figures -> of(job, fit, figures), seat -> of(fit.part()));
  }
}
