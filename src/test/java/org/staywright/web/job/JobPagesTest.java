package org.staywright.web.job;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.staywright.web.PageForm;
import org.staywright.web.shell.PagesTest;

/** Saved jobs on their pages: changed in two tabs, copied, removed, ordered together. */
@QuarkusTest
@Tag("server")
public class JobPagesTest {

  public static final String PICK = "form=\"choose\" name=\"pick\" value=\"([^\"]+)\"";

  /** A saved lid with its best part chosen; its number. */
  public static String chosen(String name) {
    Response ranking = PagesTest.lid().queryParam("name", name).get("/flap");
    return saved(
        PageForm.of(ranking, "id=\"choose\"")
            .with("pick", PageForm.first(PICK, ranking.asString()))
            .post("/jobs"));
  }

  public static String saved(Response answer) {
    answer.then().statusCode(303);
    return PageForm.first("/jobs/(\\d+)$", answer.getHeader("Location"));
  }

  private static Response page(String id) {
    return given().get("/jobs/" + id);
  }

  /** The form of a saved job, as its page leads to it. */
  private static Response form(String id) {
    return given()
        .urlEncodingEnabled(false)
        .get(PageForm.first("href=\"(/flap\\?[^\"]+)\"", page(id).asString()));
  }

  private static float mass(String id) {
    Number mass = given().get("/api/v1/jobs/" + id).path("load.massKg");
    return mass.floatValue();
  }

  @Test
  void aJobIsSavedFromItsFormWithNothingChosen() {
    Response form = PagesTest.lid().queryParam("name", "Ladeklappe Südtor, 后门").get("/flap");
    String id = saved(PageForm.of(form, "id=\"choose\"").post("/jobs"));
    page(id)
        .then()
        .statusCode(200)
        .body(containsString("<h1>Ladeklappe Südtor, 后门</h1>"))
        .body(containsString("No part is chosen"));
    form(id)
        .then()
        .body(containsString("value=\"Ladeklappe Südtor, 后门\""))
        .body(containsString("Save changes"));
  }

  @Test
  void changesAreSavedAndTheChoiceStaysWhereItStillFits() {
    String id = chosen("Kept");
    Response form = form(id);
    assertEquals(
        id, saved(PageForm.of(form, "id=\"choose\"").with("load.massKg", "18.5").post("/jobs")));
    assertEquals(18.5f, mass(id));
    given().get("/api/v1/jobs/" + id).then().body("choice.partNumber", notNullValue());
  }

  @Test
  void aStaleSaveShowsBothAndLosesNothing() {
    String id = chosen("Two tabs");
    Response one = form(id);
    Response other = form(id);
    saved(PageForm.of(one, "id=\"choose\"").with("load.massKg", "19").post("/jobs"));

    Response conflict =
        PageForm.of(other, "id=\"choose\"")
            .with("load.massKg", "17.25")
            .with("name", "Two <b>tabs</b>")
            .post("/jobs");
    conflict
        .then()
        .statusCode(409)
        .body(containsString("somebody else changed this job"))
        .body(matchesPattern("(?s).*Mass</th><td[^>]*>19\u00a0kg</td><td[^>]*><strong>17.25.*"))
        .body(containsString("&lt;b&gt;"))
        .body(not(containsString("<b>tabs")));
    assertEquals(19f, mass(id));

    String copy = saved(PageForm.of(conflict, "action=\"/jobs\"").post("/jobs"));
    assertNotEquals(id, copy);
    assertEquals(17.25f, mass(copy));
    assertEquals(19f, mass(id));

    String seen = PageForm.first("name=\"saved\" value=\"([0-9.]+)\"", conflict.asString());
    assertEquals(
        id, saved(PageForm.of(conflict, "action=\"/jobs\"").with("saved", seen).post("/jobs")));
    assertEquals(17.25f, mass(id));
  }

  @Test
  void whatWasTypedForARemovedJobIsSavedAsANewOne() {
    String id = chosen("Gone");
    Response form = form(id);
    PageForm.of(given().get("/jobs/" + id + "/removal"), "/removal\"")
        .post("/jobs/" + id + "/removal")
        .then()
        .statusCode(303);
    Response conflict = PageForm.of(form, "id=\"choose\"").post("/jobs");
    conflict.then().statusCode(409).body(containsString("this job was removed"));
    assertNotEquals(id, saved(PageForm.of(conflict, "action=\"/jobs\"").post("/jobs")));
  }

