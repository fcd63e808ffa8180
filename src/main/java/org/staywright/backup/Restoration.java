package org.staywright.backup;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.SQLTimeoutException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.staywright.database.Audit;
import org.staywright.database.Author;
import org.staywright.database.Change;
import org.staywright.database.Change.Action;
import org.staywright.database.Change.Subject;
import org.staywright.database.Database;
import org.staywright.form.schema.AnswerJson;
import org.staywright.stock.StockRows;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/**
 * Puts a backup in the place of the range, jobs and batches, all of it or nothing. Nothing restored
 * is taken for what someone still remembers: the range gets a stock revision that never was, jobs a
 * version that nobody has seen. The audit stays, and tells of it.
 */
@ApplicationScoped
public class Restoration {

  private static final int BATCH = 1000;

  /**
   * Everything there is, as the audit tells of it.
   *
   * @param revision the newest
   * @param created when that was made
   * @param backup when it was made, null for what is no backup
   * @param rows number of them, by table
   */
  private record Replaced(
      long revision, @Nullable Instant created, @Nullable Instant backup, Map<String, Long> rows) {}

  private final Database database;

  public Restoration(DataSource database) {
    this.database = new Database(database);
  }

  /**
   * Reads a backup to its end and changes nothing.
   *
   * @throws Refusal where it is none, or not whole, or of another version
   */
  public Contents check(Path file) {
    try (Archive archive = Archive.open(file)) {
      checked(archive);
      return archive.manifest().contents();
    } catch (IOException e) {
      throw new UncheckedIOException("the backup cannot be read", e);
    }
  }

  /**
   * Replaces everything.
   *
   * @return what there is now
   * @throws Refusal where the backup is refused: then nothing has changed
   */
  public Contents restore(Author author, Path file) {
    try (Archive archive = Archive.open(file)) {
      raiseNumbers(checked(archive));
      return database.write(connection -> replace(connection, author, archive));
    } catch (IOException e) {
      throw new UncheckedIOException("the backup cannot be read", e);
    }
  }

  /**
   * @return the highest number of a job in it
   */
  private long checked(Archive archive) {
    AtomicLong highest = new AtomicLong();
    database.read(
        connection -> {
          List<StoredTable> tables = StoredTable.all(connection);
          archive.suits(StoredTable.schema(connection), tables);
          for (StoredTable table : tables) {
            int id = table.name().equals("job") ? columns(archive, table).indexOf("id") : -1;
            archive.each(
                table,
                values -> {
                  if (id >= 0 && values.get(id) instanceof Long number) {
                    highest.accumulateAndGet(number, Math::max);
                  }
                });
          }
          return null;
        });
    return highest.get();
  }

  /** New jobs are to be numbered beyond the restored ones. H2 would end a transaction here. */
  private void raiseNumbers(long highest) {
    database.read(
        connection -> {
          if (highest >= StoredTable.number(connection, "select coalesce(max(id), 0) from job")) {
            run(connection, "alter table job alter column id restart with " + (highest + 1));
          }
          return null;
        });
  }

  /** As whoever makes a revision does: one of them waits for the other. */
  static void hold(Connection connection) throws SQLException {
    try (PreparedStatement rows =
        connection.prepareStatement("select revision from stock_revision for update")) {
      rows.executeQuery().close();
    }
  }

