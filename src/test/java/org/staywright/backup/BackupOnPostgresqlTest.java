package org.staywright.backup;

import javax.sql.DataSource;
import org.staywright.database.Databases;
import org.staywright.database.OnPostgresql;

/** From PostgreSQL, and from there to H2. */
@OnPostgresql
class BackupOnPostgresqlTest extends BackupTest {

  @Override
  DataSource database() {
    return Databases.postgresql();
  }
}
