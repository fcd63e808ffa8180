package org.staywright.web.job;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.web.shell.PagesTest;

/** Choosing a part by form: saved, counted again, removed, and refused without its token. */
@QuarkusTest
@Tag("server")
class ChoosingTest {

  private static final String SCRIPT = "<script>alert(1)</script>";

  @Test
  void choosingSavesTheJobAndListsItsParts() {
    Response ranking = PagesTest.lid().queryParam("name", SCRIPT).get("/flap");
    String pick = first("name=\"pick\" value=\"(\\dx[A-Z0-9-]+)\"", ranking.asString());
    String to =
        post(ranking, "/jobs", Map.of("pick", pick, "name", SCRIPT))
            .then()
            .statusCode(303)
            .header("Location", matchesPattern(".*/jobs/\\d+"))
            .extract()
            .header("Location");
    String id = first("/jobs/(\\d+)$", to);
    Response page = given().get("/jobs/" + id);
    page.then()
        .statusCode(200)
        .body(containsString("&lt;script&gt;"))
        .body(not(containsString(SCRIPT)))
        .body(containsString("Parts list"))
        .body(containsString("/api/v1/jobs/" + id + "/parts-list.csv"))
        .body(containsString("Never open"));
    String version = first("name=\"version\" value=\"(\\d+)\"", page.asString());
    Map<String, String> three =
        Map.of(
            "version",
            version,
            "partNumber",
            pick.substring(2),
            "count",
            pick.substring(0, 1),
            "sets",
            "3");
    post(page, "/jobs/" + id + "/choice", three).then().statusCode(303);
    given().get("/jobs/" + id).then().body(containsString("name=\"sets\" value=\"3\""));
    post(page, "/jobs/" + id + "/choice", three)
        .then()
        .statusCode(409)
        .contentType(ContentType.HTML);
    Response again = given().get("/jobs/" + id);
    String newest = first("name=\"version\" value=\"(\\d+)\"", again.asString());
    post(again, "/jobs/" + id + "/removal", Map.of("version", newest)).then().statusCode(303);
    given().get("/jobs/" + id).then().statusCode(404);
  }

  @Test
  void aFormWithoutItsTokenIsRefused() {
    int before = given().get("/api/v1/jobs").then().extract().path("total");
    given()
        .contentType(ContentType.URLENC)
        .formParam("pick", "1xABCD-EFG")
        .post("/jobs")
        .then()
        .statusCode(400)
        .contentType(ContentType.HTML);
    assertEquals(before, (int) given().get("/api/v1/jobs").then().extract().path("total"));
  }

  private static Response post(Response page, String path, Map<String, String> more) {
    String token = first("name=\"csrf-token\" value=\"([^\"]+)\"", page.asString());
    RequestSpecification form =
        given()
            .redirects()
            .follow(false)
            .cookies(page.cookies())
            .contentType(ContentType.URLENC)
            .formParam("csrf-token", token);
    Matcher field =
        Pattern.compile("type=\"hidden\" name=\"([a-zA-Z.]+)\" value=\"([^\"]*)\"")
            .matcher(path.equals("/jobs") ? chooser(page.asString()) : "");
    while (field.find()) {
      if (!more.containsKey(field.group(1)) && !field.group(1).equals("csrf-token")) {
        form.formParam(field.group(1), field.group(2));
      }
    }
    return form.formParams(more).post(path);
  }

  private static String chooser(String page) {
    int from = page.indexOf("<form id=\"choose\"");
    return page.substring(from, page.indexOf("</form>", from));
  }

  private static String first(String pattern, String text) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    assertTrue(matcher.find(), pattern);
    return matcher.group(1);
  }
}
