package org.staywright.document.order;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.staywright.document.part.LineFigures;
import org.staywright.job.order.OrderLine;
import org.staywright.part.Price;

/** The columns of a parts list as a table: of its CSV and of its workbook alike. */
public enum OrderColumn {
  POSITION(5, Row::position),
  PART_NUMBER(14, row -> row.line().item().number()),
  DESCRIPTION(64, row -> row.text().describe(row.line().item())),
  KIND(15, row -> row.line().item().kind()),
  QUANTITY(9, row -> row.line().quantity()),
  UNIT_PRICE(11, row -> row.line().unitPrice()),
  LINE_TOTAL(11, row -> row.line().total()),
  CURRENCY(9, priced(Price::currency)),
  VALID_UNTIL(12, priced(Price::validUntil)),
  VAT_BASIS(9, row -> PartsListJson.VAT_BASIS),
  LEAD_TIME_DAYS(11, row -> row.line().leadTimeDays()),
  STOCK(8, row -> row.line().item().offer().stock()),
  ALTERNATE(13, row -> row.line().alternate() == null ? null : row.line().alternate().part()),
  NEEDED(9, row -> row.line().needed()),
  MASS_KG(9, row -> row.line().item().mass()),
  LINE_MASS_KG(10, row -> row.line().mass()),
  STOCK_DATE(12, row -> row.line().item().offer().stockDate()),
  MINIMUM(9, priced(Price::minimum)),
  PACK(7, priced(Price::pack)),
  ORDER_MULTIPLE(9, priced(Price::orderMultiple)),
  STOCK_REVISION(9, row -> row.line().item().revision()),
  ALTERNATE_OPENING_MORE_N(11, row -> row.figures().openMore()),
  ALTERNATE_CLOSING_MORE_N(11, row -> row.figures().closeMore()),
  GAS_SPACE_L(10, row -> row.figures().gasSpace()),
  CHARGE_BAR(9, row -> row.figures().charge()),
  CHARGE_BAR_L(12, row -> row.figures().product()),
  WITHIN_ADR_SP283_FIGURES(11, row -> row.figures().withinTransport()),
  SHELF_LIFE_YEARS(10, row -> row.figures().shelfYears()),
  ONE_BATCH_OF(10, row -> row.line().matched() > 1 ? row.line().matched() : null),
  CHOSEN_ALTHOUGH(40, row -> row.marks().isEmpty() ? null : String.join(" | ", row.marks()));

  /**
   * A line with all that its cells are taken from.
   *
   * @param position from 1
   * @param marks of the whole list
   */
  record Row(
      int position, OrderLine line, LineFigures figures, OrderText text, List<String> marks) {

    static Row of(int position, OrderLine line, OrderText text, List<String> marks) {
      return new Row(position, line, LineFigures.of(line), text, marks);
    }
  }

  private final int width;
  private final Function<Row, Object> value;

  OrderColumn(int width, Function<Row, Object> value) {
    this.width = width;
    this.value = value;
  }

  /** Name in a CSV. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Key of its heading. */
  String key() {
    return "document.column." + code().replace('_', '-');
  }

  boolean isMoney() {
    return this == UNIT_PRICE || this == LINE_TOTAL;
  }

  /** Width in a workbook, characters. */
  int width() {
    return width;
  }

  /** An Integer, {@link BigDecimal}, Boolean, {@link LocalDate} or String; null for none. */
  Object of(Row row) {
    return value.apply(row);
  }

  private static Function<Row, Object> priced(Function<Price, Object> value) {
    return row -> {
      Price price = row.line().item().offer().price();
      return price == null ? null : value.apply(price);
    };
  }
}
