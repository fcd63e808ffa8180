package org.staywright.stock;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.staywright.part.Offer;
import org.staywright.part.Price;

/**
 * A table of things on offer, their price breaks beside it. Rows are read forward only, prices in
 * step with them, in the order of their numbers.
 *
 * @param <T> what a row is
 */
abstract class Table<T> {

  private static final int BATCH = 1000;
  private static final String HOLDS = "? between r.from_revision and r.to_revision";

  private final String name;
  private final List<String> columns = new ArrayList<>();

  /**
   * @param name of the table; its prices are in name_price
   * @param columns beside number, revisions and offer
   */
  Table(String name, List<String> columns) {
    this.name = name;
    this.columns.add("part_number");
    this.columns.addAll(columns);
    this.columns.addAll(OfferColumns.NAMES);
    this.columns.add("from_revision");
  }

  abstract String number(T row);

  abstract Offer offer(T row);

  /** The values of the columns given to the constructor. */
  abstract List<Object> values(T row);

  abstract T read(ResultSet row, Offer offer) throws SQLException;

  /** Adds rows that hold from a revision on. */
  void insert(Connection connection, int revision, List<T> rows) throws SQLException {
    List<List<Object>> all = new ArrayList<>();
    List<List<Object>> prices = new ArrayList<>();
    for (T row : rows) {
      List<Object> values = new ArrayList<>();
      values.add(number(row));
      values.addAll(values(row));
      values.addAll(OfferColumns.values(offer(row)));
      values.add(revision);
      all.add(values);
      Price price = offer(row).price();
      for (Price.Break each : price == null ? List.<Price.Break>of() : price.breaks()) {
        prices.add(List.of(number(row), revision, each.from(), each.each()));
      }
    }
    insert(connection, name, columns, all);
    List<String> price = List.of("part_number", "from_revision", "from_quantity", "price");
    insert(connection, name + "_price", price, prices);
  }

  /** Hands on every row of a revision, in the order of their numbers. */
  void readAll(Connection connection, int revision, Consumer<T> each) throws SQLException {
    read(connection, revision, null, each);
  }

  /**
   * @param number of the only row wanted, null for all
   */
  void read(Connection connection, int revision, String number, Consumer<T> each)
      throws SQLException {
    String where = " where " + HOLDS + (number == null ? "" : " and r.part_number = ?");
    String rows = "select r.* from " + name + " r" + where + " order by r.part_number";
    String prices =
        "select r.part_number, p.from_quantity, p.price from %1$s r join %1$s_price p"
            + " on p.part_number = r.part_number and p.from_revision = r.from_revision"
            + "%2$s order by r.part_number, p.from_quantity";
    try (PreparedStatement rowQuery = connection.prepareStatement(rows);
        PreparedStatement priceQuery = connection.prepareStatement(prices.formatted(name, where));
        ResultSet row = run(rowQuery, revision, number);
        ResultSet price = run(priceQuery, revision, number)) {
      PriceBreaks breaks = new PriceBreaks(price);
      while (row.next()) {
        each.accept(read(row, OfferColumns.read(row, breaks.of(row.getString("part_number")))));
      }
    }
  }

  private static ResultSet run(PreparedStatement query, int revision, String number)
      throws SQLException {
    query.setFetchSize(BATCH);
    query.setInt(1, revision);
    if (number != null) {
      query.setString(2, number);
    }
    return query.executeQuery();
  }

  private static void insert(
      Connection connection, String table, List<String> columns, List<List<Object>> rows)
      throws SQLException {
    String marks = "?" + ", ?".repeat(columns.size() - 1);
    String sql = "insert into %s (%s) values (%s)";
    try (PreparedStatement statement =
        connection.prepareStatement(sql.formatted(table, String.join(", ", columns), marks))) {
      int waiting = 0;
      for (List<Object> row : rows) {
        for (int i = 0; i < row.size(); i++) {
          statement.setObject(i + 1, row.get(i));
        }
        statement.addBatch();
        if (++waiting % BATCH == 0) {
          statement.executeBatch();
        }
      }
      statement.executeBatch();
    }
  }
}
