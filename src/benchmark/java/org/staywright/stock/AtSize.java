package org.staywright.stock;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.util.Map;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcDataSource;
import org.staywright.database.Audit;
import org.staywright.database.Author;
import org.staywright.database.Change;
import org.staywright.database.Database;
import org.staywright.form.schema.AnswerJson;
import org.staywright.stock.intake.ImportOptions;
import org.staywright.stock.intake.Imports;
import org.staywright.stock.intake.Inbox;

/** A stock of its own on the disk, as the program keeps it, to be filled with a synthetic range. */
final class AtSize {

  static final ImportOptions REPLACE = ImportOptions.of("replace", "half", "");

  final Stock stock;
  final CurrentRange current;
  final Inbox inbox = new Inbox();
  final Imports imports;

  AtSize(Path folder) {
    stock = new PlainStock(database(folder));
    current = new CurrentRange(stock);
    imports = new Imports(stock, current, inbox);
  }

  /** Takes a file in, as an upload would be. */
  Imports.Outcome take(Path file) throws IOException {
    try (InputStream bytes = Files.newInputStream(file)) {
      Imports.Outcome outcome =
          imports.write(
              Author.PROGRAM, inbox.take(bytes, "synthetic"), REPLACE, (done, total) -> true);
      if (outcome.revision() == 0) {
        throw new IllegalStateException("refused: " + outcome.checked().faults().get(0));
      }
      return outcome;
    }
  }

  /** A file of so many rows, written once. */
  static Path file(int rows) throws IOException {
    Path file = Path.of("target", "synthetic-" + rows + ".csv");
    if (!Files.exists(file)) {
      SyntheticRange.write(file, rows);
    }
    return file;
  }

  /** Without the program there are no entities: its revisions are numbered by plain SQL. */
  private static final class PlainStock extends Stock {

    private final Database database;

    PlainStock(DataSource source) {
      super(new StockRows(source), new Audit(source));
      database = new Database(source);
    }

    @Override
    public int newest() {
      return database.read(
          connection -> {
            try (ResultSet row =
                connection
                    .prepareStatement("select coalesce(max(revision), 0) from stock_revision")
                    .executeQuery()) {
              row.next();
              return row.getInt(1);
            }
          });
    }

    @Override
    public int revise(Author author, int base, String origin, Revising work) {
      int revision = base + 1;
      return database.write(
          connection -> {
            connection
                .prepareStatement(
                    "insert into stock_revision (revision, origin) values (" + revision + ", '')")
                .executeUpdate();
            StockRows.change(connection, revision, work);
            String after = AnswerJson.tree(RevisionSummary.of(connection, revision)).toString();
            String id = Integer.toString(revision);
            Audit.note(
                connection,
                author,
                new Change(Change.Subject.RANGE, id, Change.Action.IMPORTED, null, after));
            return revision;
          });
    }
  }

  private static DataSource database(Path folder) {
    JdbcDataSource database = new JdbcDataSource();
    database.setURL(
        "jdbc:h2:file:"
            + folder.toAbsolutePath()
            + "/staywright;WRITE_DELAY=0;DB_CLOSE_DELAY=-1;LAZY_QUERY_EXECUTION=1");
    Flyway.configure()
        .dataSource(database)
        .placeholders(Map.of("ordered_text", "varchar(16)"))
        .load()
        .migrate();
    return database;
  }
}
