package org.staywright.stock;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import org.staywright.part.Offer;

/**
 * A table of things on offer.
 *
 * @param <T> what a row is
 */
abstract class Table<T> {

  /** The last revision of a row that still holds. */
  static final int OPEN = Integer.MAX_VALUE;

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

  abstract T read(Stored row, Offer offer);

  /** Adds rows that hold from a revision on. */
  void insert(Connection connection, int revision, List<T> rows) throws SQLException {
    try (Changes changes = changes(connection, revision)) {
      for (T row : rows) {
        changes.add(row);
      }
      changes.flush();
    }
  }

  Changes changes(Connection connection, int revision) throws SQLException {
    return new Changes(connection, revision);
  }

  /** What comes and goes with a revision, sent to the database many at a time. */
  final class Changes implements AutoCloseable {

    private final PreparedStatement adding;
    private final PreparedStatement ending;
    private final int revision;
    private int toAdd;
    private int toEnd;

    private Changes(Connection connection, int revision) throws SQLException {
      this.revision = revision;
      String marks = "?" + ", ?".repeat(columns.size() - 1);
      String names = String.join(", ", columns);
      adding =
          connection.prepareStatement(
              "insert into %s (%s) values (%s)".formatted(name, names, marks));
      ending =
          connection.prepareStatement(
              "update %s set to_revision = ? where part_number = ? and to_revision = %d"
                  .formatted(name, OPEN));
    }

    void add(T row) throws SQLException {
      bind(adding, row, revision);
      adding.addBatch();
      if (++toAdd % BATCH == 0) {
        flush();
      }
    }

    /** The row of that number holds no longer. */
    void end(String number) throws SQLException {
      ending.setInt(1, revision - 1);
      ending.setString(2, number);
      ending.addBatch();
      if (++toEnd % BATCH == 0) {
        ending.executeBatch();
      }
    }

    /** What ends goes first: a number has one open row at most. */
    void flush() throws SQLException {
      ending.executeBatch();
      adding.executeBatch();
    }

    @Override
    public void close() throws SQLException {
      adding.close();
      ending.close();
    }
  }

  /** Makes what held in an earlier revision hold again. */
  void restore(Connection connection, int earlier, int revision) throws SQLException {
    String names = String.join(", ", columns.subList(0, columns.size() - 1));
    run(
        connection,
        "update %s set to_revision = ? where to_revision = %d and from_revision > ?"
            .formatted(name, OPEN),
        revision - 1,
        earlier);
    run(
        connection,
        "insert into %1$s (%2$s, from_revision) select %2$s, cast(? as integer) from %1$s"
                .formatted(name, names)
            + " where ? between from_revision and to_revision and to_revision < %d".formatted(OPEN),
        revision,
        earlier);
  }

  private static void run(Connection connection, String sql, int first, int second)
      throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setInt(1, first);
      statement.setInt(2, second);
      statement.executeUpdate();
    }
  }

  /** Hands on the rows that only one of two revisions has, those of a number together. */
  void differing(Connection connection, int one, int other, Differing<T> each) throws SQLException {
    String sql =
        "select * from "
            + name
            + " where (? between from_revision and to_revision)"
            + " <> (? between from_revision and to_revision) order by part_number";
    try (PreparedStatement query = connection.prepareStatement(sql)) {
      query.setFetchSize(BATCH);
      query.setInt(1, one);
      query.setInt(2, other);
      try (ResultSet rows = query.executeQuery()) {
        Stored.Reader reader = new Stored.Reader(rows);
        for (Stored row = reader.next(); row != null; row = reader.next()) {
          boolean inOne = row.whole("from_revision") <= one && one <= row.whole("to_revision");
          each.accept(made(row), inOne);
        }
      }
    }
  }

  /** Takes a row that stands in one of two revisions. */
  interface Differing<T> {
    void accept(T row, boolean inFirst);
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

  /** The row of a number as it stood in a revision. */
  Optional<T> find(Connection connection, int revision, String number) throws SQLException {
    String sql = "select * from " + name + " where " + HOLDS + " and part_number = ?";
    try (PreparedStatement query = connection.prepareStatement(sql)) {
      query.setInt(1, revision);
      query.setString(2, number);
      try (ResultSet rows = query.executeQuery()) {
        return Optional.ofNullable(new Stored.Reader(rows).next()).map(this::made);
      }
    }
  }

  /**
   * Hands on every row of a revision, many at a time and in no order: databases sort a million rows
   * on the disk. While the next are read, those before are made and handed on.
   */
  void readAll(Connection connection, int revision, Consumer<List<T>> each) throws SQLException {
    // By an index, which + 0 forbids, H2 would look every row up instead of reading on.
    String sql = "select * from " + name + " where from_revision + 0 <= ? and to_revision + 0 >= ?";
    try (PreparedStatement query = connection.prepareStatement(sql)) {
      query.setFetchSize(BATCH);
      query.setInt(1, revision);
      query.setInt(2, revision);
      try (ResultSet rows = query.executeQuery()) {
        Stored.Reader reader = new Stored.Reader(rows);
        CompletableFuture<Void> before = CompletableFuture.completedFuture(null);
        List<Stored> read = pieceOf(reader);
        while (!read.isEmpty()) {
          List<Stored> piece = read;
          before = before.thenRunAsync(() -> each.accept(piece.stream().map(this::made).toList()));
          read = pieceOf(reader);
          before.join();
        }
      }
    }
  }

  private static List<Stored> pieceOf(Stored.Reader reader) throws SQLException {
    List<Stored> piece = new ArrayList<>(BATCH);
    for (Stored row = reader.next(); row != null; row = reader.next()) {
      piece.add(row);
      if (piece.size() == BATCH) {
        break;
      }
    }
    return piece;
  }

  private T made(Stored row) {
    return read(row, OfferColumns.read(row));
  }
}
