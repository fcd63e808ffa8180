package org.staywright.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.staywright.Patience;
import org.staywright.database.Databases;
import org.staywright.database.OnPostgresql;
import org.staywright.form.Jobs;

/** Two programs on one database, both started at once while it is empty; the first dies at last. */
@OnPostgresql
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class TwoInstancesIT {

  private static final int LAST = Integer.MAX_VALUE;
  private static final String PART =
      "part_number,family,finish,rod_thread,tube_thread,mounting,rod_diameter_mm,tube_diameter_mm,"
          + "stroke_mm,extended_length_mm,force_class_n,progression,lead_time_days\n"
          + "TRY-0001,gas-spring,zinc,M8,M8,rod-down,8,18,160,380,400,1.35,5\n";

  private static Instance one;
  private static Instance other;

  @BeforeAll
  static void startBoth() throws Exception {
    String database = Databases.postgresqlUrl();
    one = Instance.onPostgresql("instance-one", database);
    other = Instance.onPostgresql("instance-other", database);
    one.awaitReady();
    other.awaitReady();
  }

  @AfterAll
  static void endBoth() {
    one.close();
    other.close();
  }

  @Test
  @Order(1)
  void anEmptyDatabaseIsFilledWithSamplesOnce() {
    given().get(one.url("/api/v1/stock/revisions")).then().body("items.size()", equalTo(1));
    List<String> names = given().get(one.url("/api/v1/jobs?size=200")).path("items.name");
    assertTrue(names.size() > 3, names.toString());
    assertEquals(names.size(), new HashSet<>(names).size(), names.toString());
  }

  @Test
  void whatIsImportedAtOneTheOtherRanksAtOnce() {
    // Both have the range in memory.
    for (Instance each : List.of(one, other)) {
      given().get(each.url("/api/v1/parts/TRY-0001")).then().statusCode(404);
    }
    given()
        .contentType("text/csv")
        .body(PART)
        .post(one.url("/api/v1/stock/imports?mode=update"))
        .then()
        .statusCode(200)
        .body("revision", equalTo(2));
    String why = "{\"job\": %s, \"partNumber\": \"TRY-0001\"}".formatted(Jobs.LID);
    for (Instance each : List.of(other, one)) {
      given().get(each.url("/api/v1/parts/TRY-0001")).then().statusCode(200);
      given()
          .contentType(ContentType.JSON)
          .body(why)
          .post(each.url("/api/v1/fits/why"))
          .then()
          .statusCode(200);
    }
  }

  @Test
  void aJobThatChangedAtTheOtherIsNotOverwritten() {
    Response saved =
        given().contentType(ContentType.JSON).body(Jobs.LID).post(one.url("/api/v1/jobs"));
    String path = saved.getHeader("Location").replaceFirst("http://[^/]*", "");
    String seen = saved.getHeader("ETag");
    change(other, path, seen, "Roof locker lid").then().statusCode(200);
    change(one, path, seen, "Cellar locker lid").then().statusCode(412);
    for (Instance each : List.of(one, other)) {
      given().get(each.url(path)).then().body("name", equalTo("Roof locker lid"));
    }
  }

  private static Response change(Instance at, String path, String seen, String name) {
    return given()
        .contentType(ContentType.JSON)
        .header("If-Match", seen)
        .body(Jobs.lid().put("name", name).toString())
        .put(at.url(path));
  }

  @Test
  void batchesAreSharedAndNoJobIsJudgedTwice() throws InterruptedException {
    List<String> ids = List.of(begin(one, 34), begin(one, 34), begin(one, 34));
    for (String id : ids) {
      Patience.until(() -> state(other, id).equals("done"));
      given().get(one.url("/api/v1/batches/" + id)).then().body("done", equalTo(34));
    }
    assertEquals(3 * 34, judged(one) + judged(other));
  }

  @Test
  @Order(LAST - 1)
  void whatIsPutBackAtOneTheOtherHasAtOnce() {
    byte[] backup = given().get(one.url("/api/v1/backup.zip")).asByteArray();
    String part = "/api/v1/parts/TRY-0002";
    given()
        .contentType("text/csv")
        .body(PART.replace("TRY-0001", "TRY-0002"))
        .post(one.url("/api/v1/stock/imports?mode=update"))
        .then()
        .statusCode(200);
    given().get(other.url(part)).then().statusCode(200);
    given()
        .contentType("application/zip")
        .body(backup)
        .post(other.url("/api/v1/restore"))
        .then()
        .statusCode(200);
    for (Instance each : List.of(one, other)) {
      given().get(each.url(part)).then().statusCode(404);
    }
  }

  @Test
  @Order(LAST)
  void aBatchWhoseInstanceIsKilledIsFinishedByTheOtherWithinAMinute() throws InterruptedException {
    String id = begin(one, 200);
    Patience.until(() -> done(one, id) > 0);
    one.kill();
    int before = done(other, id);
    assertTrue(before < 200, "over before the kill");
    long start = System.nanoTime();
    Patience.until(() -> done(other, id) > before);
    double seconds = (System.nanoTime() - start) / 1e9;
    System.out.printf("taken up after %.0f s, %d of 200 done%n", seconds, before);
    assertTrue(seconds < 60, seconds + " s");
    Patience.until(() -> state(other, id).equals("done"));
    List<Integer> rows =
        given().get(other.url("/api/v1/batches/" + id + "/results.json")).path("items.row");
    assertEquals(200, rows.size());
    assertEquals(200, new HashSet<>(rows).size());
  }

  private static String begin(Instance at, int count) {
    ArrayNode jobs = JsonNodeFactory.instance.arrayNode();
    for (int i = 0; i < count; i++) {
      jobs.add(Jobs.lid().put("name", "lid " + i));
    }
    return given()
        .contentType(ContentType.JSON)
        .body(jobs.toString())
        .post(at.url("/api/v1/batches"))
        .then()
        .statusCode(202)
        .extract()
        .path("result.id");
  }

  private static String state(Instance at, String batch) {
    return given().get(at.url("/api/v1/batches/" + batch)).path("state");
  }

  private static int done(Instance at, String batch) {
    return given().get(at.url("/api/v1/batches/" + batch)).path("done");
  }

  private static double judged(Instance at) {
    return given()
        .get(at.url("/q/metrics"))
        .asString()
        .lines()
        .filter(line -> line.startsWith("staywright_batch_jobs_total "))
        .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1)))
        .sum();
  }
}
