package org.staywright.job.batch;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.sql.DataSource;
import org.staywright.database.Database;
import org.staywright.form.batch.BatchResultAnswer;
import org.staywright.form.job.JobFile;
import org.staywright.form.schema.AnswerJson;
import org.staywright.job.task.Task;

/** Batches in the database: their jobs as they came, and what came of each. */
final class BatchTable {

  private static final String COUNTED =
      "select b.id, b.name, b.created, b.state, b.total,"
          + " count(case when j.verdict = 'fits' then 1 end),"
          + " count(case when j.verdict = 'near' then 1 end),"
          + " count(case when j.verdict = 'none' then 1 end),"
          + " count(case when j.verdict = 'refused' then 1 end)"
          + " from batch b left join batch_job j on j.batch_id = b.id %s"
          + " group by b.id, b.name, b.created, b.state, b.total order by b.created desc";

  private static final int FETCHED = 200;

  private final Database database;

  BatchTable(DataSource database) {
    this.database = new Database(database);
  }

  /** A job that waits. */
  record Waiting(int row, String document) {}

  void add(String id, String name, List<JobFile.Row> rows) {
    database.write(
        connection -> {
          try (PreparedStatement batch =
                  connection.prepareStatement(
                      "insert into batch (id, name, state, total) values (?, ?, 'queued', ?)");
              PreparedStatement job =
                  connection.prepareStatement(
                      "insert into batch_job (batch_id, row_no, document) values (?, ?, ?)")) {
            batch.setString(1, id);
            batch.setString(2, name);
            batch.setInt(3, rows.size());
            batch.executeUpdate();
            for (JobFile.Row row : rows) {
              job.setString(1, id);
              job.setInt(2, row.row());
              job.setString(3, row.document().toString());
              job.addBatch();
            }
            job.executeBatch();
          }
          return null;
        });
  }

  /** The newest first. */
  List<Batch> all() {
    return database.read(connection -> batches(connection, null));
  }

  Optional<Batch> find(String id) {
    return database.read(connection -> batches(connection, id)).stream().findFirst();
  }

  private static List<Batch> batches(Connection connection, String id) throws SQLException {
    List<Batch> found = new ArrayList<>();
    try (PreparedStatement query =
        connection.prepareStatement(COUNTED.formatted(id == null ? "" : "where b.id = ?"))) {
      if (id != null) {
        query.setString(1, id);
      }
      try (ResultSet row = query.executeQuery()) {
        while (row.next()) {
          found.add(
              new Batch(
                  row.getString(1),
                  row.getString(2),
                  row.getObject(3, OffsetDateTime.class).toInstant(),
                  Task.State.valueOf(row.getString(4).toUpperCase(Locale.ROOT)),
                  row.getInt(5),
                  new Batch.Tally(row.getInt(6), row.getInt(7), row.getInt(8), row.getInt(9))));
        }
      }
    }
    return found;
  }

  /** Jobs without a result, in the order of their file. */
  List<Waiting> waiting(String id, int most) {
    return database.read(
        connection -> {
          List<Waiting> found = new ArrayList<>();
          try (PreparedStatement query =
              connection.prepareStatement(
                  "select row_no, document from batch_job where batch_id = ?"
                      + " and verdict is null order by row_no fetch first ? rows only")) {
            query.setString(1, id);
            query.setInt(2, most);
            try (ResultSet row = query.executeQuery()) {
              while (row.next()) {
                found.add(new Waiting(row.getInt(1), row.getString(2)));
              }
            }
          }
          return found;
        });
  }

  /** A job that another instance has judged meanwhile stays as it is: both found the same. */
  void put(String id, List<BatchResultAnswer> results) {
    database.write(
        connection -> {
          try (PreparedStatement job =
              connection.prepareStatement(
                  "update batch_job set verdict = ?, result = ?"
                      + " where batch_id = ? and row_no = ? and verdict is null")) {
            for (BatchResultAnswer result : results) {
              job.setString(1, AnswerJson.code(result.verdict()));
              job.setString(2, AnswerJson.tree(result).toString());
              job.setString(3, id);
              job.setInt(4, result.row());
              job.addBatch();
            }
            job.executeBatch();
          }
          return null;
        });
  }

  /**
   * Sets a state unless the batch is over.
   *
   * @return whether it was not
   */
  boolean become(String id, Task.State state) {
    return database.write(
        connection -> {
          try (PreparedStatement batch =
              connection.prepareStatement(
                  "update batch set state = ? where id = ? and state in ('queued', 'running')")) {
            batch.setString(1, state.code());
            batch.setString(2, id);
            return batch.executeUpdate() == 1;
          }
        });
  }

  void delete(String id) {
    database.write(
        connection -> {
          for (String sql :
              List.of(
                  "delete from batch_job where batch_id = ?", "delete from batch where id = ?")) {
            try (PreparedStatement gone = connection.prepareStatement(sql)) {
              gone.setString(1, id);
              gone.executeUpdate();
            }
          }
          return null;
        });
  }

  /** Hands on the results there are, in the order of the file, as JSON texts. */
  void results(String id, int most, Consumer<String> each) {
    database.snapshot(
        connection -> {
          try (PreparedStatement query =
              connection.prepareStatement(
                  "select result from batch_job where batch_id = ? and verdict is not null"
                      + " order by row_no fetch first ? rows only")) {
            query.setFetchSize(FETCHED);
            query.setString(1, id);
            query.setInt(2, most);
            try (ResultSet row = query.executeQuery()) {
              while (row.next()) {
                each.accept(row.getString(1));
              }
            }
          }
          return null;
        });
  }
}
