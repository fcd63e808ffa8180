package org.staywright.part;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Price breaks of the whole range in a few arrays: the terms are shared, only the money differs.
 */
final class PriceColumn {

  private static final int SCALE = 4;

  /** 10 to the scale. */
  private static final double UNITS = 1e4;

  /** All of a price but the money. */
  private record Terms(
      String currency,
      @Nullable LocalDate validUntil,
      int pack,
      int orderMultiple,
      List<Integer> from) {}

  private final Dictionary<Terms> terms;
  private int[] term = new int[64];
  private int[] start = new int[64];
  private long[] money;
  private int used;

  PriceColumn() {
    this(new Dictionary<>(), new long[256]);
  }

  private PriceColumn(Dictionary<Terms> terms, long[] money) {
    this.terms = terms;
    this.money = money;
  }

  void add(int row, @Nullable Price price) {
    if (row == term.length) {
      term = Arrays.copyOf(term, 2 * row);
      start = Arrays.copyOf(start, 2 * row);
    }
    start[row] = used;
    if (price == null) {
      term[row] = -1;
      return;
    }
    List<Integer> from = price.breaks().stream().map(Price.Break::from).toList();
    term[row] =
        terms.code(
            new Terms(
                price.currency(), price.validUntil(), price.pack(), price.orderMultiple(), from));
    if (used + from.size() > money.length) {
      money = Arrays.copyOf(money, 2 * (used + from.size()));
    }
    for (Price.Break each : price.breaks()) {
      money[used++] =
          each.each().setScale(SCALE, RoundingMode.UNNECESSARY).unscaledValue().longValueExact();
    }
  }

  /** The same prices with the rows in another order. */
  PriceColumn inOrder(int[] order) {
    PriceColumn ordered = new PriceColumn(terms, Arrays.copyOf(money, used));
    ordered.term = Reordered.of(term, order);
    ordered.start = Reordered.of(start, order);
    return ordered;
  }

  /** The price of a row, null where there is none. */
  @Nullable Price get(int row) {
    if (term[row] < 0) {
      return null;
    }
    Terms shared = terms.value(term[row]);
    List<Price.Break> breaks = new ArrayList<>();
    for (int i = 0; i < shared.from.size(); i++) {
      breaks.add(new Price.Break(shared.from.get(i), decimal(money[start[row] + i])));
    }
    return new Price(shared.currency, shared.validUntil, shared.pack, shared.orderMultiple, breaks);
  }

  /** The net price of one; infinite where there is none. */
  double one(int row) {
    return term[row] < 0 ? Double.POSITIVE_INFINITY : money[start[row]] / UNITS;
  }

  private static BigDecimal decimal(long unscaled) {
    BigDecimal exact = BigDecimal.valueOf(unscaled, SCALE).stripTrailingZeros();
    return exact.scale() < 2 ? exact.setScale(2) : exact;
  }
}
