package org.staywright.stock;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.Tag;
import org.staywright.database.OnPostgresql;

@OnPostgresql
@QuarkusTest
@Tag("server")
@TestProfile(EmptyStockOnPostgresql.class)
class StockOnPostgresqlTest extends StockTest {

  @Override
  void restart() throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(
          "select pg_terminate_backend(pid) from pg_stat_activity"
              + " where datname = current_database() and pid <> pg_backend_pid()");
    }
  }
}
