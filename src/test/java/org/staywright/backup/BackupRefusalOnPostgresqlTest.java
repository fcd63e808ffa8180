package org.staywright.backup;

import javax.sql.DataSource;
import org.staywright.database.Databases;
import org.staywright.database.OnPostgresql;

@OnPostgresql
class BackupRefusalOnPostgresqlTest extends BackupRefusalTest {

  @Override
  DataSource database() {
    return Databases.postgresql();
  }
}
