package org.staywright.stock;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.staywright.part.Offer;
import org.staywright.part.Price;

/** The columns of an offer in a table, price breaks apart. */
final class OfferColumns {

  static final List<String> NAMES =
      List.of(
          "price_currency",
          "price_valid_until",
          "price_pack",
          "price_order_multiple",
          "stock",
          "stock_date",
          "lead_time_days");

  private OfferColumns() {}

  static List<Object> values(Offer offer) {
    Price price = offer.price();
    return Arrays.asList(
        price == null ? null : price.currency(),
        price == null ? null : price.validUntil(),
        price == null ? null : price.pack(),
        price == null ? null : price.orderMultiple(),
        offer.stock(),
        offer.stockDate(),
        offer.leadTimeDays());
  }

  static Offer read(ResultSet row, List<Price.Break> breaks) throws SQLException {
    String currency = row.getString("price_currency");
    Price price =
        currency == null
            ? null
            : new Price(
                currency,
                row.getObject("price_valid_until", LocalDate.class),
                row.getInt("price_pack"),
                row.getInt("price_order_multiple"),
                breaks);
    return new Offer(
        price,
        row.getInt("stock"),
        row.getObject("stock_date", LocalDate.class),
        row.getInt("lead_time_days"));
  }
}
