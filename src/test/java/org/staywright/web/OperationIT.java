package org.staywright.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.matchesPattern;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.staywright.Patience;
import org.staywright.form.Jobs;

/** With the database in another process, and with the log in a file as JSON. */
class OperationIT {

  private static final Path LOG = Path.of("target", "structured.log");

  private static DatabaseOfItsOwn database;
  private static Instance program;

  @BeforeAll
  static void start() throws Exception {
    Files.deleteIfExists(LOG);
    database = new DatabaseOfItsOwn();
    program =
        Instance.onH2(
            "operation",
            Map.of(
                "QUARKUS_DATASOURCE_JDBC_URL",
                database.url(),
                "QUARKUS_LOG_FILE_ENABLED",
                "true",
                "QUARKUS_LOG_FILE_JSON_ENABLED",
                "true",
                "QUARKUS_LOG_FILE_PATH",
                LOG.toString(),
                "QUARKUS_HTTP_ACCESS_LOG_ENABLED",
                "true"));
    program.beAsked();
  }

  @AfterAll
  static void end() {
    program.close();
    database.kill();
  }

  @Test
  void isNotReadyWithoutItsDatabaseAndRecoversByItself() throws IOException {
    ready(200).body("checks[0].data.revision", equalTo(1));
    database.kill();
    try {
      ready(503).body("status", equalTo("DOWN"));
      given().when().get("/q/health/live").then().statusCode(200);
      given()
          .when()
          .get("/api/v1/parts")
          .then()
          .statusCode(503)
          .contentType("application/problem+json")
          .header("Retry-After", "10")
          .body("detail", containsString("database"));
      given()
          .when()
          .get("/jobs")
          .then()
          .statusCode(503)
          .contentType("text/html")
          .body(containsString("database"));
    } finally {
      database.start();
    }
    ready(200).body("status", equalTo("UP"));
    given().when().get("/api/v1/parts").then().statusCode(200).body("total", greaterThan(1000));
    given().when().get("/jobs").then().statusCode(200);
  }

  @Test
  void aBatchGoesOnByItselfOnceTheDatabaseIsBack() throws IOException, InterruptedException {
    int many = 160;
    String lids = "[" + String.join(",", Collections.nCopies(many, Jobs.LEAST)) + "]";
    String batch =
        given()
            .contentType("application/json")
            .body(lids)
            .post("/api/v1/batches")
            .then()
            .statusCode(202)
            .extract()
            .header("Location");
    Patience.until(() -> done(batch), done -> done > 0);
    database.kill();
    try {
      given().get(batch).then().statusCode(503);
    } finally {
      database.start();
    }
    assertTrue(done(batch) < many, "done before the database was gone");
    Patience.until(() -> given().get(batch).path("state"), "done"::equals);
    assertEquals(many, done(batch));
  }

  private static int done(String batch) {
    return given().get(batch).then().statusCode(200).extract().path("done");
  }

  private static ValidatableResponse ready(int status) {
    return given().when().get("/q/health/ready").then().statusCode(status);
  }

  @Test
  void keepsANameGivenToARequestAndNamesTheOthers() {
    given()
        .header("X-Request-Id", "order-4711.a_b")
        .when()
        .get("/parts")
        .then()
        .header("X-Request-Id", "order-4711.a_b");
    for (String bad : List.of("x".repeat(65), "a b", "ä", "<i>")) {
      given()
          .header("X-Request-Id", bad)
          .when()
          .get("/api/v1/parts/NONE")
          .then()
          .statusCode(404)
          .header("X-Request-Id", matchesPattern("[0-9a-f-]{36}"));
    }
    given().when().get("/q/health/live").then().header("X-Request-Id", matchesPattern(".{36}"));
  }

  @Test
  void writesALogThatCanBeReadByALineWithTheRequestInIt() throws Exception {
    given()
        .header("X-Request-Id", "to-be-found")
        .when()
        .get("/api/v1/parts")
        .then()
        .statusCode(200);
    JsonNode line = Patience.until(() -> line("to-be-found"), Objects::nonNull);
    assertTrue(line.path("message").asText().contains("/api/v1/parts 200"), line.toString());
    assertEquals("INFO", line.path("level").asText());
  }

  /** Null where none is written yet. */
  private static JsonNode line(String id) {
    ObjectMapper json = new ObjectMapper();
    try {
      for (String line : Files.readAllLines(LOG)) {
        JsonNode each = json.readTree(line);
        if (each.path("mdc").path("requestId").asText().equals(id)) {
          return each;
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return null;
  }

  @Test
  void measuresTheRangeAndItsRankings() {
    double before = metric("staywright_ranking_seconds_count");
    given()
        .contentType("application/json")
        .body(Jobs.LID)
        .when()
        .post("/api/v1/fits")
        .then()
        .statusCode(200);
    assertEquals(before + 1, metric("staywright_ranking_seconds_count"));
    assertTrue(metric("staywright_ranking_seconds_sum") > 0);
    int parts = given().get("/api/v1/parts").path("total");
    int revision = given().get("/api/v1/stock/revisions").path("items[0].revision");
    assertEquals(parts, metric("staywright_range_parts"));
    assertEquals(revision, metric("staywright_range_revision"));
    assertEquals(0, metric("staywright_tasks_open"));
  }

  @Test
  void countsFilesOfStockByWhatCameOfThem() {
    String refused = "staywright_imports_total{outcome=\"refused\"}";
    double before = metric(refused);
    given()
        .contentType("text/csv")
        .body("nothing;of;this\n1;2;3\n")
        .when()
        .post("/api/v1/stock/imports?dryRun=true")
        .then()
        .statusCode(422);
    assertEquals(before + 1, metric(refused));
  }

  @Test
  void measuresRequestsByTheirRouteNotByWhatStandsInIt() {
    given().when().get("/api/v1/parts/NONE-1").then().statusCode(404);
    String all = given().when().get("/q/metrics").asString();
    assertTrue(all.contains("uri=\"/api/v1/parts/{partNumber}\""), "no template of a route");
    assertTrue(!all.contains("NONE-1"), "a number stands in a metric");
  }

  /** 0 where it is not there yet. */
  private static double metric(String name) {
    return given()
        .when()
        .get("/q/metrics")
        .asString()
        .lines()
        .filter(line -> line.startsWith(name + " ") || line.startsWith(name + "{"))
        .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1)))
        .findFirst()
        .orElse(0);
  }
}
