package org.staywright.web.api;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import org.staywright.database.OnPostgresql;
import org.staywright.web.PostgresqlProfile;

@OnPostgresql
@QuarkusTest
@TestProfile(PostgresqlProfile.class)
class SavedJobsOnPostgresqlTest extends SavedJobsTest {}
