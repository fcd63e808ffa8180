package org.staywright.backup;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;

/** The database of a program that tests share, with nothing in any of its tables. */
public final class Emptied {

  private Emptied() {}

  public static void all(DataSource database) {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      for (int i = StoredTable.NAMES.size() - 1; i >= 0; i--) {
        statement.executeUpdate("delete from " + StoredTable.NAMES.get(i));
      }
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }
}
