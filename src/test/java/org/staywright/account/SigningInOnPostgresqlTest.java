package org.staywright.account;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import org.junit.jupiter.api.Tag;
import org.staywright.database.OnPostgresql;
import org.staywright.stock.EmptyStockOnPostgresql;

@OnPostgresql
@QuarkusTest
@Tag("server")
@Tag("full")
@TestProfile(EmptyStockOnPostgresql.class)
class SigningInOnPostgresqlTest extends SigningInTest {}
