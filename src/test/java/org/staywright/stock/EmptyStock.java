package org.staywright.stock;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** The program with nothing in stock: no samples, a database of its own. */
public class EmptyStock implements QuarkusTestProfile {

  @Override
  public Map<String, String> getConfigOverrides() {
    return Map.of(
        "staywright.samples", "false",
        "quarkus.datasource.jdbc.url", "jdbc:h2:mem:empty;DB_CLOSE_DELAY=-1");
  }
}
