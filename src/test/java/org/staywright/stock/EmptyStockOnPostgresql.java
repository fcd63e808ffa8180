package org.staywright.stock;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;
import org.staywright.database.Databases;

/** The program as it is built for PostgreSQL, with nothing in stock. */
public class EmptyStockOnPostgresql implements QuarkusTestProfile {

  @Override
  public String getConfigProfile() {
    return "postgresql";
  }

  @Override
  public Map<String, String> getConfigOverrides() {
    return Map.of(
        "staywright.samples",
        "false",
        "quarkus.datasource.jdbc.url",
        Databases.postgresqlUrl(),
        "quarkus.datasource.username",
        "postgres");
  }
}
