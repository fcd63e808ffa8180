package org.staywright.database;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import jakarta.transaction.Transactional.TxType;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.staywright.database.Author.Standing;
import org.staywright.database.Change.Action;
import org.staywright.database.Change.Subject;

/**
 * Who did what: a row for each change, written in the transaction of the change. What is taken back
 * leaves none, and a change without its row cannot be. Rows are added and read, nothing else.
 */
@ApplicationScoped
public class Audit {

  private static final String COLUMNS =
      "happened, author, standing, address, request, subject, subject_id, action,"
          + " before_change, after_change";

  private static final String ADD =
      "insert into audit (" + COLUMNS + ") values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

  private final Database database;

  public Audit(DataSource source) {
    this.database = new Database(source);
  }

  /** In the transaction at hand, without which nothing is written. */
  @Transactional(TxType.MANDATORY)
  public void note(Author author, Change change) {
    database.read(
        connection -> {
          note(connection, author, change);
          return null;
        });
  }

  /** In the transaction of a connection. */
  public static void note(Connection connection, Author author, Change change) throws SQLException {
    Instant now = Instant.now().truncatedTo(ChronoUnit.MILLIS);
    List<Object> values =
        Arrays.asList(
            now.atOffset(ZoneOffset.UTC),
            author.name(),
            author.standing().code(),
            author.address(),
            author.request(),
            change.subject().code(),
            change.id(),
            change.action().code(),
            change.before(),
            change.after());
    try (PreparedStatement row = connection.prepareStatement(ADD)) {
      bind(row, values).executeUpdate();
    }
  }

  /**
   * Some rows, the newest first.
   *
   * @param before the place that they come before, null for the newest of all
   */
  public List<Recorded> page(AuditSearch search, Recorded.@Nullable Place before, int most) {
    return rows(search.before(before), most);
  }

  public Optional<Recorded> find(long id) {
    return rows(new AuditSearch.Sql("id = ?", List.of(id)), 1).stream().findFirst();
  }

  private List<Recorded> rows(AuditSearch.Sql wanted, int most) {
    String sql =
        "select id, %s from audit where %s fetch first %d rows only"
            .formatted(COLUMNS, wanted.text(), most);
    return database.read(
        connection -> {
          List<Recorded> rows = new ArrayList<>();
          try (PreparedStatement query = connection.prepareStatement(sql);
              ResultSet row = bind(query, wanted.values()).executeQuery()) {
            while (row.next()) {
              rows.add(recorded(row));
            }
          }
          return rows;
        });
  }

  private static Recorded recorded(ResultSet row) throws SQLException {
    return new Recorded(
        row.getLong("id"),
        row.getObject("happened", OffsetDateTime.class).toInstant(),
        new Author(
            Standing.of(row.getString("standing")),
            row.getString("author"),
            row.getString("address"),
            row.getString("request")),
        new Change(
            Subject.of(row.getString("subject")),
            row.getString("subject_id"),
            Action.of(row.getString("action")),
            row.getString("before_change"),
            row.getString("after_change")));
  }

  private static PreparedStatement bind(PreparedStatement statement, List<?> values)
      throws SQLException {
    for (int i = 0; i < values.size(); i++) {
      statement.setObject(i + 1, values.get(i));
    }
    return statement;
  }
}
