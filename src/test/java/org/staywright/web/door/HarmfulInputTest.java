package org.staywright.web.door;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.oneOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.form.Jobs;

/** Paths that lead out, text that is SQL or a script: given back as text, or refused. */
@QuarkusTest
@Tag("server")
class HarmfulInputTest {

  private static final String HARM = "x'); drop table saved_job; -- <script>alert(1)</script>";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/css/../../application.properties",
        "/css/%2e%2e/%2e%2e/application.properties",
        "/css/..%2f..%2fapplication.properties",
        "/lib/..%5c..%5capplication.properties",
        "/lib/uplot-1.6.32/../../../../application.properties",
        "/webjars/htmx.org/../../../../application.properties",
        "//application.properties",
        "/js/%252e%252e/%252e%252e/application.properties",
        "/api/v1/parts/..%2f..%2f..%2fetc%2fpasswd/datasheet.pdf",
        "/jobs/..%2f..%2f..%2fetc%2fpasswd",
        "/lib/uplot-1.6.32/",
        "/css/"
      })
  void noPathLeadsOutOfWhatIsServedOrListsAFolder(String path) throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create("http://localhost:" + RestAssured.port + path)).build();
    HttpResponse<String> answer =
        HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
    assertTrue(
        answer.statusCode() == 400 || answer.statusCode() == 404,
        () -> path + " " + answer.statusCode());
    for (String secret : new String[] {"quarkus.http", "root:", "SHA256SUMS"}) {
      assertFalse(answer.body().contains(secret), path);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "' or '1'='1",
        "x\" or \"1\"=\"1",
        "1; drop table part",
        "%' or 1=1 --",
        "\\' or 1=1"
      })
  void textThatIsSqlIsSearchedForAsText(String text) {
    given().queryParam("q", text).get("/api/v1/parts").then().statusCode(200).body("total", is(0));
    given()
        .pathParam("number", text)
        .get("/api/v1/parts/{number}")
        .then()
        .statusCode(oneOf(400, 404));
    given().queryParam("sort", text).get("/api/v1/parts").then().statusCode(400);
    given().queryParam("q", text).get("/parts").then().statusCode(200);
    given().get("/api/v1/parts?size=1").then().body("total", not(0));
  }

  @Test
  void aNameThatIsSqlAndScriptIsKeptAsItIs() {
    ObjectNode job = Jobs.lid();
    job.put("name", HARM);
    Response saved =
        given().contentType(ContentType.JSON).body(job.toString()).post("/api/v1/jobs");
    assertEquals(201, saved.statusCode(), saved.asString());
    String address = saved.header("Location");
    assertEquals(HARM, given().get(address).path("name"));
    for (String page : new String[] {"/jobs", "/jobs/" + address.replaceAll(".*/", "")}) {
      given()
          .get(page)
          .then()
          .statusCode(200)
          .body(containsString("&lt;script&gt;alert(1)&lt;/script&gt;"))
          .body(not(containsString("<script>alert")));
    }
    given().get("/api/v1/jobs").then().statusCode(200);
    given().header("If-Match", saved.header("ETag")).delete(address).then().statusCode(204);
  }

  /** Neither the trace of an error nor the name of a class. */
  @ParameterizedTest
  @ValueSource(strings = {"/api/v1/fits", "/api/v1/jobs", "/api/v1/ideal", "/api/v1/restore"})
  void noAnswerTellsOfTheInside(String path) {
    for (String body : new String[] {"{", "[[[", "\u0000", "{\"load\":{\"type\":{}}}", "null"}) {
      String said = given().contentType(ContentType.JSON).body(body).post(path).asString();
      for (String inside : new String[] {"Exception", "org.staywright", "\tat ", "java."}) {
        assertFalse(said.contains(inside), () -> path + " " + said);
      }
    }
  }

  @Test
  void traceIsNotSpoken() {
    given().request("TRACE", "/jobs").then().statusCode(oneOf(405, 501));
    given().request("TRACE", "/api/v1/parts").then().statusCode(oneOf(405, 501));
  }
}
