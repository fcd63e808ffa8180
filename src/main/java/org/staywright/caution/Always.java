package org.staywright.caution;

import java.util.List;
import java.util.Optional;
import org.staywright.caution.Caution.Severity;
import org.staywright.part.Part;

/**
 * A caution that every charged spring calls for, whatever its figures.
 *
 * @param code key of its sentence
 * @param severity how near the harm is
 * @param source standard, or common practice
 */
record Always(String code, Severity severity, String source) implements CautionRule {

  @Override
  public Optional<Caution> of(Part part) {
    return Optional.of(new Caution(code, severity, List.of(), source));
  }
}
