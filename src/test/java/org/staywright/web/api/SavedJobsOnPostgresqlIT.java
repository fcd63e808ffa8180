package org.staywright.web.api;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.staywright.database.Databases;
import org.staywright.database.OnPostgresql;
import org.staywright.web.Instance;

/** What {@code TwoInstancesIT} and {@code BackupPageIT} do on PostgreSQL is done in each run. */
@Tag("full")
@OnPostgresql
class SavedJobsOnPostgresqlIT extends SavedJobs {

  private static Instance program;

  @BeforeAll
  static void start() throws Exception {
    program = Instance.onPostgresql("saved-jobs", Databases.postgresqlUrl());
    program.beAsked();
  }

  @AfterAll
  static void end() {
    program.close();
  }
}
