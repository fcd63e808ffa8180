package org.staywright.web;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;
import org.staywright.database.Databases;

/** The program as it is built for PostgreSQL. */
public class PostgresqlProfile implements QuarkusTestProfile {

  @Override
  public String getConfigProfile() {
    return "postgresql";
  }

  @Override
  public Map<String, String> getConfigOverrides() {
    return Map.of(
        "quarkus.datasource.jdbc.url",
        Databases.postgresqlUrl(),
        "quarkus.datasource.username",
        "postgres");
  }
}
