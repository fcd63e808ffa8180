package org.staywright.backup;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.sql.DataSource;
import org.staywright.database.Database;

/** Writes the range, jobs and batches as they stood at one moment, while others read and write. */
@ApplicationScoped
public class Backup {

  private static final int FETCHED = 1000;
  private static final JsonFactory JSON =
      new JsonFactory().disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);

  private final Database database;

  public Backup(DataSource database) {
    this.database = new Database(database);
  }

  /** What it would hold now. */
  public Contents contents() {
    return database.snapshot(Contents::of);
  }

  public Contents write(OutputStream to) {
    return database.snapshot(
        connection -> {
          try (ZipOutputStream zip = new ZipOutputStream(to)) {
            zip.setLevel(Deflater.BEST_SPEED);
            List<StoredTable> tables = StoredTable.all(connection);
            Contents contents = Contents.of(connection);
            zip.putNextEntry(new ZipEntry(Manifest.ENTRY));
            Manifest.write(zip, contents, tables);
            for (StoredTable table : tables) {
              zip.putNextEntry(new ZipEntry(Manifest.entry(table.name())));
              rows(connection, table, zip);
            }
            return contents;
          } catch (IOException e) {
            throw new UncheckedIOException("the backup cannot be written", e);
          }
        });
  }

  /** A JSON array a line. */
  private static void rows(Connection connection, StoredTable table, OutputStream to)
      throws SQLException, IOException {
    String names = String.join(", ", table.columns().keySet());
    try (PreparedStatement query =
            connection.prepareStatement("select " + names + " from " + table.name());
        JsonGenerator json = JSON.createGenerator(to)) {
      json.setPrettyPrinter(new MinimalPrettyPrinter("\n"));
      query.setFetchSize(FETCHED);
      try (ResultSet row = query.executeQuery()) {
        while (row.next()) {
          json.writeStartArray();
          int column = 1;
          for (Map.Entry<String, ColumnKind> each : table.columns().entrySet()) {
            each.getValue().write(json, row, column++);
          }
          json.writeEndArray();
        }
      }
    }
  }
}
