package org.staywright.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.sql.DataSource;
import org.staywright.database.Database;
import org.staywright.form.stock.StockRow;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.Range;

/**
 * Parts and fittings in the database, by plain JDBC: there may be a million of them. Measured
 * ({@code reports/benchmarks.md}): the range of a million rows is built in 6.9 s, a file of 100,000
 * rows checked and written in 6.0 s, in a heap of 1 GB.
 */
@ApplicationScoped
public class StockRows {

  /** Rows sent or fetched at a time. */
  private static final int BATCH = 1000;

  private static final Table<Part> PARTS = new PartTable();
  private static final Table<Fitting> FITTINGS = new FittingTable();

  private final Database database;

  public StockRows(DataSource database) {
    this.database = new Database(database);
  }

  Optional<Part> part(String number, int revision) {
    return database.read(connection -> find(connection, PARTS, revision, number));
  }

  Optional<Fitting> fitting(String number, int revision) {
    return database.read(connection -> find(connection, FITTINGS, revision, number));
  }

  /** All rows of a revision as they stand at one moment. */
  public Range range(int revision) {
    return database.snapshot(
        connection -> {
          List<Fitting> fittings = new ArrayList<>();
          readAll(connection, FITTINGS, revision, fittings::addAll);
          Range.Builder range = new Range.Builder(revision);
          readAll(connection, PARTS, revision, range::addAll);
          return range.build(fittings);
        });
  }

  /** Reads the rows of a revision for nothing but to see whether each makes sense. */
  public static void tryRows(Connection connection, int revision) throws SQLException {
    readAll(connection, FITTINGS, revision, fittings -> {});
    readAll(connection, PARTS, revision, parts -> {});
  }

  RevisionDifference difference(int from, int to, int skipped, int most) {
    return database.snapshot(
        connection -> {
          var found = new RevisionDifference.Builder(from, to, skipped, most);
          differing(connection, PARTS, from, to, (part, old) -> found.add(row(part), old));
          found.flush();
          differing(connection, FITTINGS, from, to, (each, old) -> found.add(row(each), old));
          return found.build();
        });
  }

  /** Of a revision, as the caller's transaction sees it. */
  RevisionSummary summary(int revision) {
    return database.read(connection -> RevisionSummary.of(connection, revision));
  }

  private static StockRow row(Part part) {
    return new StockRow(part, null);
  }

  private static StockRow row(Fitting fitting) {
    return new StockRow(null, fitting);
  }

  /** What comes and goes with a revision, in the transaction that makes it. */
  public void change(int revision, Stock.Revising work) {
    database.read(connection -> change(connection, revision, work));
  }

  static Void change(Connection connection, int revision, Stock.Revising work) throws SQLException {
    try (var parts = new Changes<>(connection, PARTS, revision);
        var fittings = new Changes<>(connection, FITTINGS, revision)) {
      work.with(new Changer(parts, fittings));
      parts.flush();
      fittings.flush();
      return null;
    } catch (IOException e) {
      throw new UncheckedIOException("the file cannot be read", e);
    }
  }

  /** Makes what held in an earlier revision hold again, in the transaction that makes the new. */
  public void restore(int earlier, int revision) {
    database.read(
        connection -> {
          for (Table<?> table : List.of(PARTS, FITTINGS)) {
            try (var ending = connection.prepareStatement(table.endingAllSince());
                var adding = connection.prepareStatement(table.addingAgain())) {
              bind(ending, List.of(revision - 1, earlier)).executeUpdate();
              bind(adding, List.of(revision, earlier)).executeUpdate();
            }
          }
          return null;
        });
  }

  /** Rows of a table that begin or end with a revision, sent to the database many at a time. */
  private static final class Changes<T> implements AutoCloseable {

    private final Table<T> table;
    private final PreparedStatement adding;
    private final PreparedStatement ending;
    private final int revision;
    private int toAdd;
    private int toEnd;

    Changes(Connection connection, Table<T> table, int revision) throws SQLException {
      this.table = table;
      this.revision = revision;
      adding = connection.prepareStatement(table.adding());
      ending = connection.prepareStatement(table.ending());
    }

