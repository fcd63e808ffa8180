package org.staywright.backup;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import javax.sql.DataSource;

/** The database of a program that tests share, with nothing in any of its tables. */
public final class Emptied {

  private Emptied() {}

  public static void all(DataSource database) {
    tables(database, StoredTable.NAMES);
  }

  /** Of batches alone: what is in stock stays. */
  public static void ofBatches(DataSource database) {
    tables(database, List.of("batch", "batch_job"));
  }

  /**
   * @param names each after those that it refers to
   */
  private static void tables(DataSource database, List<String> names) {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      for (int i = names.size() - 1; i >= 0; i--) {
        statement.executeUpdate("delete from " + names.get(i));
      }
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }
}
