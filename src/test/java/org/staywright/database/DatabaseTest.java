package org.staywright.database;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.h2.jdbcx.JdbcConnectionPool;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A change is whole or not there, whatever breaks it off. */
class DatabaseTest {

  private final JdbcConnectionPool pool =
      JdbcConnectionPool.create("jdbc:h2:mem:whole;DB_CLOSE_DELAY=-1", "sa", "");
  private final Database database = new Database(pool);

  @BeforeEach
  void table() {
    database.write(connection -> sql(connection, "create table line (n int)"));
  }

  @AfterEach
  void away() {
    database.write(connection -> sql(connection, "drop table line"));
    pool.dispose();
  }

  @Test
  void whatIsWholeStays() {
    database.write(connection -> sql(connection, "insert into line values (1), (2)"));
    assertEquals(2, lines());
  }

  @Test
  void anErrorTakesBackWhatWasHalfDoneAndIsPassedOn() {
    for (Throwable why :
        new Throwable[] {new OutOfMemoryError("tried"), new IllegalArgumentException("tried")}) {
      Throwable thrown =
          assertThrows(
              why.getClass(),
              () ->
                  database.write(
                      connection -> {
                        sql(connection, "insert into line values (1)");
                        return raised(why);
                      }));
      assertSame(why, thrown);
      assertEquals(0, lines());
    }
  }

  @Test
  void aQuestionThatIsWrongTakesBackWhatWasHalfDone() {
    assertThrows(
        IllegalStateException.class,
        () ->
            database.write(
                connection -> {
                  sql(connection, "insert into line values (1)");
                  return sql(connection, "insert into nowhere values (1)");
                }));
    assertEquals(0, lines());
  }

  private int lines() {
    return database.read(
        connection -> {
          try (Statement statement = connection.createStatement();
              ResultSet found = statement.executeQuery("select count(*) from line")) {
            found.next();
            return found.getInt(1);
          }
        });
  }

  private static Void sql(Connection connection, String text) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(text);
      return null;
    }
  }

  private static Void raised(Throwable why) {
    if (why instanceof Error error) {
      throw error;
    }
    throw (RuntimeException) why;
  }
}
