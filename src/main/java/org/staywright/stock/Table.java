package org.staywright.stock;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.staywright.part.Offer;

/**
 * A table of things on offer. Rows are read forward only, in the order of their numbers.
 *
 * @param <T> what a row is
 */
abstract class Table<T> {

  private static final int BATCH = 1000;
  private static final String HOLDS = "? between from_revision and to_revision";

  private final String name;
  private final List<String> columns = new ArrayList<>();

  /**
   * @param name of the table
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
    String marks = "?" + ", ?".repeat(columns.size() - 1);
    String sql = "insert into %s (%s) values (%s)";
    try (PreparedStatement statement =
        connection.prepareStatement(sql.formatted(name, String.join(", ", columns), marks))) {
      int waiting = 0;
      for (T row : rows) {
        bind(statement, row, revision);
        statement.addBatch();
        if (++waiting % BATCH == 0) {
          statement.executeBatch();
        }
      }
      statement.executeBatch();
    }
  }

  private void bind(PreparedStatement statement, T row, int revision) throws SQLException {
    List<Object> cells = new ArrayList<>();
    cells.add(number(row));
    cells.addAll(values(row));
    cells.addAll(OfferColumns.values(offer(row)));
    cells.add(revision);
    for (int i = 0; i < cells.size(); i++) {
      statement.setObject(i + 1, cells.get(i));
    }
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
    String only = number == null ? "" : " and part_number = ?";
    String sql = "select * from " + name + " where " + HOLDS + only + " order by part_number";
    try (PreparedStatement query = connection.prepareStatement(sql)) {
      query.setFetchSize(BATCH);
      query.setInt(1, revision);
      if (number != null) {
        query.setString(2, number);
      }
      try (ResultSet row = query.executeQuery()) {
        while (row.next()) {
          each.accept(read(row, OfferColumns.read(row)));
        }
      }
    }
  }
}
