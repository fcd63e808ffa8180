package org.staywright.stock;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcDataSource;
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
    stock = new Stock(database(folder));
    current = new CurrentRange(stock);
    imports = new Imports(stock, current, inbox);
  }

  /** Takes a file in, as an upload would be. */
  Imports.Outcome take(Path file) throws IOException {
    try (InputStream bytes = Files.newInputStream(file)) {
      Imports.Outcome outcome =
          imports.write(inbox.take(bytes, "synthetic"), REPLACE, (done, total) -> true);
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
