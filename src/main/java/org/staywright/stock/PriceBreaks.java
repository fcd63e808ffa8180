package org.staywright.stock;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.staywright.part.Price;

/** The price breaks of many numbers, read in step with their rows. */
final class PriceBreaks {

  private static final int CENTS = 2;

  private final ResultSet prices;
  private boolean more;

  /**
   * @param prices number, quantity and price, in the order of number and quantity
   */
  PriceBreaks(ResultSet prices) throws SQLException {
    this.prices = prices;
    more = prices.next();
  }

  /** The breaks of the next number; asked for in the order of the rows. */
  List<Price.Break> of(String number) throws SQLException {
    List<Price.Break> breaks = new ArrayList<>();
    while (more && prices.getString(1).equals(number)) {
      breaks.add(new Price.Break(prices.getInt(2), money(prices.getBigDecimal(3))));
      more = prices.next();
    }
    return breaks;
  }

  /** At least two decimals, more only where they count. */
  private static BigDecimal money(BigDecimal price) {
    BigDecimal exact = price.stripTrailingZeros();
    return exact.scale() < CENTS ? exact.setScale(CENTS) : exact;
  }
}
