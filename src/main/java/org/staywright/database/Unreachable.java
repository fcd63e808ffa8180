package org.staywright.database;

import java.sql.SQLException;
import java.sql.SQLNonTransientConnectionException;
import java.sql.SQLRecoverableException;
import java.sql.SQLTransientConnectionException;
import java.util.Set;
import java.util.stream.Stream;

/** Tells a database that is not there from a question that is wrong. */
public final class Unreachable {

  /** ISO 9075: the connection; of PostgreSQL: no resources left, shut down. */
  private static final Set<String> CLASSES = Set.of("08", "53", "57");

  /** H2: connection broken, database closed. */
  private static final Set<String> OF_H2 = Set.of("90067", "90098", "90121");

  /** Causes may form a circle. */
  private static final int DEEPEST = 20;

  private Unreachable() {}

  /** Whether something failed because the database is gone. */
  public static boolean caused(Throwable thrown) {
    return caused(thrown, 0);
  }

  /** A commit that fails names its cause among what it suppressed. */
  private static boolean caused(Throwable thrown, int depth) {
    if (thrown == null || depth == DEEPEST) {
      return false;
    }
    return thrown instanceof SQLException sql && gone(sql)
        || caused(thrown.getCause(), depth + 1)
        || Stream.of(thrown.getSuppressed()).anyMatch(each -> caused(each, depth + 1));
  }

  /** The pool that found no connection in time gives no state. */
  private static boolean gone(SQLException thrown) {
    String state = thrown.getSQLState();
    return state == null
        || thrown instanceof SQLTransientConnectionException
        || thrown instanceof SQLNonTransientConnectionException
        || thrown instanceof SQLRecoverableException
        || OF_H2.contains(state)
        || CLASSES.contains(state.substring(0, Math.min(2, state.length())));
  }
}
