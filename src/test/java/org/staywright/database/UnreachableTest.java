package org.staywright.database;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.SQLException;
import org.junit.jupiter.api.Test;

/** A database that is gone is told from a question that is wrong, however deep it is said. */
class UnreachableTest {

  private static final SQLException GONE = new SQLException("no way there", "08001");
  private static final SQLException WRONG = new SQLException("no such table", "42S02");

  @Test
  void findsItAmongCauses() {
    assertTrue(Unreachable.caused(new IllegalStateException(new RuntimeException(GONE))));
    assertFalse(Unreachable.caused(new IllegalStateException(new RuntimeException(WRONG))));
    assertFalse(Unreachable.caused(new IllegalStateException()));
  }

  @Test
  void findsItAmongWhatACommitSuppressed() {
    Exception commit = new Exception("rolled back");
    commit.addSuppressed(new Exception(WRONG));
    assertFalse(Unreachable.caused(new RuntimeException(commit)));
    commit.addSuppressed(new Exception(GONE));
    assertTrue(Unreachable.caused(new RuntimeException(commit)));
  }

  @Test
  void comesToAnEndWhereCausesFormACircle() {
    Exception one = new Exception();
    Exception other = new Exception(one);
    one.initCause(other);
    one.addSuppressed(other);
    assertFalse(Unreachable.caused(one));
  }
}
