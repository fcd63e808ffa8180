package org.staywright.stock;

import javax.sql.DataSource;
import org.staywright.database.Databases;
import org.staywright.database.OnPostgresql;

@OnPostgresql
class StockOnPostgresqlTest extends StockTest {

  private final DataSource database = Databases.postgresql();

  @Override
  DataSource database() {
    return database;
  }
}
