package org.staywright.stock.intake;

import javax.sql.DataSource;
import org.staywright.database.Databases;
import org.staywright.database.OnPostgresql;

@OnPostgresql
class ImportsOnPostgresqlTest extends ImportsTest {

  @Override
  DataSource database() {
    return Databases.postgresql();
  }
}
