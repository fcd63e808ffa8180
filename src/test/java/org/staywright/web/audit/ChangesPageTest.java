package org.staywright.web.audit;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.UUID;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.web.PageForm;
import org.staywright.web.audit.Deed.Job;

/** Who did what, as people see it: on the page of changes, on the job, in the file. */
@QuarkusTest
@Tag("server")
class ChangesPageTest {

  /** A name that nobody else in the program has used. */
  private final String somebody = "Somebody " + UUID.randomUUID();

  private Response named(String path) {
    return given().queryParam("who", somebody).get(path);
  }

  private Job changed(String name) {
    Job job = Job.saved();
    job.sending(Deed.LID.replace("18", "19.5"), "PUT", "").send(new Names(name, name));
    return job;
  }

  @Test
  void aNameThatWasTypedIsShownAsNoMoreThanThat() {
    changed(somebody);
    named("/changes")
        .then()
        .statusCode(200)
        .body(containsString("says: " + somebody + ", not signed in"));
    given()
        .header("Accept-Language", "de")
        .queryParam("who", somebody)
        .get("/changes")
        .then()
        .body(containsString("sagt: " + somebody + ", nicht angemeldet"));
  }

  @Test
  void aChangeOpensAsWhatDiffers() {
    changed(somebody);
    String row = PageForm.first("href=\"(/changes/\\d+)\"", named("/changes").asString());
    String page = given().get(row).asString();
    assertTrue(
        page.matches("(?s).*Mass <code[^>]*>load.massKg</code></th>.*18</td>.*19.5</td>.*"), page);
    assertTrue(!page.contains("load.openingAngleDeg"), page);
    given().get("/changes/999999999999").then().statusCode(404);
    given().get("/changes/nothing").then().statusCode(404);
  }

  @Test
  void theSearchKeepsWhatWasTypedAndSaysWhatItCannotUse() {
    given()
        .queryParam("who", "<b>nobody at all")
        .queryParam("subject", "job")
        .queryParam("from", "yesterday")
        .get("/changes")
        .then()
        .statusCode(200)
        .body(containsString("&lt;b&gt;nobody at all"))
        .body(containsString("<option value=\"job\" selected>"))
        .body(containsString("YYYY-MM-DD"))
        .body(containsString("No change answers to this"));
    given().queryParam("lang", "de").get("/changes").then().statusCode(200);
  }

  @Test
  void theJobTellsWhoChangedItAndWhoMadeItsChoice() {
    Job job = Job.saved();
    Response chosen = job.sending(Job.WISH, "PUT", "/choice").send(new Names(somebody, somebody));
    assertEquals(200, chosen.statusCode());
    String page = given().get("/jobs/" + job.id()).asString();
    assertTrue(page.matches("(?s).*Chosen [-0-9: ]+ UTC\\. Who: says: " + somebody + ".*"), page);
    assertTrue(page.contains("Job " + job.id() + " added"), page);
    assertTrue(page.contains("gave no name, not signed in"), page);
  }

  @Test
  void whoOrdersForSeveralJobsSeesWhoChoseForEach() {
    Job job = Job.saved();
    job.sending(Job.WISH, "PUT", "/choice").send(new Names(somebody, somebody));
    given()
        .queryParam("job", job.id())
        .get("/parts-list")
        .then()
        .statusCode(200)
        .body(containsString("Who: says: " + somebody));
  }

  @Test
  void theRangeTellsWhoTookItIn() {
    int before = newest();
    Deed.csv(new Names(somebody, somebody))
        .body(Deed.PART)
        .post("/api/v1/stock/imports?mode=update")
        .then()
        .statusCode(200);
    try {
      given().get("/stock").then().body(containsString("says: " + somebody));
      given().get("/stock/revisions/" + newest()).then().body(containsString(somebody));
    } finally {
      Deed.json(Names.NONE).post("/api/v1/stock/revisions/" + before + "/restore");
    }
  }

  private static int newest() {
    return given().get("/api/v1/stock/revisions").path("items[0].revision");
  }

  @Test
  void theBrowserRemembersTheNameUntilAnotherIsGiven() {
    Response page = given().get("/changes");
    Response kept = PageForm.empty(page).with("by", "Zoë, 后门 \u202e").post("/changes/name");
    kept.then().statusCode(303);
    given()
        .cookies(kept.cookies())
        .get("/changes")
        .then()
        .body(containsString("name=\"by\" value=\"Zoë, 后门\""));
    Response lid = given().cookies(kept.cookies()).get("/jobs/" + Job.saved().id());
    lid.then().body(containsString("noted under the name you gave, Zoë, 后门"));
    Response none = PageForm.empty(page).with("by", "").post("/changes/name");
    given()
        .cookies(none.cookies())
        .get("/changes")
        .then()
        .body(containsString("name=\"by\" value=\"\""));
  }

  @Test
  void aNameIsOneShortLineOfPlainSigns() {
    String endless = somebody + " \t " + "x".repeat(500);
    changed(endless);
    String name = named("/api/v1/changes").path("items[0].author");
    assertEquals(100, name.length());
    assertTrue(name.startsWith(somebody + " x") && name.endsWith("x…"), name);
  }

  @Test
  void theInterfaceGivesThemInPages() {
    for (int i = 0; i < 3; i++) {
      Job.saved().sending(Deed.LID, "PUT", "").send(new Names(somebody, somebody));
    }
    JsonPath first =
        given().queryParam("who", somebody).queryParam("size", 2).get("/api/v1/changes").jsonPath();
    assertEquals(2, first.getList("items").size());
    given()
        .queryParam("who", somebody)
        .queryParam("before", first.getString("next"))
        .get("/api/v1/changes")
        .then()
        .body("items", hasSize(1))
        .body("next", nullValue())
        .body("items[0].standing", is("said"))
        .body("items[0].before.name", notNullValue())
        .body("items[0].after.load.massKg", is(18));
    int number = first.getInt("items[0].number");
    given().get("/api/v1/changes/" + number).then().body("author", is(somebody));
    given().get("/api/v1/changes/0").then().statusCode(404).body("detail", not(""));
    given().queryParam("until", "tomorrow").get("/api/v1/changes").then().statusCode(400);
  }

  @Test
  void noCellOfTheFileIsAFormula() throws IOException {
    changed("=" + somebody);
    Response file = named("/api/v1/changes.csv");
    file.then().statusCode(200).contentType("text/csv");
    List<CSVRecord> rows =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(new StringReader(file.asString()))
            .getRecords();
    assertEquals(1, rows.size());
    assertEquals("'=" + somebody, rows.get(0).get("author"));
    assertEquals("job", rows.get(0).get("subject"));
    assertTrue(rows.get(0).get("after").contains("\"massKg\":19.5"));
  }
}
