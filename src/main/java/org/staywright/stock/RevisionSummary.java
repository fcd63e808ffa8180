package org.staywright.stock;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a revision holds, for who need not see a million rows.
 *
 * @param created when it was made: number and moment are a revision's name for good
 * @param origin where its rows came from
 * @param rows numbers of parts by their family, and of end fittings
 */
record RevisionSummary(int revision, Instant created, String origin, Map<String, Long> rows) {

  private static final String ROWS =
      "select family, count(*) from part where %1$s group by family"
          + " union all select 'fitting', count(*) from fitting where %1$s";

  /** As the transaction of a connection sees it. */
  static RevisionSummary of(Connection connection, int revision) throws SQLException {
    Map<String, Long> rows = new TreeMap<>();
    try (PreparedStatement made =
            connection.prepareStatement(
                "select created, origin from stock_revision where revision = ?");
        PreparedStatement counted = connection.prepareStatement(ROWS.formatted(Table.HOLD_MANY))) {
      for (int i = 1; i <= 4; i++) {
        counted.setInt(i, revision);
      }
      try (ResultSet row = counted.executeQuery()) {
        while (row.next()) {
          rows.put(row.getString(1), row.getLong(2));
        }
      }
      made.setInt(1, revision);
      try (ResultSet row = made.executeQuery()) {
        row.next();
        Instant created = row.getObject(1, OffsetDateTime.class).toInstant();
        return new RevisionSummary(revision, created, row.getString(2), rows);
      }
    }
  }
}
