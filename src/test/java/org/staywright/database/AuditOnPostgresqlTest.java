package org.staywright.database;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;

@OnPostgresql
class AuditOnPostgresqlTest extends AuditTest {

  @Override
  DataSource database() {
    return Databases.postgresql();
  }

  @Test
  void isNotEmptiedAtOnceEither() throws SQLException {
    try (var connection = database().getConnection();
        Statement statement = connection.createStatement()) {
      assertThrows(SQLException.class, () -> statement.execute("truncate audit"));
    }
  }
}
