package org.staywright.caution.part;

import java.util.Optional;
import java.util.function.Predicate;
import org.staywright.caution.Caution;
import org.staywright.caution.CautionRule;
import org.staywright.part.Part;

/**
 * A caution that needs no figures, only a kind of part.
 *
 * @param kind of part that calls for it
 * @param caution itself
 */
public record Always(Predicate<Part> kind, Caution caution) implements CautionRule {

  /** Whatever the part. */
  public static Always of(Caution caution) {
    return new Always(part -> true, caution);
  }

  @Override
  public Optional<Caution> of(Part part) {
    return Optional.of(caution).filter(any -> kind.test(part));
  }
}
