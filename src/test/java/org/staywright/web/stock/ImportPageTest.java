package org.staywright.web.stock;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.web.PageForm;

/** A file of stock taken in by the pages alone, as a browser without script would. */
@QuarkusTest
@Tag("server")
class ImportPageTest {

  /** Invented, with a column named by a house's own word and one that is none of ours. */
  private static final String FILE =
      "part_number,family,finish,rod_thread,tube_thread,mounting,rod_diameter_mm,tube_diameter_mm,"
          + "Hub,extended_length_mm,force_class_n,progression,lead_time_days,shelf\n"
          + "TRY-0002,gas-spring,zinc,M8,M8,rod-down,8,18,6.25,380,400,1.35,5,B12\n";

  private int before;

  @BeforeEach
  void lookWhatIsThere() {
    before = newest();
  }

  @AfterEach
  void restoreTheRange() {
    if (newest() > before) {
      given()
          .contentType("application/json")
          .post("/api/v1/stock/revisions/" + before + "/restore")
          .then()
          .statusCode(200);
    }
  }

  @Test
  void aFormWithoutItsTokenIsRefused() {
    Response refused = upload(given(), "no token of ours", FILE);
    assertEquals(400, refused.statusCode());
    assertEquals(before, newest());
  }

  @Test
  void aFileIsShownAsItIsUnderstoodAndTakenInByThatPlan() {
    Response stock = given().get("/stock");
    Response sent = upload(stock);
    assertEquals(303, sent.statusCode());
    Response shown = settled(sent.header("Location"));
    String page = shown.asString();
    assertTrue(page.contains("No column of ours has this name"), page);
    assertTrue(page.contains("stroke_mm"), page);
    assertFalse(page.contains("name=\"base\""), "nothing to take in where there are faults");
    assertEquals(before, newest());

    PageForm plan = PageForm.of(shown, "/plan\"");
    String id = PageForm.first("/stock/imports/([^/]+)/plan", page);
    page.lines()
        .filter(line -> line.contains("name=\"means."))
        .forEach(
            line ->
                plan.with(
                    PageForm.first("name=\"(means\\.\\d+)\"", line),
                    PageForm.first("name=\"means\\.\\d+\" value=\"([^\"]*)\"", line)));
    plan.with("mode", "update").with("friction", "half").with("means.9", "stroke_in");
    String address = plan.post("/stock/imports/" + id + "/plan").header("Location");
    assertTrue(address.contains("columns=%239%3Dstroke_in"), address);

    Response understood = settled(address);
    assertTrue(understood.asString().contains("158.75"), "6.25 in, in our unit");
    assertTrue(understood.asString().contains("<code>gas_volume_ml</code>"));
    assertTrue(understood.asString().contains("worked out"));
    assertEquals(before, newest());
    String base = PageForm.first("name=\"base\" value=\"(\\d+)\"", understood.asString());
    Response written =
        PageForm.of(understood, "/write\"")
            .with("base", base)
            .post("/stock/imports/" + id + "/write");
    String done = settled(written.header("Location")).asString();
    assertTrue(done.contains("1 rows taken in as revision " + (before + 1)), done);
    assertEquals(158.75f, (Float) given().get("/api/v1/parts/TRY-0002").path("strokeMm"));
    String part = given().get("/parts/TRY-0002").asString();
    assertTrue(part.contains("Worked out from the other figures"), "what was derived is marked");
  }

  @Test
  void aRangeThatChangedMeanwhileIsShownAnewBeforeAnythingIsWritten() {
    Response stock = given().get("/stock");
    String address = upload(stock).header("Location");
    String id = PageForm.first("/stock/imports/([^?]+)", address);
    Response written =
        PageForm.empty(stock)
            .with("mode", "update")
            .with("columns", "#9=stroke_in")
            .with("base", Integer.toString(before - 1))
            .post("/stock/imports/" + id + "/write");
    assertTrue(written.header("Location").contains("/stock/imports/" + id + "?"));
    assertEquals(before, newest());
  }

  @Test
  void stoppingLeavesTheRangeAsItIs() {
    Response stock = given().get("/stock");
    String id = PageForm.first("/stock/imports/([^?]+)", upload(stock).header("Location"));
    Response stopped = PageForm.empty(stock).post("/stock/imports/" + id + "/stop");
    assertTrue(stopped.header("Location").endsWith("/stock"));
    assertEquals(before, newest());
  }

  @Test
  void aFileThatIsNoTableIsToldSo() {
    Response stock = given().get("/stock");
    Response sent = upload(of(stock), token(stock), "a\0b");
    assertTrue(settled(sent.header("Location")).asString().contains("Nothing was changed"));
  }

  @Test
  void aFileThatIsNotThereIsNotFound() {
    given().get("/stock/imports/nothing").then().statusCode(404);
  }

  /** The page of an address, which is encoded already, once it no longer comes by itself. */
  private static Response settled(String address) {
    Response page = given().urlEncodingEnabled(false).get(address);
    for (int i = 0; i < 100 && page.asString().contains("http-equiv=\"refresh\""); i++) {
      page = given().urlEncodingEnabled(false).get(address);
    }
    return page;
  }

  private static Response upload(Response stock) {
    return upload(of(stock), token(stock), FILE);
  }

  private static RequestSpecification of(Response page) {
    return given().cookies(page.cookies());
  }

  private static String token(Response page) {
    return PageForm.first("name=\"csrf-token\" value=\"([^\"]+)\"", page.asString());
  }

  private static Response upload(RequestSpecification form, String token, String file) {
    return form.redirects()
        .follow(false)
        .multiPart("csrf-token", token)
        .multiPart("mode", "update")
        .multiPart("friction", "half")
        .multiPart("file", "maker.csv", file.getBytes(StandardCharsets.UTF_8), "text/csv")
        .post("/stock");
  }

  private static int newest() {
    return given().get("/api/v1/stock/revisions").then().extract().path("items[0].revision");
  }
}
