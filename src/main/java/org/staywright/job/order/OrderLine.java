package org.staywright.job.order;

import java.math.BigDecimal;
import org.staywright.part.Price;

/**
 * One line of an order.
 *
 * @param item to order
 * @param needed pieces
 * @param matched springs of a set that must be alike, from one batch; 1 where none must
 * @param quantity to order: needed, but not below the least sold and up to the order multiple
 * @param unitPrice net at that quantity, null where unknown
 * @param total net, null where unknown
 * @param alternate in its place, null where there is none
 */
public record OrderLine(
    Item item,
    int needed,
    int matched,
    int quantity,
    BigDecimal unitPrice,
    BigDecimal total,
    Alternate alternate) {

  public static OrderLine of(Item item, int needed, int matched, Alternate alternate) {
    Price price = item.offer().price();
    if (price == null) {
      return new OrderLine(item, needed, matched, needed, null, null, alternate);
    }
    int quantity = price.orderable(needed);
    BigDecimal each = price.each(quantity);
    BigDecimal total = each.multiply(BigDecimal.valueOf(quantity));
    return new OrderLine(item, needed, matched, quantity, each, total, alternate);
  }

  /** Days until all are here. */
  public int leadTimeDays() {
    return item.offer().daysFor(quantity);
  }

  /** Of all pieces ordered, kg. */
  public BigDecimal mass() {
    return item.mass().multiply(BigDecimal.valueOf(quantity));
  }
}
