package org.staywright.web.mounts;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.matchesPattern;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.web.start.Way;

/** Ways to start, and the centre of mass, on pages and as JSON. */
@QuarkusTest
@Tag("server")
class CentrePageTest {

  private static final String LID =
      "load.type=hinged-flap&load.massKg=18&load.centreOfMassMm.x=410&load.centreOfMassMm.y=15"
          + "&load.handleMm.x=800&load.handleMm.y=0&load.opens=counterclockwise"
          + "&load.openingAngleDeg=80&mounts.frameMm.x=15&mounts.frameMm.y=-65"
          + "&mounts.movingMm.x=360&mounts.movingMm.y=-11";

  @Test
  void everyCardOpensABenchOnWhichStockFits() {
    String page = given().get("/").then().statusCode(200).extract().asString();
    Matcher card = Pattern.compile("class=\"way\" href=\"([^\"]+)\"").matcher(page);
    int cards = 0;
    while (card.find()) {
      String address = card.group(1).replace("&amp;", "&");
      if (!address.contains("?")) {
        continue;
      }
      cards++;
      given()
          .urlEncodingEnabled(false)
          .get(address)
          .then()
          .statusCode(200)
          .body(matchesPattern("(?s).*judged: [1-9]\\d* fits?, .*"));
    }
    assertEquals(Way.values().length, cards);
    Matcher mounts = Pattern.compile("href=\"(/mounts\\?[^\"]+)\"").matcher(page);
    assertTrue(mounts.find());
    given()
        .urlEncodingEnabled(false)
        .get(mounts.group(1).replace("&amp;", "&"))
        .then()
        .statusCode(200)
        .body(containsString("name=\"zones.frameMm.x\" value=\"-110\""));
  }

  @Test
  void handsWhatWasFoundToTheBench() {
    given().get("/flap?" + LID).then().body(containsString("formaction=\"/centre\""));
    String page =
        given()
            .urlEncodingEnabled(false)
            .get("/centre?" + LID + "&parts=10,400,0%0A2%20100%2060")
            .then()
            .statusCode(200)
            .body(containsString("x 350.0"))
            .extract()
            .asString();
    Matcher bench = Pattern.compile("href=\"(/flap\\?[^\"]*massKg=12[^\"]*)\"").matcher(page);
    assertTrue(bench.find(), page);
    given()
        .urlEncodingEnabled(false)
        .get(bench.group(1).replace("&amp;", "&"))
        .then()
        .body(containsString("name=\"load.centreOfMassMm.x\" value=\"350\""))
        .body(containsString("name=\"load.centreOfMassMm.y\" value=\"10\""));
  }

  @Test
  void opensWithWhatTheJobKnowsAndSaysWhatIsWrong() {
    given()
        .get("/centre?" + LID)
        .then()
        .statusCode(200)
        .body(containsString("name=\"weighing.handleMm.x\" value=\"800\""));
    given().get("/centre").then().statusCode(200);
    given()
        .get("/centre?" + LID + "&panel.massKg=-3&panel.nearMm.x=0")
        .then()
        .statusCode(200)
        .body(containsString("Mass is -3"));
  }

  private static ValidatableResponse sent(String body, int status) {
    return given()
        .contentType(ContentType.JSON)
        .body(body)
        .post("/api/v1/centre-of-mass")
        .then()
        .statusCode(status);
  }

  @Test
  void jsonTakesOneOfThreeWays() {
    sent(
            "{\"panel\": {\"massKg\": 12, \"nearMm\": {\"x\": 0, \"y\": 0}, \"farMm\": {\"x\": 800,"
                + " \"y\": 40}}}",
            200)
        .body("massKg", equalTo(12))
        .body("centreOfMassMm.x", equalTo(400))
        .body("centreOfMassMm.y", equalTo(20));
    sent(
            "{\"weighing\": {\"massKg\": 10, \"handleMm\": {\"x\": 800, \"y\": 0}, \"forceN\":"
                + " 49.03325}}",
            200)
        .body("centreOfMassMm.x.toDouble()", closeTo(400, 1e-6));
    sent("{}", 422).body("errors.code", hasItem("one-of-these"));
    sent(
            "{\"weighing\": {\"massKg\": 10, \"handleMm\": {\"x\": 800, \"y\": 0}, \"forceN\": 49,"
                + " \"secondAngleDeg\": 5, \"secondForceN\": 48}}",
            422)
        .body("errors[0].pointer", equalTo("#/weighing/secondAngleDeg"));
    sent(
            "{\"weighing\": {\"massKg\": 10, \"handleMm\": {\"x\": 800, \"y\": 0}, \"forceN\": 49,"
                + " \"secondAngleDeg\": 50}}",
            422)
        .body("errors[0].pointer", equalTo("#/weighing/secondForceN"));
  }
}
