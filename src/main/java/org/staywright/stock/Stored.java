package org.staywright.stock;

import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** A row as its table has it, away from the connection it was read by. */
final class Stored {

  private final Map<String, Integer> places;
  private final Object[] values;

  private Stored(Map<String, Integer> places, Object[] values) {
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

  /** Takes the rows of a result one by one. */
  static final class Reader {

    private final ResultSet rows;
    private final Map<String, Integer> places = new HashMap<>();
    private final boolean[] dates;

    Reader(ResultSet rows) throws SQLException {
      this.rows = rows;
      ResultSetMetaData columns = rows.getMetaData();
      dates = new boolean[columns.getColumnCount()];
      for (int i = 0; i < dates.length; i++) {
        places.put(columns.getColumnLabel(i + 1).toLowerCase(Locale.ROOT), i);
        dates[i] = columns.getColumnType(i + 1) == Types.DATE;
      }
    }

    /** Null at the end. */
    Stored next() throws SQLException {
      if (!rows.next()) {
        return null;
      }
      Object[] values = new Object[dates.length];
      for (int i = 0; i < values.length; i++) {
        values[i] = dates[i] ? rows.getObject(i + 1, LocalDate.class) : rows.getObject(i + 1);
      }
      return new Stored(places, values);
    }
  }
}
