package org.staywright.fit.clear;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * One entry of a job changed, all others kept.
 *
 * @param path JSON pointer of the entry in the job
 * @param from as it is: a number in the unit, or a word
 * @param to as it would be
 * @param unit symbol of the boundary, "" for none
 */
public record Change(String path, Object from, Object to, String unit) {

  /** By how much a number changes, below zero for less; empty between words. */
  public Optional<BigDecimal> by() {
    return from instanceof BigDecimal before && to instanceof BigDecimal after
        ? Optional.of(after.subtract(before))
        : Optional.empty();
  }
}
