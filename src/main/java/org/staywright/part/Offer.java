package org.staywright.part;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * On what terms a part can be had.
 *
 * @param price null where none is known
 * @param stock pieces on the shelf
 * @param stockDate when they were counted, null where unknown
 * @param leadTimeDays working days when the shelf does not suffice
 */
public record Offer(
    @Nullable Price price, int stock, @Nullable LocalDate stockDate, int leadTimeDays) {

  /** Days until so many are here. */
  public int daysFor(int quantity) {
    return stock >= quantity ? 0 : leadTimeDays;
  }
}
