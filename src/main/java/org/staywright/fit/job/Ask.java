package org.staywright.fit.job;

import org.jspecify.annotations.Nullable;
import org.staywright.unit.Bound;

/**
 * The field of a job by which a criterion is asked for.
 *
 * @param field with its unit
 * @param bound of its number, in the unit of the field; null where it is a yes or no
 * @param fallback what is asked where nothing is given, in that unit; null for nothing
 */
public record Ask(String field, @Nullable Bound bound, @Nullable Double fallback) {

  /** A question answered by yes or no. */
  public boolean flag() {
    return bound == null;
  }
}
