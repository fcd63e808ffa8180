package org.staywright.part;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Net prices by quantity.
 *
 * @param currency ISO 4217
 * @param validUntil last day of validity, null where none is named
 * @param pack pieces in a pack
 * @param orderMultiple quantities are multiples of this
 * @param breaks by rising quantity, the first from the least that is sold
 */
public record Price(
    String currency,
    @Nullable LocalDate validUntil,
    int pack,
    int orderMultiple,
    List<Break> breaks) {

  /**
   * @param from least quantity
   * @param each net price of one
   */
  public record Break(int from, BigDecimal each) {}

  public Price {
    breaks = List.copyOf(breaks);
  }

  /** The least that is sold. */
  public int minimum() {
    return breaks.get(0).from();
  }

  /** The least that can be ordered to have so many: not below the minimum, whole multiples. */
  public int orderable(int needed) {
    int multiple = Math.max(1, orderMultiple);
    return (Math.max(needed, minimum()) + multiple - 1) / multiple * multiple;
  }

  /** Net price of one when so many are bought. */
  public BigDecimal each(int quantity) {
    BigDecimal each = breaks.get(0).each();
    for (Break next : breaks) {
      if (next.from() <= quantity) {
        each = next.each();
      }
    }
    return each;
  }
}
