package org.staywright.caution.part;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.CautionRule;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.part.Part;

/** An old spring beside a new one pulls the load askew. */
public final class ReplaceTogether implements CautionRule {

  @Override
  public Optional<Caution> of(Part part) {
    return Optional.of(Caution.note("replace-together"));
  }

  @Override
  public Optional<Caution> of(Job job, Fit fit) {
    return fit.count() > 1 ? of(fit.part()) : Optional.empty();
  }
}
