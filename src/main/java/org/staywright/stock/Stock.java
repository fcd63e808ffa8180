package org.staywright.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.Range;

/**
 * The revisions of the range in the database. A revision, once there, never changes: what was
 * chosen from it can be looked up for good.
 */
@ApplicationScoped
public class Stock {

  private static final PartTable PARTS = new PartTable();
  private static final FittingTable FITTINGS = new FittingTable();

  private final DataSource database;

  public Stock(DataSource database) {
    this.database = database;
  }

  /** The newest revision, 0 where there is none yet. */
  public int newest() {
    return read(Stock::newest);
  }

  /** A part as it stood in a revision. */
  public Optional<Part> part(String number, int revision) {
    return only(PARTS, number, revision);
  }

  /** A fitting as it stood in a revision. */
  public Optional<Fitting> fitting(String number, int revision) {
    return only(FITTINGS, number, revision);
  }

  /** The whole range of a revision; an empty one is a range too. */
  public Range range(int revision) {
    return read(
        connection -> {
          List<Fitting> fittings = new ArrayList<>();
          FITTINGS.readAll(connection, revision, fittings::add);
          Range.Builder range = new Range.Builder(revision);
          PARTS.readAll(connection, revision, range::add);
          return range.build(fittings);
        });
  }

  /**
   * Makes a first revision, all of it or nothing.
   *
   * @param origin where the rows come from
   * @return its number, or empty where there is a revision already
   */
  public Optional<Integer> begin(String origin, List<Part> parts, List<Fitting> fittings) {
    return write(
        connection -> {
          if (newest(connection) > 0) {
            return Optional.empty();
          }
          try (PreparedStatement revision =
              connection.prepareStatement(
                  "insert into stock_revision (revision, origin) values (1, ?)")) {
            revision.setString(1, origin);
            revision.executeUpdate();
          }
          PARTS.insert(connection, 1, parts);
          FITTINGS.insert(connection, 1, fittings);
          return Optional.of(1);
        });
  }

  private <T> Optional<T> only(Table<T> table, String number, int revision) {
    return read(
        connection -> {
          List<T> found = new ArrayList<>();
          table.read(connection, revision, number, found::add);
          return found.stream().findFirst();
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

  /** What is done with a connection. */
  private interface Work<T> {
    T with(Connection connection) throws SQLException;
  }

  /** Joins the caller's transaction where there is one. */
  private <T> T read(Work<T> work) {
    try (Connection connection = database.getConnection()) {
      return work.with(connection);
    } catch (SQLException e) {
      throw new IllegalStateException("the stock cannot be read or written", e);
    }
  }

  /** All of it or nothing, in a transaction of its own. */
  private <T> T write(Work<T> work) {
    return read(
        connection -> {
          connection.setAutoCommit(false);
          try {
            T result = work.with(connection);
            connection.commit();
            return result;
          } catch (SQLException | RuntimeException e) {
            connection.rollback();
            throw e;
          } finally {
            connection.setAutoCommit(true);
          }
        });
  }
}
