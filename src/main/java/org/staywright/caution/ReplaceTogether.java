package org.staywright.caution;

import java.util.List;
import java.util.Optional;
import org.staywright.caution.Caution.Severity;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.part.Part;

/** An old spring beside a new one pulls the flap askew. */
final class ReplaceTogether implements CautionRule {

  @Override
  public Optional<Caution> of(Part part) {
    return Optional.of(new Caution("replace-together", Severity.NOTE, List.of(), COMMON_PRACTICE));
  }

  @Override
  public Optional<Caution> of(Job job, Fit fit) {
    return fit.count() > 1 ? of(fit.part()) : Optional.empty();
  }
}
