package org.staywright.job.batch;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.persistence.Query;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.hibernate.Session;

/**
 * Which batches this instance works on. A lease runs out by itself, so that what an instance leaves
 * behind that died is taken up by another. The clock is that of the database: they all share it, so
 * that this is asked in its own SQL.
 */
final class Leases {

  private static final String OPEN = " state in ('queued', 'running')";
  private static final String FREE =
      OPEN + " and (holder is null or holder = :me or held_until < current_timestamp)";
  private static final String UNTIL =
      " held_until = current_timestamp + cast(:seconds as integer) * interval '1' second";

  private final int seconds;
  private final String me = UUID.randomUUID().toString();

  /**
   * @param lasts unless it is prolonged
   */
  Leases(Duration lasts) {
    this.seconds = (int) lasts.toSeconds();
  }

  /**
   * Takes a batch, or keeps it.
   *
   * @return false where another has it, and where it is over
   */
  boolean take(String batch) {
    String sql =
        "update batch set state = 'running', holder = :me," + UNTIL + " where id = :id and" + FREE;
    return QuarkusTransaction.requiringNew()
        .call(
            () ->
                query(sql)
                        .setParameter("seconds", seconds)
                        .setParameter("id", batch)
                        .executeUpdate()
                    == 1);
  }

  /** Prolongs all there are. */
  void prolong() {
    String sql = "update batch set" + UNTIL + " where holder = :me and" + OPEN;
    QuarkusTransaction.requiringNew()
        .run(() -> query(sql).setParameter("seconds", seconds).executeUpdate());
  }

  /** Gives all of them back, so that nobody needs to wait until they run out. */
  void giveBack() {
    String sql = "update batch set holder = null, held_until = null where holder = :me";
    QuarkusTransaction.requiringNew().run(() -> query(sql).executeUpdate());
  }

  /** Batches that wait to be worked on by whoever comes first, the oldest first. */
  List<String> free() {
    String sql = "select id from batch where" + FREE + " order by created";
    return QuarkusTransaction.requiringNew()
        .call(
            () ->
                SavedBatch.getEntityManager()
                    .unwrap(Session.class)
                    .createNativeQuery(sql, String.class)
                    .setParameter("me", me)
                    .list());
  }

  private Query query(String sql) {
    return SavedBatch.getEntityManager().createNativeQuery(sql).setParameter("me", me);
  }
}
