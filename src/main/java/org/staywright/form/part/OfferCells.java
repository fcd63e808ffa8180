package org.staywright.form.part;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.staywright.form.table.Cells;
import org.staywright.form.table.PriceText;
import org.staywright.part.Offer;
import org.staywright.part.Price;
import org.staywright.unit.Fault;

/** Price, stock and lead time as the last columns of a row. */
public final class OfferCells {

  public static final List<String> COLUMNS =
      List.of(
          "price_currency",
          "price_valid_until",
          "price_pack",
          "price_order_multiple",
          "price_breaks",
          "stock",
          "stock_date",
          "lead_time_days");

  private static final int MOST = 1_000_000;
  private static final int LONGEST_WAIT = 1000;

  private OfferCells() {}

  static Offer read(Cells cells) {
    int stock = cells.whole("stock", 0, MOST, 0);
    LocalDate counted = cells.date("stock_date");
    cells.required("lead_time_days", "≥ 0 and ≤ " + LONGEST_WAIT);
    int wait = cells.whole("lead_time_days", 0, LONGEST_WAIT, 0);
    return new Offer(price(cells), stock, counted, wait);
  }

  static List<String> write(Offer offer) {
    Price price = offer.price();
    List<String> row = new ArrayList<>();
    if (price == null) {
      row.addAll(List.of("", "", "", "", ""));
    } else {
      row.add(price.currency());
      row.add(text(price.validUntil()));
      row.add(String.valueOf(price.pack()));
      row.add(String.valueOf(price.orderMultiple()));
      row.add(PriceText.write(price.breaks()));
    }
    row.add(String.valueOf(offer.stock()));
    row.add(text(offer.stockDate()));
    row.add(String.valueOf(offer.leadTimeDays()));
    return row;
  }

  private static String text(LocalDate date) {
    return date == null ? "" : date.toString();
  }

  private static Price price(Cells cells) {
    String breaks = cells.optional("price_breaks");
    if (breaks == null) {
      return null;
    }
    String currency = cells.required("price_currency", "EUR");
    if (currency != null && !currency.matches("[A-Z]{3}")) {
      cells.fault(new Fault("price_currency", currency, "EUR", "not-of-the-form"));
    }
    LocalDate validUntil = cells.date("price_valid_until");
    int pack = cells.whole("price_pack", 1, MOST, 1);
    int multiple = cells.whole("price_order_multiple", 1, MOST, 1);
    List<Price.Break> read = PriceText.read(breaks).orElse(List.of());
    if (read.isEmpty()) {
      cells.fault(new Fault("price_breaks", breaks, PriceText.EXAMPLE, "not-of-the-form"));
    }
    return new Price(currency, validUntil, pack, multiple, read);
  }
}
