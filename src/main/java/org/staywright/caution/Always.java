package org.staywright.caution;

import java.util.Optional;
import java.util.function.Predicate;
import org.staywright.part.Part;

/**
 * A caution that needs no figures, only a kind of part.
 *
 * @param kind of part that calls for it
 * @param caution itself
 */
record Always(Predicate<Part> kind, Caution caution) implements CautionRule {

  /** Whatever the part. */
  static Always of(Caution caution) {
    return new Always(part -> true, caution);
  }

  @Override
  public Optional<Caution> of(Part part) {
    return Optional.of(caution).filter(any -> kind.test(part));
  }
}
