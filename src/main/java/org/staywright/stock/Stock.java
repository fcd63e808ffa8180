package org.staywright.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.SQLTimeoutException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;
import org.staywright.database.Database;
import org.staywright.form.stock.StockRow;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.Range;

/**
 * The revisions of the range in the database. A revision, once there, never changes: what was
 * chosen from it can be looked up for good.
 */
@ApplicationScoped
public class Stock {

  /** Asked in a transaction, it lets nobody else make a revision until that ends. */
  public static final String HOLD = "select revision from stock_revision for update";

  private static final PartTable PARTS = new PartTable();
  private static final FittingTable FITTINGS = new FittingTable();

  private final Database database;

  public Stock(DataSource database) {
    this.database = new Database(database);
  }

  /** The newest revision, 0 where there is none yet. */
  public int newest() {
    return database.read(Stock::newest);
  }

  /** A part as it stood in a revision. */
  public Optional<Part> part(String number, int revision) {
    return database.read(connection -> PARTS.find(connection, revision, number));
  }

  /** A fitting as it stood in a revision. */
  public Optional<Fitting> fitting(String number, int revision) {
    return database.read(connection -> FITTINGS.find(connection, revision, number));
  }

  /** The whole range of a revision; an empty one is a range too. */
  public Range range(int revision) {
    return database.snapshot(
        connection -> {
          List<Fitting> fittings = new ArrayList<>();
          FITTINGS.readAll(connection, revision, fittings::addAll);
          Range.Builder range = new Range.Builder(revision);
          PARTS.readAll(connection, revision, range::addAll);
          return range.build(fittings);
        });
  }

  /** Reads the rows of a revision for nothing but to see whether each makes sense. */
  public static void tryRows(Connection connection, int revision) throws SQLException {
    FITTINGS.readAll(connection, revision, fittings -> {});
    PARTS.readAll(connection, revision, parts -> {});
  }

  /**
   * Makes a first revision, all of it or nothing.
   *
   * @param origin where the rows come from
   * @return its number, or empty where there is a revision already
   */
  public Optional<Integer> begin(String origin, List<Part> parts, List<Fitting> fittings) {
    try {
      return database.write(
          connection -> {
            int first = next(connection, 0, origin);
            PARTS.insert(connection, first, parts);
            FITTINGS.insert(connection, first, fittings);
            return Optional.of(first);
          });
    } catch (Overtaken alreadyThere) {
      return Optional.empty();
    }
  }

  /** What a revision is made with. */
  public interface Revising {
    void with(Changing changing) throws IOException;
  }

  /** Takes changes one by one. */
  public interface Changing {
    void put(StockRow row, boolean known);

    void gone(String number, boolean fitting);
  }

  /**
   * Makes a revision out of the newest, all of it or nothing.
   *
   * @param base the newest, as the maker knows it
   * @return its number
   * @throws Overtaken where another revision came in between
   */
  public int revise(int base, String origin, Revising work) {
    return database.write(
        connection -> {
          int revision = next(connection, base, origin);
          try (var parts = PARTS.changes(connection, revision);
              var fittings = FITTINGS.changes(connection, revision)) {
            work.with(new Changer(parts, fittings));
            parts.flush();
            fittings.flush();
          } catch (IOException e) {
            throw new UncheckedIOException("the file cannot be read", e);
          }
          return revision;
        });
  }

  private record Changer(Table<Part>.Changes parts, Table<Fitting>.Changes fittings)
      implements Changing {

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

  /**
   * Waits for whoever makes a revision or replaces them all, and holds off the next until the
   * transaction ends.
   *
   * @throws Overtaken where that takes longer than the database waits
   */
  public static void hold(Connection connection) throws SQLException {
    try (PreparedStatement rows = connection.prepareStatement(HOLD)) {
      rows.executeQuery().close();
    } catch (SQLTimeoutException tooLong) {
      throw new Overtaken(newest(connection));
    }
  }

  private static int next(Connection connection, int base, String origin) throws SQLException {
    hold(connection);
    if (newest(connection) != base) {
      throw new Overtaken(base);
    }
    try (PreparedStatement revision =
        connection.prepareStatement(
            "insert into stock_revision (revision, origin) values (?, ?)")) {
      revision.setInt(1, base + 1);
      revision.setString(2, origin);
      revision.executeUpdate();
    } catch (SQLException e) {
      // Two at once want the same number: the database lets one have it.
      if (String.valueOf(e.getSQLState()).startsWith("23")) {
        throw new Overtaken(base);
      }
      throw e;
    }
    return base + 1;
  }

  /**
   * Makes an earlier revision hold again, as a new one.
   *
   * @return its number
   */
  public int restore(int earlier, String origin) {
    return database.write(
        connection -> {
          int revision = next(connection, newest(connection), origin);
          PARTS.restore(connection, earlier, revision);
          FITTINGS.restore(connection, earlier, revision);
          return revision;
        });
  }

  /** All revisions, the newest first. */
  public List<Revision> revisions() {
    return database.read(
        connection -> {
          List<Revision> revisions = new ArrayList<>();
          try (PreparedStatement query =
                  connection.prepareStatement(
                      "select revision, created, origin from stock_revision order by revision desc");
              ResultSet row = query.executeQuery()) {
            while (row.next()) {
              revisions.add(
                  new Revision(
                      row.getInt(1),
                      row.getObject(2, OffsetDateTime.class).toInstant(),
                      row.getString(3)));
            }
          }
          return revisions;
        });
  }

  /** How one revision differs from another, with the first thousand of each kind. */
  public RevisionDifference difference(int from, int to) {
    return difference(from, to, 0, 1000);
  }

  /**
   * How one revision differs from another.
   *
   * @param skipped of each kind
   * @param most listed of each kind after those
   */
  public RevisionDifference difference(int from, int to, int skipped, int most) {
    return database.snapshot(
        connection -> {
          RevisionDifference.Builder found =
              new RevisionDifference.Builder(from, to, skipped, most);
          PARTS.differing(
              connection, from, to, (part, old) -> found.add(new StockRow(part, null), old));
          found.flush();
          FITTINGS.differing(
              connection, from, to, (fitting, old) -> found.add(new StockRow(null, fitting), old));
          return found.build();
        });
  }

  private static int newest(Connection connection) throws SQLException {
    try (PreparedStatement query =
            connection.prepareStatement("select coalesce(max(revision), 0) from stock_revision");
        ResultSet row = query.executeQuery()) {
      row.next();
      return row.getInt(1);
    }
  }
}
