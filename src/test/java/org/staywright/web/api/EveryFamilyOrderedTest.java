package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.document.job.OrderFile;
import org.staywright.form.Jobs;

/** Whatever is chosen, even where it does not fit, its papers come. */
@QuarkusTest
@Tag("server")
class EveryFamilyOrderedTest {

  @ParameterizedTest
  @ValueSource(strings = {"gas-spring", "locking-strut", "traction-spring", "coil-spring"})
  void printsItsPapers(String family) {
    String part = given().get("/api/v1/parts?family=" + family).path("items[0].partNumber");
    Response saved =
        given().contentType(ContentType.JSON).body(Jobs.lid().toString()).post("/api/v1/jobs");
    String job = saved.getHeader("Location");
    given()
        .contentType(ContentType.JSON)
        .header("If-Match", saved.getHeader("ETag"))
        .body("{\"partNumber\": \"" + part + "\", \"count\": 2, \"evenIfMisfit\": true}")
        .put(job + "/choice")
        .then()
        .statusCode(200);
    for (OrderFile paper : OrderFile.values()) {
      Response sent = given().get(job + "/" + paper.file());
      assertEquals(200, sent.statusCode(), family + paper);
      assertTrue(sent.contentType().startsWith(paper.type()), family + paper + sent.contentType());
    }
    String page = job.substring(job.indexOf("/api/v1") + "/api/v1".length());
    assertEquals(200, given().get(page).statusCode(), family + " page");
    assertEquals(
        200,
        given().get("/parts-list?job=" + page.replaceAll("\\D", "")).statusCode(),
        family + " list page");
    assertEquals(200, given().get("/api/v1/parts/" + part + "/datasheet.pdf").statusCode(), family);
    assertEquals(200, given().get("/parts/" + part).statusCode(), family + " part page");
  }
}
