package org.staywright.web.backup;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.staywright.database.Databases;
import org.staywright.database.OnPostgresql;
import org.staywright.form.Jobs;
import org.staywright.web.Instance;
import org.staywright.web.PageForm;
import org.staywright.web.api.document.Described;

/** On a database of its own: whatever else there is would be replaced as well. */
@OnPostgresql
class BackupPageIT {

  private static final String ONLY =
      "part_number,family,finish,rod_thread,tube_thread,mounting,rod_diameter_mm,tube_diameter_mm,"
          + "stroke_mm,extended_length_mm,force_class_n,progression,lead_time_days\n"
          + "ONLY-0001,gas-spring,zinc,M8,M8,rod-down,8,18,160,380,400,1.35,5\n";

  private static Instance program;

  @BeforeAll
  static void start() throws Exception {
    program = Instance.onPostgresql("backup", Databases.postgresqlUrl());
    program.beAsked();
  }

  @AfterAll
  static void end() {
    program.close();
  }

  private static byte[] download() {
    return given()
        .get("/api/v1/backup.zip")
        .then()
        .statusCode(200)
        .contentType("application/zip")
        .header(
            "Content-Disposition",
            matchesPattern("attachment; filename=\"staywright-\\d{8}-\\d{6}\\.zip\""))
        .extract()
        .asByteArray();
  }

  private static Response restore(byte[] file, String query) {
    return given().contentType("application/zip").body(file).post("/api/v1/restore" + query);
  }

  private static void takeIn(String mode) {
    given()
        .contentType("text/csv")
        .body(ONLY)
        .post("/api/v1/stock/imports?mode=" + mode)
        .then()
        .statusCode(200);
  }

  @Test
  void whatWasChosenForAJobSurvivesThoughTheRangeIsGoneMeanwhile() {
    Response saved = given().contentType(ContentType.JSON).body(Jobs.LID).post("/api/v1/jobs");
    String job = saved.getHeader("Location");
    JsonPath fits =
        given().contentType(ContentType.JSON).body(Jobs.LID).post("/api/v1/fits").jsonPath();
    String wish =
        "{\"partNumber\": \"%s\", \"count\": %d}"
            .formatted(fits.getString("fits[0].partNumber"), fits.getInt("fits[0].count"));
    String tag =
        given()
            .contentType(ContentType.JSON)
            .header("If-Match", saved.getHeader("ETag"))
            .body(wish)
            .put(job + "/choice")
            .then()
            .statusCode(200)
            .extract()
            .header("ETag");
    takeIn("update");
    String list = given().get(job + "/parts-list.json").asString();
    byte[] backup = download();

    given().header("If-Match", tag).delete(job).then().statusCode(204);
    takeIn("replace");
    given().get("/api/v1/parts").then().body("total", equalTo(1));
    int revision = given().get("/api/v1/stock/revisions").path("items[0].revision");

    restore(backup, "")
        .then()
        .statusCode(200)
        .body("restored", equalTo(true), "rows.batch", equalTo(0));
    assertEquals(list, given().get(job + "/parts-list.json").asString());
    JsonPath revisions = given().get("/api/v1/stock/revisions").jsonPath();
    assertEquals(revision + 1, revisions.getInt("items[0].revision"));
    assertTrue(revisions.getString("items[0].origin").startsWith("backup of "));
    given().get("/api/v1/parts").then().body("total", not(equalTo(1)));
    // Whoever still has the job on the screen may not overwrite what was put back.
    given().header("If-Match", tag).delete(job).then().statusCode(412);
    String now = given().get(job).getHeader("ETag");
    given().header("If-Match", now).delete(job).then().statusCode(204);
  }

  @Test
  void onlyCheckingChangesNothing() {
    byte[] backup = download();
    given().contentType(ContentType.JSON).body(Jobs.LID).post("/api/v1/jobs");
    int jobs = given().get("/api/v1/jobs").path("total");
    Response checked = restore(backup, "?dryRun=true");
    Described.served().conforming(checked, "POST", "/api/v1/restore");
    checked.then().statusCode(200).body("restored", equalTo(false), "rows.job", equalTo(jobs - 1));
    given().get("/api/v1/jobs").then().body("total", equalTo(jobs));
  }

  @Test
  void aFaultyFileIsRefusedAndSaysWhy() {
    byte[] backup = download();
    backup[backup.length - 1] = 99;
    int jobs = given().get("/api/v1/jobs").path("total");
    for (byte[] bad :
        new byte[][] {new byte[0], "no ZIP".getBytes(StandardCharsets.UTF_8), halfOf(backup)}) {
      restore(bad, "")
          .then()
          .statusCode(422)
          .contentType("application/problem+json")
          .body("errors.code", hasItem("backup-not-whole"));
    }
    given().contentType("text/csv").body("x").post("/api/v1/restore").then().statusCode(415);
    given().get("/api/v1/jobs").then().body("total", equalTo(jobs));
  }

  private static byte[] halfOf(byte[] whole) {
    return Arrays.copyOf(whole, whole.length / 2);
  }

  @Test
  void thePageShowsABackupBesideWhatIsHereAndPutsItBackWhenTold() {
    byte[] backup = download();
    given().contentType(ContentType.JSON).body(Jobs.LID).post("/api/v1/jobs");
    int jobs = given().get("/api/v1/jobs").path("total");
    Response page = given().get("/backup");
    page.then().statusCode(200).body(containsString("href=\"/api/v1/backup.zip\""));

    Response shown = sent(page, backup);
    shown.then().statusCode(200).body(containsString("Replace range, jobs and batches?"));
    assertTrue(shown.asString().contains("<td class=\"n\">" + (jobs - 1) + "</td>"));
    given().get("/api/v1/jobs").then().body("total", equalTo(jobs));

    PageForm form = PageForm.of(shown, "/backup/restore");
    form.post("/backup/restore")
        .then()
        .statusCode(200)
        .body(containsString("Replace range, jobs and batches?"));
    given().get("/api/v1/jobs").then().body("total", equalTo(jobs));

    Response done = form.with("confirmed", "yes").post("/backup/restore");
    done.then().statusCode(303);
    given().get(done.getHeader("Location")).then().body(containsString("has been put back"));
    given().get("/api/v1/jobs").then().body("total", equalTo(jobs - 1));
    form.post("/backup/restore").then().body(containsString("no longer kept"));
  }

  @Test
  void thePageRefusesAFaultyFileAndWhoeverHasNoToken() {
    Response page = given().get("/backup");
    sent(page, "part_number".getBytes(StandardCharsets.UTF_8))
        .then()
        .statusCode(200)
        .body(containsString("is no ZIP"), containsString("Nothing was changed"));
    given()
        .multiPart("file", "backup.zip", download(), "application/zip")
        .post("/backup")
        .then()
        .statusCode(400);
  }

  private static Response sent(Response page, byte[] file) {
    return given()
        .cookies(page.cookies())
        .multiPart("csrf-token", PageForm.empty(page).values().get("csrf-token").get(0))
        .multiPart("file", "backup.zip", file, "application/zip")
        .post("/backup");
  }
}
