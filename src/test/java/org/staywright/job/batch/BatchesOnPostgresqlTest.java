package org.staywright.job.batch;

import javax.sql.DataSource;
import org.staywright.database.Databases;
import org.staywright.database.OnPostgresql;

@OnPostgresql
class BatchesOnPostgresqlTest extends BatchesTest {

  @Override
  DataSource database() {
    return Databases.postgresqlWithSamples();
  }
}
