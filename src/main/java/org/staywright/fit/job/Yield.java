package org.staywright.fit.job;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * How a requirement may give way where nothing else helps.
 *
 * @param step smallest change worth telling apart, in the unit of its field, negative for less
 * @param floor beyond which nothing is given up, in that unit; null for the bound of the field
 */
public record Yield(BigDecimal step, @Nullable Double floor) {

  static Yield by(String step) {
    return new Yield(new BigDecimal(step), null);
  }

  static Yield by(String step, double floor) {
    return new Yield(new BigDecimal(step), floor);
  }
}
