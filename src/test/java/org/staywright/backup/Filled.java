package org.staywright.backup;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.staywright.database.Database;
import org.staywright.form.stock.StockRow;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.stock.SampleRange;
import org.staywright.stock.StockRows;

/** A database with something in each of its tables. */
final class Filled {

  private static final String JOB =
      "insert into job (version, name, document, created, changed, choice_part, choice_count,"
          + " choice_revision, choice_even_if_misfit, choice_made) values"
          + " (3, ?, ?, current_timestamp, current_timestamp, '23K-YQ9', 2, 1, true,"
          + " current_timestamp)";

  private static final String LONG = "x".repeat(100_000);

  private final DataSource source;
  private final Database database;
  private final StockRows stock;

  /** Of the range that comes with the program, read once. */
  private static final class Some {
    static final List<Part> PARTS = parts();
    static final List<Fitting> FITTINGS = SampleRange.fittings();

    private static List<Part> parts() {
      List<Part> all = SampleRange.parts();
      return IntStream.range(0, 100).mapToObj(i -> all.get(40 * i)).toList();
    }
  }

  Filled(DataSource source) {
    this.source = source;
    this.database = new Database(source);
    this.stock = new StockRows(source);
    addRevision(1);
    stock.change(
        1,
        changing -> {
          Some.PARTS.forEach(each -> changing.put(new StockRow(each, null), false));
          Some.FITTINGS.forEach(each -> changing.put(new StockRow(null, each), false));
        });
    restore(1);
    addJob("Lid");
    addJob("Klappe für „Öl“, 20 µm \\ \" ' \n\t, " + new String(Character.toChars(0x1f527)));
    run("insert into sample_jobs (loaded) values (current_timestamp)");
    run("insert into batch (id, name, state, total) values ('b', 'two', 'running', 2)");
    run("insert into batch_job (batch_id, row_no, document) values ('b', 1, '{}')");
    run(
        "insert into batch_job (batch_id, row_no, document, verdict, result)"
            + " values ('b', 2, '{}', 'fits', '{\"row\": 2}')");
  }

  private void addRevision(int number) {
    run("insert into stock_revision (revision, origin) values (" + number + ", 'made up')");
  }

  private void restore(int earlier) {
    int newest = newest();
    addRevision(newest + 1);
    stock.restore(earlier, newest + 1);
  }

  int newest() {
    return (int) number("select max(revision) from stock_revision");
  }

  DataSource database() {
    return source;
  }

  void addJob(String name) {
    database.write(connection -> addJob(connection, name, LONG));
  }

  private static int addJob(Connection connection, String name, String note) throws SQLException {
    try (PreparedStatement job = connection.prepareStatement(JOB)) {
      job.setString(1, name);
      job.setString(2, "{\"name\": \"long\", \"note\": \"" + note + "\"}");
      return job.executeUpdate();
    }
  }

  void addRevisionAndJob() {
    database.write(
        connection -> {
          Restoration.hold(connection);
          try (PreparedStatement revision =
              connection.prepareStatement(
                  "insert into stock_revision (revision, origin)"
                      + " select max(revision) + 1, 'next' from stock_revision")) {
            revision.executeUpdate();
          }
          return addJob(connection, "beside it", "short, for there will be many");
        });
  }

  /** Otherwise than it was. */
  void change() {
    restore(1);
    addJob("lost");
    run("update job set version = version + 1, name = 'other', choice_part = null");
    run("delete from batch_job where row_no = 2");
    run("update batch set state = 'stopped'");
  }

  private void run(String sql) {
    database.write(connection -> connection.prepareStatement(sql).executeUpdate());
  }

  long number(String sql) {
    return database.read(connection -> StoredTable.number(connection, sql));
  }

  /** PostgreSQL, unless it is told otherwise; H2 two seconds. */
  boolean waitsForEver() {
    return database.read(c -> c.getMetaData().getDatabaseProductName().startsWith("Postgre"));
  }

  /** All tables but the notes of the migrations. */
  Set<String> tables() {
    return database.read(
        connection -> {
          Set<String> names = new TreeSet<>();
          String sql =
              "select table_name from information_schema.tables"
                  + " where lower(table_schema) = 'public'";
          try (ResultSet row = connection.prepareStatement(sql).executeQuery()) {
            while (row.next()) {
              names.add(row.getString(1).toLowerCase(Locale.ROOT));
            }
          }
          names.remove("flyway_schema_history");
          return names;
        });
  }

  /** Every value, but the versions of jobs and the revision that a restoration adds. */
  List<String> dump() {
    return database.read(
        connection -> {
          List<String> rows = new ArrayList<>();
          for (StoredTable table : StoredTable.all(connection)) {
            try (ResultSet row =
                connection.prepareStatement("select * from " + table.name()).executeQuery()) {
              while (row.next()) {
                rows.add(table.name() + row(row, table));
              }
            }
          }
          rows.removeIf(row -> row.startsWith("stock_revision") && row.contains("backup of"));
          Collections.sort(rows);
          return rows;
        });
  }

  private static List<String> row(ResultSet row, StoredTable table) throws SQLException {
    List<String> cells = new ArrayList<>();
    for (String column : table.columns().keySet()) {
      Object value =
          switch (table.columns().get(column)) {
            case MOMENT -> {
              var moment = row.getObject(column, OffsetDateTime.class);
              yield moment == null ? null : moment.toInstant();
            }
            case NUMBER -> row.getObject(column) == null ? null : row.getDouble(column);
            case FLAG -> row.getObject(column) == null ? null : row.getBoolean(column);
            default -> row.getString(column);
          };
      if (!column.equals("version")) {
        String text = String.valueOf(value);
        cells.add(column + "=" + (text.length() < 200 ? text : text.hashCode()));
      }
    }
    return cells;
  }
}
