package org.staywright.database;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Map;
import java.util.Properties;
import java.util.UUID;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.h2.jdbcx.JdbcDataSource;
import org.postgresql.ds.PGSimpleDataSource;
import org.staywright.job.DamperToBeside;

/** New databases of either kind, with the tables of the program and nothing in them. */
public final class Databases {

  /** One that sorts otherwise than by code points. */
  private static final String LANGUAGE =
      " template template0 encoding 'UTF8' locale_provider icu icu_locale 'de-DE' locale 'C'";

  private static EmbeddedPostgres server;

  private Databases() {}

  public static DataSource h2() {
    return h2("mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1");
  }

  /** In a file; the same file is the same database. */
  public static DataSource h2(Path file) {
    return h2("file:" + file.toAbsolutePath() + ";WRITE_DELAY=0");
  }

  private static DataSource h2(String address) {
    JdbcDataSource database = new JdbcDataSource();
    database.setURL("jdbc:h2:" + address);
    migrate(database, "/application.properties");
    return database;
  }

  public static DataSource postgresql() {
    PGSimpleDataSource database = new PGSimpleDataSource();
    database.setURL(postgresqlUrl());
    migrate(database, "/application-postgresql.properties");
    return database;
  }

  /** The address of a new database without tables, on a server that all tests share. */
  public static synchronized String postgresqlUrl() {
    String name = "test_" + UUID.randomUUID().toString().replace('-', '_');
    try {
      if (server == null) {
        server = EmbeddedPostgres.start();
      }
      try (Connection connection = server.getPostgresDatabase().getConnection()) {
        connection.createStatement().execute("create database " + name + LANGUAGE);
      }
    } catch (IOException | SQLException e) {
      throw new IllegalStateException("no PostgreSQL", e);
    }
    return server.getJdbcUrl("postgres", name);
  }

  /** As an earlier version of the program left them. */
  public static DataSource h2Of(String version) {
    JdbcDataSource database = new JdbcDataSource();
    database.setURL("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1");
    flyway(database, "/application.properties").target(version).load().migrate();
    return database;
  }

  public static DataSource postgresqlOf(String version) {
    PGSimpleDataSource database = new PGSimpleDataSource();
    database.setURL(postgresqlUrl());
    flyway(database, "/application-postgresql.properties").target(version).load().migrate();
    return database;
  }

  /** To the version of today. */
  public static void migrate(DataSource database) {
    boolean h2 = database instanceof JdbcDataSource;
    migrate(database, h2 ? "/application.properties" : "/application-postgresql.properties");
  }

  private static void migrate(DataSource database, String settings) {
    flyway(database, settings).load().migrate();
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
        .javaMigrations(new DamperToBeside());
  }
}
