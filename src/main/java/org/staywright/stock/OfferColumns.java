package org.staywright.stock;

import java.util.Arrays;
import java.util.List;
import org.staywright.form.part.OfferCells;
import org.staywright.form.table.PriceText;
import org.staywright.part.Offer;
import org.staywright.part.Price;

/** The columns of an offer in a table. */
final class OfferColumns {

  /** They bear the names that they have in a file. */
  static final List<String> NAMES = OfferCells.COLUMNS;

  private OfferColumns() {}

  static List<Object> values(Offer offer) {
    Price price = offer.price();
    return Arrays.asList(
        price == null ? null : price.currency(),
        price == null ? null : price.validUntil(),
        price == null ? null : price.pack(),
        price == null ? null : price.orderMultiple(),
        price == null ? null : PriceText.write(price.breaks()),
        offer.stock(),
        offer.stockDate(),
        offer.leadTimeDays());
  }

  static Offer read(Stored row) {
    String currency = row.text("price_currency");
    Price price =
        currency == null
            ? null
            : new Price(
                currency,
                row.date("price_valid_until"),
                row.whole("price_pack"),
                row.whole("price_order_multiple"),
                PriceText.read(row.text("price_breaks")).orElseThrow());
    return new Offer(
        price, row.whole("stock"), row.date("stock_date"), row.whole("lead_time_days"));
  }
}