  @Test
  void aChoiceThatNoLongerFitsIsSaidBeforeItIsDropped() {
    String id = chosen("Heavier");
    Response conflict =
        PageForm.of(form(id), "id=\"choose\"").with("load.massKg", "160").post("/jobs");
    conflict.then().statusCode(409).body(containsString("the chosen part no longer fits"));
    assertEquals(18f, mass(id));
    PageForm.of(conflict, "action=\"/jobs\"")
        .with("saved", PageForm.first("name=\"saved\" value=\"([0-9.]+)\"", conflict.asString()))
        .with("drop", "true")
        .post("/jobs");
    assertEquals(160f, mass(id));
    given().get("/api/v1/jobs/" + id).then().body("choice", equalTo(null));
  }

  @Test
  void aCopyKeepsTheChoiceAndItsRevision() {
    String id = chosen("Original");
    String copy = saved(PageForm.empty(page(id)).post("/jobs/" + id + "/copy"));
    String number = given().get("/api/v1/jobs/" + id).path("choice.partNumber");
    given()
        .get("/api/v1/jobs/" + copy)
        .then()
        .body("name", equalTo("Copy of Original"))
        .body("choice.partNumber", equalTo(number));
    String longest = chosen("x".repeat(200));
    saved(PageForm.empty(page(longest)).post("/jobs/" + longest + "/copy"));
  }

  @Test
  void removingAsksFirstAndAgainAfterAChange() {
    String id = chosen("To go");
    Response asked = given().get("/jobs/" + id + "/removal");
    asked.then().statusCode(200).body(containsString("Remove To go?"));
    saved(PageForm.of(form(id), "id=\"choose\"").with("load.massKg", "19").post("/jobs"));
    PageForm.of(asked, "/removal\"")
        .post("/jobs/" + id + "/removal")
        .then()
        .statusCode(409)
        .body(containsString("Look once more"));
    page(id).then().statusCode(200);
  }

  @ParameterizedTest
  @CsvSource({
    "sets, 0",
    "sets, -1",
    "sets, 1000000000",
    "sets, many",
    "spares, -1",
    "spares, 1e9",
  })
  void aWrongAmountStandsBesideItsFieldWithTheValueKept(String field, String typed) {
    String id = chosen("Amounts");
    Response page = page(id);
    PageForm.of(page, "/choice\"")
        .with("sets", "2")
        .with("spares", "1")
        .with(field, typed)
        .post("/jobs/" + id + "/choice")
        .then()
        .statusCode(422)
        .body(matchesPattern("(?s).*name=\"" + field + "\" value=\"" + typed + "\".*"))
        .body(matchesPattern("(?s).*id=\"f-" + field + "-fault\">[^<]+<.*"));
    given().get("/api/v1/jobs/" + id).then().body("choice.sets", equalTo(1));
  }

  @Test
  void aStaleAmountIsKeptBesideWhatIsOrderedNow() {
    String id = chosen("Counted twice");
    Response one = page(id);
    Response other = page(id);
    PageForm.of(one, "/choice\"")
        .with("sets", "3")
        .with("spares", "0")
        .with("brackets", "true")
        .post("/jobs/" + id + "/choice")
        .then()
        .statusCode(303);
    Response stale =
        PageForm.of(other, "/choice\"")
            .with("sets", "7")
            .with("spares", "2")
            .post("/jobs/" + id + "/choice");
    stale
        .then()
        .statusCode(409)
        .body(containsString("now it has 3 sets"))
        .body(containsString("name=\"sets\" value=\"7\""));
    PageForm.of(stale, "/choice\"")
        .with("sets", "7")
        .with("spares", "2")
        .post("/jobs/" + id + "/choice")
        .then()
        .statusCode(303);
    given().get("/api/v1/jobs/" + id).then().body("choice.sets", equalTo(7));
  }

  @Test
  void setsSparesAndBracketsOutliveAnotherChoice() {
    String id = chosen("Remembered");
    PageForm.of(page(id), "/choice\"")
        .with("sets", "4")
        .with("spares", "1")
        .with("brackets", "true")
        .post("/jobs/" + id + "/choice");
    Response form = form(id);
    String pick = PageForm.first("(?s)ranking\">.*" + PICK, form.asString());
    saved(PageForm.of(form, "id=\"choose\"").with("pick", pick).post("/jobs"));
    given()
        .get("/api/v1/jobs/" + id)
        .then()
        .body("choice.partNumber", equalTo(pick.replaceAll("^\\dx|!$", "")))
        .body("choice.sets", equalTo(4))
        .body("choice.spares", equalTo(1))
        .body("choice.brackets", equalTo(true));
  }

  @Test
  void aNameBeyondAllBoundsIsSaidBesideItsField() {
    Response form = PagesTest.lid().get("/flap");
    PageForm.of(form, "id=\"choose\"")
        .with("name", "ж".repeat(50_000))
        .post("/jobs")
        .then()
        .statusCode(422)
        .body(matchesPattern("(?s).*id=\"f-name-fault\">[^<]*200 characters.*"))
        .body(containsString("ж".repeat(50_000)));
  }
}
