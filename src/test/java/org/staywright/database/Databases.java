package org.staywright.database;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.Properties;
import java.util.UUID;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.h2.jdbcx.JdbcDataSource;
import org.postgresql.ds.PGSimpleDataSource;
import org.staywright.job.DamperToBeside;

/**
 * New databases of either kind, with the tables of the program and nothing in them. Each is a copy
 * of one that was made once in a run.
 */
public final class Databases {

  /** One that sorts otherwise than by code points. */
  private static final String LANGUAGE =
      " encoding 'UTF8' locale_provider icu icu_locale 'de-DE' locale 'C'";

  /** Name of the one that each on PostgreSQL is a copy of. */
  private static String migrated;

  private static EmbeddedPostgres server;

  private Databases() {}

  public static DataSource h2() {
    DataSource database = inMemory();
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(Migrated.H2);
    } catch (SQLException e) {
      throw new IllegalStateException("no copy", e);
    }
    return database;
  }

  /** What each is a copy of, once it is wanted. */
  private static final class Migrated {
    static final String H2 = script();
  }

  /** All that makes a database what the program's migrations make of it. */
  private static String script() {
    DataSource database = inMemory();
    migrate(database);
    StringBuilder script = new StringBuilder();
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement();
        ResultSet lines = statement.executeQuery("script nopasswords")) {
      while (lines.next()) {
        String line = lines.getString(1);
        script.append(line.startsWith("CREATE USER") ? "" : line).append('\n');
      }
    } catch (SQLException e) {
      throw new IllegalStateException("no script", e);
    }
    return script.toString();
  }

  private static JdbcDataSource inMemory() {
    JdbcDataSource database = new JdbcDataSource();
    database.setURL("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1");
    return database;
  }

  /** In a file; the same file is the same database. */
  public static DataSource h2(Path file) {
    JdbcDataSource database = new JdbcDataSource();
    database.setURL("jdbc:h2:file:" + file.toAbsolutePath() + ";WRITE_DELAY=0");
    migrate(database);
    return database;
  }

  public static synchronized DataSource postgresql() {
    if (migrated == null) {
      migrated = created("template0" + LANGUAGE);
      migrate(at(migrated));
    }
    return at(created(migrated));
  }

  /** The address of a new database without tables, on a server that all tests share. */
  public static String postgresqlUrl() {
    return url(created("template0" + LANGUAGE));
  }

  private static String url(String name) {
    return server.getJdbcUrl("postgres", name);
  }

  private static DataSource at(String name) {
    PGSimpleDataSource database = new PGSimpleDataSource();
    database.setURL(url(name));
    return database;
  }

  /** The name of a new one, made of a template. */
  private static synchronized String created(String template) {
    String name = "test_" + UUID.randomUUID().toString().replace('-', '_');
    try {
      if (server == null) {
        // Nothing here need survive a failure of the machine.
        server =
            EmbeddedPostgres.builder()
                .setServerConfig("fsync", "off")
                .setServerConfig("full_page_writes", "off")
                .start();
      }
      try (Connection connection = server.getPostgresDatabase().getConnection()) {
        connection.createStatement().execute("create database " + name + " template " + template);
      }
    } catch (IOException | SQLException e) {
      throw new IllegalStateException("no PostgreSQL", e);
    }
    return name;
  }

  /** As an earlier version of the program left them. */
  public static DataSource h2Of(String version) {
    DataSource database = inMemory();
    flyway(database, "/application.properties").target(version).load().migrate();
    return database;
  }

  public static DataSource postgresqlOf(String version) {
    DataSource database = at(created("template0" + LANGUAGE));
    flyway(database, "/application-postgresql.properties").target(version).load().migrate();
    return database;
  }

  /** To the version of today. */
  public static void migrate(DataSource database) {
    boolean h2 = database instanceof JdbcDataSource;
    flyway(database, h2 ? "/application.properties" : "/application-postgresql.properties")
        .load()
        .migrate();
  }

  /** With the kind of text that the program itself would use. */
  private static FluentConfiguration flyway(DataSource database, String settings) {
    Properties program = new Properties();
    try (InputStream file = Databases.class.getResourceAsStream(settings)) {
      program.load(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    String text = program.getProperty("quarkus.flyway.placeholders.ordered_text");
    return Flyway.configure()
        .dataSource(database)
        .placeholders(Map.of("ordered_text", text))
        .javaMigrations(new DamperToBeside(), new AuditStays());
  }
}
