package org.staywright.database;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.database.Somebody.ANNA;

import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.database.Author.Standing;
import org.staywright.database.Change.Action;
import org.staywright.database.Change.Subject;

/** Rows of the audit come with their change or not at all, are found again, and stay. */
class AuditTest {

  private static final Change LID = new Change(Subject.JOB, "7", Action.ADDED, null, "{\"a\":1}");

  private DataSource source;
  private Audit audit;

  DataSource database() {
    return Databases.h2();
  }

  @BeforeEach
  void open() {
    source = database();
    audit = new Audit(source);
  }

  private void note(Author author, Change change) {
    new Database(source)
        .write(
            connection -> {
              Audit.note(connection, author, change);
              return null;
            });
  }

  private List<Recorded> all() {
    return audit.page(AuditSearch.ALL, null, 100);
  }

  @Test
  void aRowSaysWhoDidWhatAndWhen() {
    Instant before = Instant.now().truncatedTo(ChronoUnit.MILLIS);
    note(ANNA, LID);
    Recorded row = all().get(0);
    assertEquals(ANNA, row.author());
    assertEquals(LID, row.change());
    assertTrue(!row.happened().isBefore(before) && !row.happened().isAfter(Instant.now()));
    assertEquals(row, audit.find(row.id()).orElseThrow());
  }

  @Test
  void whatIsTakenBackLeavesNone() {
    Database database = new Database(source);
    assertThrows(
        IllegalArgumentException.class,
        () ->
            database.write(
                connection -> {
                  Audit.note(connection, ANNA, LID);
                  throw new IllegalArgumentException("tried");
                }));
    assertEquals(List.of(), all());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "update audit set author = 'Bert'",
        "update audit set after_change = null where id = 1",
        "delete from audit",
        "delete from audit where id = 1"
      })
  void aRowIsNeitherChangedNorRemoved(String sql) throws SQLException {
    note(ANNA, LID);
    List<Recorded> before = all();
    try (var connection = source.getConnection();
        Statement statement = connection.createStatement()) {
      SQLException refused = assertThrows(SQLException.class, () -> statement.executeUpdate(sql));
      String why = "rows of the audit are neither changed nor removed";
      assertTrue(refused.getMessage().contains(why), refused.getMessage());
    }
    assertEquals(before, all());
  }

  @Test
  void isSearchedByWhoWhatSubjectAndTime() {
    note(ANNA, LID);
    note(new Author(Standing.SAID, "100% Bert_", "198.51.100.2", "r"), LID);
    note(Author.PROGRAM, new Change(Subject.RANGE, "1", Action.LOADED, null, "{}"));
    assertEquals(1, found(new AuditSearch("aNN", null, null, null, null, null)));
    assertEquals(1, found(new AuditSearch("198.51", null, null, null, null, null)));
    assertEquals(1, found(new AuditSearch("0% bert_", null, null, null, null, null)));
    assertEquals(0, found(new AuditSearch("_nn", null, null, null, null, null)));
    assertEquals(2, found(AuditSearch.of(Subject.JOB, "7")));
    assertEquals(0, found(AuditSearch.of(Subject.JOB, "1")));
    assertEquals(1, found(AuditSearch.of(Subject.RANGE, null)));
    assertEquals(1, found(new AuditSearch(null, null, null, Action.LOADED, null, null)));
    Instant soon = Instant.now().plusSeconds(60);
    Instant lately = Instant.now().minusSeconds(60);
    assertEquals(3, found(new AuditSearch(null, null, null, null, lately, soon)));
    assertEquals(0, found(new AuditSearch(null, null, null, null, soon, null)));
    assertEquals(0, found(new AuditSearch(null, null, null, null, null, lately)));
  }

  @Test
  void aSpanFindsAllOfItAndNothingElse() throws SQLException {
    Instant start = Instant.parse("2026-01-01T00:00:00Z");
    try (var connection = source.getConnection();
        var row =
            connection.prepareStatement(
                "insert into audit (happened, author, standing, subject, subject_id, action)"
                    + " values (?, '', 'program', 'job', ?, 'added')")) {
      for (int hour = 0; hour < 500; hour++) {
        // Every third is an hour or more out of its turn.
        int turn = hour % 3 == 0 ? hour + 3 : hour;
        row.setObject(1, start.plus(turn, ChronoUnit.HOURS).atOffset(ZoneOffset.UTC));
        row.setString(2, Integer.toString(turn));
        row.executeUpdate();
      }
    }
    for (int from = 0; from < 450; from += 37) {
      AuditSearch day =
          new AuditSearch(
              null,
              null,
              null,
              null,
              start.plus(from, ChronoUnit.HOURS),
              start.plus(from + 24, ChronoUnit.HOURS));
      Set<Integer> wanted = new TreeSet<>();
      for (int hour = 0; hour < 500; hour++) {
        int turn = hour % 3 == 0 ? hour + 3 : hour;
        if (turn >= from && turn < from + 24) {
          wanted.add(turn);
        }
      }
      Set<Integer> found =
          audit.page(day, null, 100).stream()
              .map(row -> Integer.valueOf(row.change().id()))
              .collect(Collectors.toCollection(TreeSet::new));
      assertEquals(wanted, found);
    }
  }

  private int found(AuditSearch search) {
    return audit.page(search, null, 100).size();
  }

  @Test
  void comesInPagesTheNewestFirst() {
    for (int i = 0; i < 5; i++) {
      note(ANNA, new Change(Subject.JOB, Integer.toString(i), Action.ADDED, null, "{}"));
    }
    List<Recorded> first = audit.page(AuditSearch.ALL, null, 2);
    assertEquals(List.of("4", "3"), ids(first));
    List<Recorded> second = audit.page(AuditSearch.ALL, first.get(1).place(), 2);
    assertEquals(List.of("2", "1"), ids(second));
    assertEquals(List.of("0"), ids(audit.page(AuditSearch.ALL, second.get(1).place(), 2)));
  }

  private static List<String> ids(List<Recorded> rows) {
    return rows.stream().map(row -> row.change().id()).toList();
  }
}
