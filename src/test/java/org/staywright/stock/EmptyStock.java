package org.staywright.stock;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** The program with nothing in stock: no samples, a database of its own. */
public class EmptyStock implements QuarkusTestProfile {

  /** In memory, and yet a file that can be closed and opened again. */
  @Override
  public Map<String, String> getConfigOverrides() {
    return Map.of(
        "staywright.samples", "false",
        "quarkus.datasource.jdbc.url",
            "jdbc:h2:memFS:empty;DB_CLOSE_DELAY=-1;LAZY_QUERY_EXECUTION=1");
  }
}
