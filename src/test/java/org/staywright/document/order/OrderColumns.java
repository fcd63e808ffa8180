package org.staywright.document.order;

import java.util.EnumMap;
import java.util.Map;

/** Where the value of a column stands in a line of JSON. */
public final class OrderColumns {

  private static final Map<OrderColumn, String> OTHERWISE = new EnumMap<>(OrderColumn.class);

  static {
    OTHERWISE.put(OrderColumn.ALTERNATE, "/alternate/partNumber");
    OTHERWISE.put(OrderColumn.ALTERNATE_OPENING_MORE_N, "/alternate/openingMoreN");
    OTHERWISE.put(OrderColumn.ALTERNATE_CLOSING_MORE_N, "/alternate/closingMoreN");
    OTHERWISE.put(OrderColumn.GAS_SPACE_L, "/transport/gasSpaceL");
    OTHERWISE.put(OrderColumn.CHARGE_BAR, "/transport/chargeBar");
    OTHERWISE.put(OrderColumn.CHARGE_BAR_L, "/transport/chargeBarL");
    OTHERWISE.put(OrderColumn.WITHIN_ADR_SP283_FIGURES, "/transport/withinAdrSp283Figures");
    // Of the whole list in JSON.
    OTHERWISE.put(OrderColumn.VAT_BASIS, null);
    OTHERWISE.put(OrderColumn.CHOSEN_ALTHOUGH, null);
  }

  private OrderColumns() {}

  public static String json(OrderColumn column) {
    if (OTHERWISE.containsKey(column)) {
      return OTHERWISE.get(column);
    }
    StringBuilder name = new StringBuilder("/");
    String[] words = column.code().split("_");
    name.append(words[0]);
    for (int i = 1; i < words.length; i++) {
      name.append(Character.toUpperCase(words[i].charAt(0))).append(words[i].substring(1));
    }
    return name.toString();
  }
}