  private static Contents replace(Connection connection, Author author, Archive archive)
      throws SQLException {
    try {
      hold(connection);
      long revision =
          StoredTable.number(connection, "select coalesce(max(revision), 0) from stock_revision");
      String before = told(connection, Contents.of(connection), revision, null);
      long version =
          StoredTable.number(connection, "select coalesce(max(version), -1) from job") + 1;
      List<StoredTable> tables = StoredTable.all(connection);
      for (int i = tables.size() - 1; i >= 0; i--) {
        run(connection, "delete from " + tables.get(i).name());
      }
      for (StoredTable table : tables) {
        fill(connection, archive, table);
      }
      if (!Contents.of(connection).rows().equals(archive.manifest().contents().rows())) {
        throw new Refusal(fault("backup-while-writing"));
      }
      run(connection, "update job set version = version + " + version);
      int added = addRevision(connection, revision, archive);
      tryRows(connection, added);
      Contents after = Contents.of(connection);
      Audit.note(
          connection,
          author,
          new Change(
              Subject.EVERYTHING,
              Integer.toString(added),
              Action.RESTORED,
              before,
              told(connection, after, added, archive.manifest().contents().created())));
      return after;
    } catch (SQLException e) {
      throw refused(e);
    }
  }

  /**
   * @param backup when it was made, null for what is no backup
   */
  private static String told(
      Connection connection, Contents contents, long revision, @Nullable Instant backup)
      throws SQLException {
    Instant created = created(connection, revision);
    return AnswerJson.tree(new Replaced(revision, created, backup, contents.rows())).toString();
  }

  /** When a revision was made, null where there is none. */
  private static @Nullable Instant created(Connection connection, long revision)
      throws SQLException {
    try (PreparedStatement query =
        connection.prepareStatement("select created from stock_revision where revision = ?")) {
      query.setLong(1, revision);
      try (ResultSet row = query.executeQuery()) {
        return row.next() ? row.getObject(1, OffsetDateTime.class).toInstant() : null;
      }
    }
  }

  /** What can be stored need not make sense: a family that is none, say. */
  private static void tryRows(Connection connection, int revision) throws SQLException {
    try {
      StockRows.tryRows(connection, revision);
    } catch (RuntimeException senseless) {
      throw new Refusal(fault("backup-contradicts-itself"));
    }
  }

  /** Values too long, numbers twice, rows that refer to none; or someone else holds a row. */
  private static RuntimeException refused(SQLException e) throws SQLException {
    String state = String.valueOf(e.getSQLState());
    if (state.startsWith("22") || state.startsWith("23")) {
      return new Refusal(fault("backup-contradicts-itself"));
    }
    if (e instanceof SQLTimeoutException || state.startsWith("40")) {
      return new Refusal(fault("backup-while-writing"));
    }
    throw e;
  }

  private static Fault fault(String code) {
    return new Fault("", null, "", code);
  }

  private static void fill(Connection connection, Archive archive, StoredTable table)
      throws SQLException {
    List<String> columns = columns(archive, table);
    String sql =
        "insert into %s (%s) values (?%s)"
            .formatted(table.name(), String.join(", ", columns), ", ?".repeat(columns.size() - 1));
    try (PreparedStatement row = connection.prepareStatement(sql)) {
      AtomicLong rows = new AtomicLong();
      archive.each(
          table,
          values -> {
            for (int i = 0; i < values.size(); i++) {
              row.setObject(i + 1, values.get(i));
            }
            row.addBatch();
            if (rows.incrementAndGet() % BATCH == 0) {
              row.executeBatch();
            }
          });
      row.executeBatch();
    }
  }

  /** A number that never was; the rows that hold still hold in it. */
  private static int addRevision(Connection connection, long before, Archive archive)
      throws SQLException {
    long newest =
        StoredTable.number(connection, "select coalesce(max(revision), 0) from stock_revision");
    int added = (int) Math.max(before, newest) + 1;
    Instant created = archive.manifest().contents().created().truncatedTo(ChronoUnit.SECONDS);
    try (PreparedStatement revision =
        connection.prepareStatement(
            "insert into stock_revision (revision, origin) values (?, ?)")) {
      revision.setInt(1, added);
      revision.setString(2, "backup of " + created);
      revision.executeUpdate();
    }
    return added;
  }

  private static List<String> columns(Archive archive, StoredTable table) {
    return archive.manifest().columns().get(table.name());
  }

  private static void run(Connection connection, String sql) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.executeUpdate();
    }
  }
}
