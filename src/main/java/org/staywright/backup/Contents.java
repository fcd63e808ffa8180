package org.staywright.backup;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a database or a backup of it holds.
 *
 * @param created when it was looked at
 * @param schema version of its tables
 * @param rows number of them, by table
 */
public record Contents(Instant created, String schema, Map<String, Long> rows) {

  static Contents of(Connection connection) throws SQLException {
    Map<String, Long> rows = new LinkedHashMap<>();
    for (StoredTable table : StoredTable.all(connection)) {
      rows.put(table.name(), table.rows(connection));
    }
    return new Contents(Instant.now(), StoredTable.schema(connection), rows);
  }
}
