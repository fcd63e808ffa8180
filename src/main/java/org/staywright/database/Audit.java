package org.staywright.database;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import jakarta.transaction.Transactional.TxType;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.sql.DataSource;
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

  /**
   * Numbers rise with time, but for what is written at once or by clocks that differ: for no more
   * than that.
   */
  private static final Duration ASTRAY = Duration.ofDays(1);

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
   * @param before the row that they came before, {@link Long#MAX_VALUE} for the newest of all
   */
  public List<Recorded> page(AuditSearch search, long before, int most) {
    long first = search.from() == null ? 0 : before(search.from().minus(ASTRAY));
    long last = search.until() == null ? before : since(search.until().plus(ASTRAY)).id;
    AuditSearch.Sql wanted = search.between(first, Math.min(before, last));
    return rows(wanted.text(), wanted.values(), most);
  }

  /** A row and its moment. */
  private record Place(long id, Instant happened) {}

  /** A row that is no later than a moment, 0 where none is found near it. */
  private long before(Instant moment) {
    for (int days : new int[] {1, 30, 365}) {
      Place place = since(moment.minus(Duration.ofDays(days)));
      if (!place.happened.isAfter(moment)) {
        return place.id;
      }
    }
    return 0;
  }

  /** The first row since a moment, which an index has at hand: a span need not read all others. */
  private Place since(Instant moment) {
    String sql =
        "select id, happened from audit where happened >= ?"
            + " order by happened fetch first 1 rows only";
    return database.read(
        connection -> {
          try (PreparedStatement query = connection.prepareStatement(sql);
              ResultSet row =
                  bind(query, List.of(moment.atOffset(ZoneOffset.UTC))).executeQuery()) {
            return row.next()
                ? new Place(row.getLong(1), row.getObject(2, OffsetDateTime.class).toInstant())
                : new Place(Long.MAX_VALUE, Instant.MAX);
          }
        });
  }

  public Optional<Recorded> find(long id) {
    return rows("id = ?", List.of(id), 1).stream().findFirst();
  }

  private List<Recorded> rows(String which, List<Object> values, int most) {
    String sql =
        "select id, %s from audit where %s order by id desc fetch first %d rows only"
            .formatted(COLUMNS, which, most);
    return database.read(
        connection -> {
          List<Recorded> rows = new ArrayList<>();
          try (PreparedStatement query = connection.prepareStatement(sql);
              ResultSet row = bind(query, values).executeQuery()) {
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
            Subject.valueOf(row.getString("subject").toUpperCase(Locale.ROOT)),
            row.getString("subject_id"),
            Action.valueOf(row.getString("action").toUpperCase(Locale.ROOT)),
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
