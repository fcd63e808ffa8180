package org.staywright.job;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.migration.Context;
import org.flywaydb.core.api.migration.JavaMigration;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Unreadable;

/**
 * Version 7 of the tables: the one damper that a job could have becomes the first entry of what
 * stands beside its springs, and its weights get one for landing. Jobs of batches that are judged
 * already are not read again, and what came of them stays as it was said.
 */
public final class DamperToBeside implements JavaMigration {

  private static final String DAMPER = "damper";
  private static final String WEIGHTS = "weights";

  /** What counted as usual then. */
  private static final Map<String, Double> USUAL =
      Map.of("effort", 0.45, "margin", 0.25, "price", 0.15, "supply", 0.15);

  /**
   * @param keys of the row
   */
  private record Row(List<Object> keys, String document) {}

  @Override
  public MigrationVersion getVersion() {
    return MigrationVersion.fromVersion("7");
  }

  @Override
  public String getDescription() {
    return "beside in place of damper";
  }

  @Override
  public Integer getChecksum() {
    return null;
  }

  @Override
  public boolean canExecuteInTransaction() {
    return true;
  }

  @Override
  public void migrate(Context context) throws SQLException {
    Connection connection = context.getConnection();
    // Whoever has seen the job as it was must not write it back.
    renew(
        connection,
        "select document, id from job",
        "update job set document = ?, version = version + 1 where id = ?");
    renew(
        connection,
        "select document, batch_id, row_no from batch_job where verdict is null",
        "update batch_job set document = ? where batch_id = ? and row_no = ?");
  }

  private static void renew(Connection connection, String read, String write) throws SQLException {
    List<Row> rows = new ArrayList<>();
    try (PreparedStatement query = connection.prepareStatement(read);
        ResultSet row = query.executeQuery()) {
      while (row.next()) {
        List<Object> keys = new ArrayList<>();
        for (int i = 2; i <= row.getMetaData().getColumnCount(); i++) {
          keys.add(row.getObject(i));
        }
        rows.add(new Row(keys, row.getString(1)));
      }
    }
    try (PreparedStatement update = connection.prepareStatement(write)) {
      for (Row row : rows) {
        update.setString(1, renewed(row.document));
        for (int i = 0; i < row.keys.size(); i++) {
          update.setObject(2 + i, row.keys.get(i));
        }
        update.addBatch();
      }
      update.executeBatch();
    }
  }

  /** What is no job is left as it is: whoever reads it will say so. */
  private static String renewed(String document) {
    try {
      JsonNode tree = JsonText.tree(document);
      if (tree instanceof ObjectNode job) {
        beside(job);
        weights(job);
      }
      return tree.toString();
    } catch (Unreadable noJob) {
      return document;
    }
  }

  private static void beside(ObjectNode job) {
    if (job.remove(DAMPER) instanceof ObjectNode damper) {
      // One where no count was given, as then; its fields are the same.
      job.putArray("beside").add(damper);
    }
  }

  /** Who had the usual weights has the usual ones; who had others had none for landing. */
  private static void weights(ObjectNode job) {
    if (job.get(WEIGHTS) instanceof ObjectNode weights) {
      boolean usual =
          USUAL.entrySet().stream()
              .allMatch(each -> weights.path(each.getKey()).asDouble() == each.getValue());
      if (usual) {
        job.remove(WEIGHTS);
      } else {
        weights.put("landing", 0);
      }
    }
  }
}
