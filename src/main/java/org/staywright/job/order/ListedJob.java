package org.staywright.job.order;

import java.math.BigDecimal;

/**
 * One job of a parts list, and what its set costs.
 *
 * @param wanted for it
 * @param setCost net of one set at the list's unit prices, null where a price is missing
 */
public record ListedJob(Wanted wanted, BigDecimal setCost) {

  private static final int YEARS = 10;

  /**
   * Sets that ten years take, the first one included. Our assumption: a set is replaced whole, at
   * today's prices, whenever its years of service are over.
   *
   * @return null where no years of service are given
   */
  public Integer setsInTenYears() {
    return wanted.years() > 0 ? (int) Math.ceil(YEARS / wanted.years() - 1e-9) : null;
  }

  /** Net of one place over ten years, null where it cannot be told. */
  public BigDecimal tenYearCost() {
    Integer sets = setsInTenYears();
    return sets == null || setCost == null ? null : setCost.multiply(BigDecimal.valueOf(sets));
  }
}
