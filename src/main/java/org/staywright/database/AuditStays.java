package org.staywright.database;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.migration.Context;
import org.flywaydb.core.api.migration.JavaMigration;

/** Version 10 of the tables: rows of the audit are neither changed nor removed, whoever asks. */
public final class AuditStays implements JavaMigration {

  private static final String SAYING = "'rows of the audit are neither changed nor removed'";

  /**
   * A trigger of H2 is a class; one that is none refuses whatever calls for it, and its name tells
   * why. So it holds also where the database is opened without this program.
   */
  private static final List<String> H2 =
      List.of(
          "create force trigger audit_stays before update, delete on audit for each statement call "
              + SAYING);

  private static final List<String> POSTGRESQL =
      List.of(
          "create function audit_stays() returns trigger language plpgsql as"
              + " $$ begin raise exception "
              + SAYING
              + "; end $$",
          "create trigger audit_stays before update or delete or truncate on audit"
              + " for each statement execute function audit_stays()");

  @Override
  public MigrationVersion getVersion() {
    return MigrationVersion.fromVersion("10");
  }

  @Override
  public String getDescription() {
    return "audit stays";
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
    boolean h2 = connection.getMetaData().getDatabaseProductName().equals("H2");
    try (Statement statement = connection.createStatement()) {
      for (String sql : h2 ? H2 : POSTGRESQL) {
        statement.execute(sql);
      }
    }
  }
}
