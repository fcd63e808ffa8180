package org.staywright.job;

import java.math.BigDecimal;
import org.staywright.part.Price;

/**
 * One line of an order.
 *
 * @param item to order
 * @param needed pieces
 * @param quantity to order: needed, up to the order multiple
 * @param unitPrice net at that quantity, null where unknown
 * @param total net, null where unknown
 */
public record OrderLine(
    Item item, int needed, int quantity, BigDecimal unitPrice, BigDecimal total) {

  static OrderLine of(Item item, int needed) {
    Price price = item.offer().price();
    if (price == null) {
      return new OrderLine(item, needed, needed, null, null);
    }
    int multiple = Math.max(1, price.orderMultiple());
    int quantity = (needed + multiple - 1) / multiple * multiple;
    BigDecimal each = price.each(quantity);
    return new OrderLine(item, needed, quantity, each, each.multiply(BigDecimal.valueOf(quantity)));
  }

  /** Days until all are here. */
  public int leadTimeDays() {
    return item.offer().daysFor(quantity);
  }
}
