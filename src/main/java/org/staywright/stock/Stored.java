package org.staywright.stock;

import java.time.LocalDate;
import java.util.Map;

/** A row as its table has it, away from the connection it was read by. */
final class Stored {

  private final Map<String, Integer> places;
  private final Object[] values;

  /**
   * @param places of the columns in a row, by their names
   */
  Stored(Map<String, Integer> places, Object[] values) {
    this.places = places;
    this.values = values;
  }

  /** Null where there is none. */
  String text(String column) {
    return (String) value(column);
  }

  /** Null where there is none. */
  LocalDate date(String column) {
    return (LocalDate) value(column);
  }

  /** 0 where there is none. */
  int whole(String column) {
    Object value = value(column);
    return value == null ? 0 : (Integer) value;
  }

  /** 0 where there is none. */
  double number(String column) {
    Object value = value(column);
    return value == null ? 0 : (Double) value;
  }

  private Object value(String column) {
    return values[places.get(column)];
  }
}
