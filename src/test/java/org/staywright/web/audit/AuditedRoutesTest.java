package org.staywright.web.audit;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.staywright.Patience;
import org.staywright.backup.Emptied;
import org.staywright.database.Audit;
import org.staywright.database.AuditSearch;
import org.staywright.database.Author.Standing;
import org.staywright.database.Recorded;
import org.staywright.stock.EmptyStock;
import org.staywright.stock.SampleRange;
import org.staywright.stock.Stock;
import org.staywright.web.door.ChangingRoute;

/**
 * Every address under which something may change leaves exactly the rows that it should, or stands
 * here with the reason why it leaves none.
 */
@QuarkusTest
@Tag("server")
@TestProfile(AuditedRoutesTest.Untouched.class)
class AuditedRoutesTest {

  /** A program of its own: the tests of batches stop those of the one they share. */
  public static class Untouched extends EmptyStock {}

  private static final String WORKS_OUT = "works out and stores nothing";
  private static final String WAITS = "takes a file in, which changes nothing until it is written";
  private static final String ACCOUNTS = "only where there are accounts: AuditedAccountsTest";
  private static final String SESSION = "begins or ends a session and changes nothing else";
  private static final String NOBODY_HOME = "nothing is there";

  /** What changes nothing that is kept, and why it is taken for that. */
  private static final Map<String, String> LEAVES_NONE =
      Map.ofEntries(
          Map.entry("POST /preferences", "kept by the browser alone"),
          Map.entry("POST /changes/name", "kept by the browser alone"),
          Map.entry("POST /accounts", ACCOUNTS),
          Map.entry("POST /accounts/{id}", ACCOUNTS),
          Map.entry("POST /accounts/{id}/word", ACCOUNTS),
          Map.entry("POST /account/password", ACCOUNTS),
          Map.entry("POST /account/tokens", ACCOUNTS),
          Map.entry("POST /account/tokens/{id}/remove", ACCOUNTS),
          Map.entry("POST /account/sign-out", SESSION),
          Map.entry("POST /sign-in", SESSION),
          Map.entry("POST /welcome", ACCOUNTS),
          Map.entry("POST /{path:.+}", NOBODY_HOME),
          Map.entry("PUT /{path:.+}", NOBODY_HOME),
          Map.entry("DELETE /{path:.+}", NOBODY_HOME),
          Map.entry("POST /mounts/stop", "stops a search, of which nothing is stored"),
          Map.entry("POST /profile/points", WORKS_OUT),
          Map.entry("POST /backup", WAITS),
          Map.entry("POST /stock", WAITS),
          Map.entry("POST /stock/imports/{id}/plan", WAITS),
          Map.entry("POST /stock/imports/{id}/stop", "what is stopped is taken back"),
          Map.entry("POST /api/v1/fits", WORKS_OUT),
          Map.entry("POST /api/v1/fits/curve", WORKS_OUT),
          Map.entry("POST /api/v1/fits/motion", WORKS_OUT),
          Map.entry("POST /api/v1/fits/chance", WORKS_OUT),
          Map.entry("POST /api/v1/fits/ideal", WORKS_OUT),
          Map.entry("POST /api/v1/fits/why", WORKS_OUT),
          Map.entry("POST /api/v1/parts-lists.json", WORKS_OUT),
          Map.entry("POST /api/v1/parts-lists.csv", WORKS_OUT),
          Map.entry("POST /api/v1/parts-lists.xlsx", WORKS_OUT),
          Map.entry("POST /api/v1/parts-lists.pdf", WORKS_OUT),
          Map.entry("POST /api/v1/centre-of-mass", WORKS_OUT),
          Map.entry("POST /api/v1/replacements", WORKS_OUT),
          Map.entry("POST /api/v1/mounts", WORKS_OUT));

  @Inject Stock stock;
  @Inject DataSource database;
  @Inject Audit audit;

  @BeforeEach
  void fill() {
    Emptied.all(database);
    new SampleRange(stock, true).loadIfFirst();
  }

