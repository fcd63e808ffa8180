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
import org.staywright.database.Databases;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.stock.Stock;

/** A database with something in each of its tables. */
final class Filled {

  private static final String JOB =
      "insert into job (version, name, document, created, changed, choice_part, choice_count,"
          + " choice_revision, choice_even_if_misfit, choice_made) values"
          + " (3, ?, ?, current_timestamp, current_timestamp, '23K-YQ9', 2, 1, true,"
          + " current_timestamp)";

  private static final Range SAMPLE = sample();

  private final DataSource source;
  private final Database database;
  private final Stock stock;

  Filled(DataSource source) {
    this.source = source;
    this.database = new Database(source);
    this.stock = new Stock(source);
    List<Part> parts = IntStream.range(0, 100).mapToObj(i -> SAMPLE.part(40 * i)).toList();
    stock.begin("some of the samples", parts, SAMPLE.fittings());
    stock.restore(1, "once more");
    addJob("Lid");
    addJob("Klappe für „Öl“, 20 µm \\ \" ' \n\t, " + new String(Character.toChars(0x1f527)));
    run("insert into sample_jobs (loaded) values (current_timestamp)");
    run("insert into batch (id, name, state, total) values ('b', 'two', 'running', 2)");
    run("insert into batch_job (batch_id, row_no, document) values ('b', 1, '{}')");
    run(
        "insert into batch_job (batch_id, row_no, document, verdict, result)"
            + " values ('b', 2, '{}', 'fits', '{\"row\": 2}')");
  }

  private static Range sample() {
    return new Stock(Databases.h2WithSamples()).range(1);
  }

  DataSource database() {
    return source;
  }

  Stock stock() {
    return stock;
  }

  void addJob(String name) {
    String document = "{\"name\": \"long\", \"note\": \"" + "x".repeat(100_000) + "\"}";
    database.write(connection -> addJob(connection, name, document));
  }

  private static int addJob(Connection connection, String name, String document)
      throws SQLException {
    try (PreparedStatement job = connection.prepareStatement(JOB)) {
      job.setString(1, name);
      job.setString(2, document);
      return job.executeUpdate();
    }
  }

  void addRevisionAndJob() {
    database.write(
        connection -> {
          Stock.hold(connection);
          try (PreparedStatement revision =
              connection.prepareStatement(
                  "insert into stock_revision (revision, origin)"
                      + " select max(revision) + 1, 'next' from stock_revision")) {
            revision.executeUpdate();
          }
          return addJob(connection, "beside it", "{}");
        });
  }

  /** Otherwise than it was. */
  void change() {
    stock.restore(1, "yet again");
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
