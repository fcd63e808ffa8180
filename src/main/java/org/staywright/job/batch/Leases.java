package org.staywright.job.batch;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import javax.sql.DataSource;
import org.staywright.database.Database;

/**
 * Which batches this instance works on. A lease runs out by itself, so that what an instance leaves
 * behind that died is taken up by another. The clock is that of the database: they all share it.
 */
final class Leases {

  private static final String OPEN = " state in ('queued', 'running')";
  private static final String FREE =
      OPEN + " and (holder is null or holder = ? or held_until < current_timestamp)";
  private static final String UNTIL =
      " held_until = current_timestamp + cast(? as integer) * interval '1' second";

  private final Database database;
  private final int seconds;
  private final String me = UUID.randomUUID().toString();

  /**
   * @param lasts unless it is prolonged
   */
  Leases(DataSource database, Duration lasts) {
    this.database = new Database(database);
    this.seconds = (int) lasts.toSeconds();
  }

  /**
   * Takes a batch, or keeps it.
   *
   * @return false where another has it, and where it is over
   */
  boolean take(String batch) {
    return change(
            "update batch set state = 'running', holder = ?," + UNTIL + " where id = ? and" + FREE,
            me,
            seconds,
            batch,
            me)
        == 1;
  }

  /** Prolongs all there are. */
  void prolong() {
    change("update batch set" + UNTIL + " where holder = ? and" + OPEN, seconds, me);
  }

  /** Gives all of them back, so that nobody needs to wait until they run out. */
  void giveBack() {
    change("update batch set holder = null, held_until = null where holder = ?", me);
  }

  /** Batches that wait to be worked on by whoever comes first, the oldest first. */
  List<String> free() {
    return database.read(
        connection -> {
          List<String> found = new ArrayList<>();
          try (PreparedStatement query =
              connection.prepareStatement(
                  "select id from batch where" + FREE + " order by created")) {
            query.setString(1, me);
            try (ResultSet row = query.executeQuery()) {
              while (row.next()) {
                found.add(row.getString(1));
              }
            }
          }
          return found;
        });
  }

  private int change(String sql, Object... values) {
    return database.write(
        connection -> {
          try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
              statement.setObject(i + 1, values[i]);
            }
            return statement.executeUpdate();
          }
        });
  }
}
