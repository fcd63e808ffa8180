package org.staywright.database;

import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;

/** Questions to the database and changes to it, by plain SQL that H2 and PostgreSQL both take. */
public final class Database {

  /** What is done with a connection. */
  public interface Work<T> {
    T with(Connection connection) throws SQLException;
  }

  private final DataSource source;

  public Database(DataSource source) {
    this.source = source;
  }

  /** A short question; joins the caller's transaction where there is one. */
  public <T> T read(Work<T> work) {
    try (Connection connection = source.getConnection()) {
      return work.with(connection);
    } catch (SQLException e) {
      throw new IllegalStateException("the database did not do as it was asked", e);
    }
  }

  /** All of it or nothing, in a transaction of its own. */
  public <T> T write(Work<T> work) {
    return read(connection -> within(connection, work));
  }

  /**
   * Reads everything as it stood at one moment, whatever others write meanwhile. Long answers come
   * in pieces, which PostgreSQL does in a transaction only.
   */
  public <T> T snapshot(Work<T> work) {
    return read(
        connection -> {
          int ordinary = connection.getTransactionIsolation();
          connection.setTransactionIsolation(Connection.TRANSACTION_SERIALIZABLE);
          try {
            return within(connection, work);
          } finally {
            connection.setTransactionIsolation(ordinary);
          }
        });
  }

  private static <T> T within(Connection connection, Work<T> work) throws SQLException {
    connection.setAutoCommit(false);
    try {
      T result = work.with(connection);
      connection.commit();
      return result;
    } catch (SQLException | RuntimeException | Error e) {
      // An error too, such as no memory left: the next line would commit what is half done.
      takeBack(connection, e);
      throw e;
    } finally {
      connection.setAutoCommit(true);
    }
  }

  private static void takeBack(Connection connection, Throwable why) {
    try {
      connection.rollback();
    } catch (SQLException e) {
      why.addSuppressed(e);
    }
  }
}
