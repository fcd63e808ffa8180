package org.staywright.backup;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A table as the database has it.
 *
 * @param columns each by its name, in their order
 */
record StoredTable(String name, Map<String, ColumnKind> columns) {

  /** All of a backup; a table stands after those that its rows refer to. */
  static final List<String> NAMES =
      List.of("stock_revision", "part", "fitting", "job", "sample_jobs", "batch", "batch_job");

  /**
   * What is in no backup: who may sign in is this installation's own, and whoever gets hold of a
   * file of jobs shall have no passwords to guess at. An audit that a backup puts back were none.
   */
  static final List<String> LEFT_OUT =
      List.of("account", "account_session", "account_token", "audit");

  static List<StoredTable> all(Connection connection) throws SQLException {
    List<StoredTable> tables = new ArrayList<>();
    for (String name : NAMES) {
      tables.add(of(connection, name));
    }
    return tables;
  }

  private static StoredTable of(Connection connection, String name) throws SQLException {
    Map<String, ColumnKind> columns = new LinkedHashMap<>();
    try (PreparedStatement query =
            connection.prepareStatement("select * from " + name + " where 1 = 0");
        ResultSet none = query.executeQuery()) {
      ResultSetMetaData told = none.getMetaData();
      for (int i = 1; i <= told.getColumnCount(); i++) {
        columns.put(
            told.getColumnName(i).toLowerCase(Locale.ROOT), ColumnKind.of(told.getColumnType(i)));
      }
    }
    return new StoredTable(name, columns);
  }

  long rows(Connection connection) throws SQLException {
    return number(connection, "select count(*) from " + name);
  }

  static long number(Connection connection, String sql) throws SQLException {
    try (PreparedStatement query = connection.prepareStatement(sql);
        ResultSet row = query.executeQuery()) {
      row.next();
      return row.getLong(1);
    }
  }

  /** The version of the tables, as the last migration left them. */
  static String schema(Connection connection) throws SQLException {
    String sql =
        "select \"version\" from \"flyway_schema_history\" where \"success\""
            + " order by \"installed_rank\" desc fetch first 1 row only";
    try (PreparedStatement query = connection.prepareStatement(sql);
        ResultSet row = query.executeQuery()) {
      row.next();
      return row.getString(1);
    }
  }
}
