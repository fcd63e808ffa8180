package org.staywright.document.order;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.staywright.document.order.LineAnswer.AlternateAnswer;
import org.staywright.document.order.LineAnswer.TransportAnswer;

/** The columns of a parts list as a table: of its CSV and of its workbook alike. */
public enum OrderColumn {
  POSITION(5, LineAnswer::position),
  PART_NUMBER(14, LineAnswer::partNumber),
  DESCRIPTION(64, LineAnswer::description),
  KIND(15, LineAnswer::kind),
  QUANTITY(9, LineAnswer::quantity),
  UNIT_PRICE(11, LineAnswer::unitPrice),
  LINE_TOTAL(11, LineAnswer::lineTotal),
  CURRENCY(9, LineAnswer::currency),
  VALID_UNTIL(12, LineAnswer::validUntil),
  VAT_BASIS(9, (list, line) -> list.vatBasis()),
  LEAD_TIME_DAYS(11, LineAnswer::leadTimeDays),
  STOCK(8, LineAnswer::stock),
  ALTERNATE(13, alternate(AlternateAnswer::partNumber)),
  NEEDED(9, LineAnswer::needed),
  MASS_KG(9, LineAnswer::massKg),
  LINE_MASS_KG(10, LineAnswer::lineMassKg),
  STOCK_DATE(12, LineAnswer::stockDate),
  MINIMUM(9, LineAnswer::minimum),
  PACK(7, LineAnswer::pack),
  ORDER_MULTIPLE(9, LineAnswer::orderMultiple),
  STOCK_REVISION(9, LineAnswer::stockRevision),
  ALTERNATE_OPENING_MORE_N(11, alternate(AlternateAnswer::openingMoreN)),
  ALTERNATE_CLOSING_MORE_N(11, alternate(AlternateAnswer::closingMoreN)),
  GAS_SPACE_L(10, transport(TransportAnswer::gasSpaceL)),
  CHARGE_BAR(9, transport(TransportAnswer::chargeBar)),
  CHARGE_BAR_L(12, transport(TransportAnswer::chargeBarL)),
  WITHIN_ADR_SP283_FIGURES(11, transport(TransportAnswer::withinAdrSp283Figures)),
  SHELF_LIFE_YEARS(10, LineAnswer::shelfLifeYears),
  ONE_BATCH_OF(10, LineAnswer::oneBatchOf),
  CHOSEN_ALTHOUGH(
      40, (list, line) -> list.marks().isEmpty() ? null : String.join(" | ", list.marks()));

  private final int width;
  private final BiFunction<PartsListAnswer, LineAnswer, Object> value;

  OrderColumn(int width, Function<LineAnswer, Object> value) {
    this(width, (list, line) -> value.apply(line));
  }

  OrderColumn(int width, BiFunction<PartsListAnswer, LineAnswer, Object> value) {
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
  Object of(PartsListAnswer list, LineAnswer line) {
    return value.apply(list, line);
  }

  private static Function<LineAnswer, Object> alternate(Function<AlternateAnswer, Object> value) {
    return line -> line.alternate() == null ? null : value.apply(line.alternate());
  }

  private static Function<LineAnswer, Object> transport(Function<TransportAnswer, Object> value) {
    return line -> line.transport() == null ? null : value.apply(line.transport());
  }
}