  @Test
  void noRouteIsForgotten() {
    Set<String> known = new TreeSet<>(LEAVES_NONE.keySet());
    Stream.of(Deed.values()).map(deed -> deed.route).forEach(known::add);
    Set<String> served =
        ChangingRoute.all()
            .map(ChangingRoute::toString)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(served, known);
  }

  static Stream<Deed> deeds() {
    return Stream.of(Deed.values());
  }

  @ParameterizedTest
  @MethodSource("deeds")
  void aChangeLeavesItsRowsAndNoOther(Deed deed) throws InterruptedException {
    Deed.Prepared prepared = deed.prepare.get();
    long last = last();
    Response answer = prepared.send(Names.ANNA);
    assertTrue(answer.statusCode() < 400, () -> deed + ": " + answer.asString());
    int wanted = deed.rows.size();
    List<Recorded> rows = Patience.until(() -> since(last), found -> found.size() >= wanted);
    assertEquals(deed.rows, rows.stream().map(AuditedRoutesTest::deed).toList());
    for (Recorded row : rows) {
      assertEquals(Standing.SAID, row.author().standing());
      assertEquals("Anna Berg", row.author().name().replaceAll(" <.*", ""));
      assertEquals("127.0.0.1", row.author().address());
      assertEquals(answer.header("X-Request-Id"), row.author().request());
    }
  }

  @ParameterizedTest
  @MethodSource("deeds")
  void whoGivesNoNameIsNobodyAndStillNoted(Deed deed) throws InterruptedException {
    Deed.Prepared prepared = deed.prepare.get();
    long last = last();
    prepared.send(Names.NONE);
    List<Recorded> rows =
        Patience.until(() -> since(last), found -> found.size() >= deed.rows.size());
    rows.forEach(row -> assertEquals(Standing.NOBODY, row.author().standing()));
  }

  @ParameterizedTest
  @MethodSource("refusals")
  void whatIsRefusedLeavesNone(Refused refused) {
    Response answer;
    Deed.Prepared prepared = refused.prepare.get();
    long last = last();
    answer = prepared.send(Names.ANNA);
    assertEquals(refused.status, answer.statusCode(), answer::asString);
    assertEquals(List.of(), since(last));
  }

  static Stream<Refused> refusals() {
    return Stream.of(Refused.values());
  }

  @Test
  void theSampleRangeIsTheDeedOfTheProgram() {
    Recorded loaded = audit.page(AuditSearch.ALL, null, 1).get(0);
    assertEquals("range.loaded 1", deed(loaded) + " " + loaded.change().id());
    assertEquals(Standing.PROGRAM, loaded.author().standing());
    assertTrue(loaded.change().after().contains("\"gas-spring\":2794"), loaded.change().after());
  }

  @Test
  void beforeAndAfterAreWhatTheInterfaceShows() {
    Deed.Job job = Deed.Job.saved();
    String before = given().get(job.path()).asString();
    given()
        .header("If-Match", job.tag())
        .contentType("application/json")
        .body(Deed.LID.replace("18", "19"))
        .put(job.path())
        .then()
        .statusCode(200);
    Recorded row = audit.page(AuditSearch.ALL, null, 1).get(0);
    assertEquals(before, row.change().before());
    assertEquals(given().get(job.path()).asString(), row.change().after());
    given().get("/api/v1/changes/" + row.id()).then().statusCode(200);
  }

  private static String deed(Recorded row) {
    return row.change().subject().code() + "." + row.change().action().code();
  }

  private long last() {
    return audit.page(AuditSearch.ALL, null, 1).stream()
        .mapToLong(Recorded::id)
        .findFirst()
        .orElse(0);
  }

  /** In their order. */
  private List<Recorded> since(long last) {
    List<Recorded> rows = new ArrayList<>(audit.page(AuditSearch.ALL, null, 50));
    rows.removeIf(row -> row.id() <= last);
    Collections.reverse(rows);
    return rows;
  }
}
