package org.staywright.web.audit;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import org.junit.jupiter.api.Tag;
import org.staywright.database.OnPostgresql;
import org.staywright.stock.EmptyStockOnPostgresql;

@OnPostgresql
@QuarkusTest
@Tag("server")
@Tag("full")
@TestProfile(AuditedRoutesOnPostgresqlTest.Untouched.class)
class AuditedRoutesOnPostgresqlTest extends AuditedRoutesTest {

  /** A program of its own, as for H2. */
  public static class Untouched extends EmptyStockOnPostgresql {}
}
