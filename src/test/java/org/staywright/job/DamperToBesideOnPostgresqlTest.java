package org.staywright.job;

import javax.sql.DataSource;
import org.staywright.database.Databases;
import org.staywright.database.OnPostgresql;

@OnPostgresql
class DamperToBesideOnPostgresqlTest extends DamperToBesideTest {

  @Override
  DataSource ofVersion6() {
    return Databases.postgresqlOf("6");
  }
}