    void add(T row) throws SQLException {
      List<Object> cells = table.cells(row);
      cells.add(revision);
      bind(adding, cells).addBatch();
      if (++toAdd % BATCH == 0) {
        flush();
      }
    }

    /** The row of that number holds no longer. */
    void end(String number) throws SQLException {
      bind(ending, List.of(revision - 1, number)).addBatch();
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

  private record Changer(Changes<Part> parts, Changes<Fitting> fittings) implements Stock.Changing {

    @Override
    public void put(StockRow row, boolean known) {
      try {
        if (known) {
          (row.part() != null ? parts : fittings).end(row.number());
        }
        if (row.part() != null) {
          parts.add(row.part());
        } else {
          fittings.add(row.fitting());
        }
      } catch (SQLException e) {
        throw new IllegalStateException("row " + row.number() + " cannot be written", e);
      }
    }

    @Override
    public void gone(String number, boolean fitting) {
      try {
        (fitting ? fittings : parts).end(number);
      } catch (SQLException e) {
        throw new IllegalStateException("row " + number + " cannot be ended", e);
      }
    }
  }

  /** Hands on the rows that only one of two revisions has, those of a number together. */
  private static <T> void differing(
      Connection connection, Table<T> table, int one, int other, BiConsumer<T, Boolean> each)
      throws SQLException {
    rows(
        connection,
        table,
        Table.IN_ONE_OF_TWO + " order by part_number",
        List.of(one, other),
        rows -> {
          for (Stored row = rows.next(); row != null; row = rows.next()) {
            boolean inOne = row.whole("from_revision") <= one && one <= row.whole("to_revision");
            each.accept(table.made(row), inOne);
          }
          return null;
        });
  }

  private static <T> Optional<T> find(
      Connection connection, Table<T> table, int revision, String number) throws SQLException {
    return rows(
        connection,
        table,
        Table.HOLDS + " and part_number = ?",
        List.of(revision, number),
        rows -> Optional.ofNullable(rows.next()).map(table::made));
  }

  /**
   * Hands on every row of a revision, many at a time and in no order: databases sort a million rows
   * on the disk. While the next are read, those before are made and handed on.
   */
  private static <T> void readAll(
      Connection connection, Table<T> table, int revision, Consumer<List<T>> each)
      throws SQLException {
    rows(
        connection,
        table,
        Table.HOLD_MANY,
        List.of(revision, revision),
        rows -> {
          CompletableFuture<Void> before = CompletableFuture.completedFuture(null);
          for (List<Stored> read = rows.some(); !read.isEmpty(); ) {
            List<Stored> some = read;
            before =
                before.thenRunAsync(() -> each.accept(some.stream().map(table::made).toList()));
            read = rows.some();
            before.join();
          }
          return null;
        });
  }

  /** What is done with rows. */
  private interface Reading<R> {
    R of(Rows rows) throws SQLException;
  }

  private static <R> R rows(
      Connection connection, Table<?> table, String which, List<?> values, Reading<R> reading)
      throws SQLException {
    try (PreparedStatement query = connection.prepareStatement(table.rows(which))) {
      query.setFetchSize(BATCH);
      try (ResultSet rows = bind(query, values).executeQuery()) {
        return reading.of(new Rows(rows));
      }
    }
  }

  private static PreparedStatement bind(PreparedStatement statement, List<?> values)
      throws SQLException {
    for (int i = 0; i < values.size(); i++) {
      statement.setObject(i + 1, values.get(i));
    }
    return statement;
  }

  /** Takes the rows of a result one by one. */
  private static final class Rows {

    private final ResultSet rows;
    private final Map<String, Integer> places = new HashMap<>();
    private final boolean[] dates;

    Rows(ResultSet rows) throws SQLException {
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

    /** The next, none at the end. */
    List<Stored> some() throws SQLException {
      List<Stored> piece = new ArrayList<>(BATCH);
      for (Stored row = next(); row != null; row = next()) {
        piece.add(row);
        if (piece.size() == BATCH) {
          break;
        }
      }
      return piece;
    }
  }
}
