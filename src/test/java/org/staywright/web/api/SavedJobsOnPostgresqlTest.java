package org.staywright.web.api;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import org.junit.jupiter.api.Tag;
import org.staywright.database.OnPostgresql;
import org.staywright.web.PostgresqlProfile;

@OnPostgresql
@QuarkusTest
@Tag("server")
@TestProfile(PostgresqlProfile.class)
class SavedJobsOnPostgresqlTest extends SavedJobsTest {}
