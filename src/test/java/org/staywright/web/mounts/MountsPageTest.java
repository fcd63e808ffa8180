package org.staywright.web.mounts;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.Patience;
import org.staywright.web.PageForm;

/** Mounts found on a page, without script. */
@QuarkusTest
@Tag("server")
class MountsPageTest {

  private static final String LID =
      "load.type=hinged-flap&load.massKg=18&load.centreOfMassMm.x=410&load.centreOfMassMm.y=15"
          + "&load.handleMm.x=800&load.handleMm.y=0&load.opens=counterclockwise"
          + "&load.openingAngleDeg=80&mounts.frameMm.x=15&mounts.frameMm.y=-65"
          + "&mounts.movingMm.x=360&mounts.movingMm.y=-11";

  private static final String ZONES =
      "&zones.frameMm.x=-50&zones.frameMm.x=150&zones.frameMm.y=-250&zones.frameMm.y=-50"
          + "&zones.movingMm.x=200&zones.movingMm.x=400&zones.movingMm.y=-100"
          + "&zones.movingMm.y=100";

  @Test
  void opensWithZonesThatItsGeometryGivesAndThatHoldItsMounts() {
    given().get("/flap?" + LID).then().body(containsString("formaction=\"/mounts\""));
    given()
        .get("/mounts?" + LID)
        .then()
        .statusCode(200)
        .body(containsString("name=\"zones.frameMm.x\" value=\"-80\""))
        .body(containsString("name=\"zones.frameMm.x\" value=\"240\""))
        .body(containsString("name=\"load.massKg\" value=\"18\""));
    given()
        .get("/mounts")
        .then()
        .statusCode(200)
        .body(containsString("name=\"load.massKg\" value=\"18\""))
        .body(containsString("data-scene="));
  }

  @Test
  void comesAgainUntilThereAreCardsThatOpenTheBench() throws Exception {
    String address = "/mounts/found?" + LID + ZONES;
    String page =
        Patience.until(
            () -> given().get(address).then().statusCode(200).extract().asString(),
            each -> {
              assertTrue(found(each) || each.contains("<progress"), each);
              return found(each);
            });
    assertTrue(page.contains("class=\"arrangements\""), page);
    int cards = page.split("Open with these mounts", -1).length - 1;
    assertTrue(cards >= 3 && cards <= 8, "cards: " + cards);
    Matcher link = Pattern.compile("href=\"(/flap\\?[^\"]*mounts[^\"]*)\"").matcher(page);
    String bench = null;
    while (link.find()) {
      bench = link.group(1);
    }
    String opened =
        given()
            .urlEncodingEnabled(false)
            .get(bench.replace("&amp;", "&"))
            .then()
            .statusCode(200)
            .extract()
            .asString();
    assertTrue(opened.contains("class=\"verdict fits\""), bench);
    assertTrue(opened.contains("name=\"zones.frameMm.x\" value=\"-50\""), "zones go along");
  }

  @Test
  void keepOutsAreLinesOfText() {
    given()
        .get("/mounts?" + LID + ZONES + "&zones.keepOutMm=0,50,-100,-50%0A60 70 -90 -80")
        .then()
        .statusCode(200)
        .body(containsString("0,50,-100,-50"));
    given()
        .get("/mounts/found?" + LID + ZONES + "&zones.keepOutMm=-60,160,-260,-40")
        .then()
        .statusCode(200)
        .body(containsString("covers a whole zone"));
  }

  @Test
  void faultsStandBesideTheirFields() {
    given()
        .get("/mounts/found?" + LID + ZONES.replace("zones.frameMm.x=-50", "zones.frameMm.x=500"))
        .then()
        .statusCode(200)
        .body(containsString("Frame mount, x is 500"))
        .body(not(containsString("http-equiv")));
    given()
        .get("/mounts/found?load.type=force-profile")
        .then()
        .statusCode(200)
        .body(containsString("Choose a flap or a lift"));
    given().get("/mounts/found").then().statusCode(200);
  }

  @Test
  void saysWhatStandsInTheWay() throws Exception {
    String address =
        "/mounts/found?"
            + LID
            + ZONES.replace(
                "zones.frameMm.x=-50&zones.frameMm.x=150",
                "zones.frameMm.x=5000&zones.frameMm.x=5100");
    String page = found(() -> given().get(address));
    assertTrue(page.contains("The mounts get too far apart"), page);
  }

  /** The page once there is an answer on it. */
  private static String found(Supplier<Response> asked) throws InterruptedException {
    return Patience.until(() -> asked.get().asString(), MountsPageTest::found);
  }

  private static boolean found(String page) {
    return !page.contains("http-equiv=\"refresh\"");
  }

  @Test
  void stoppingNeedsAToken() {
    assertEquals(
        400, given().formParam("load.type", "hinged-flap").post("/mounts/stop").statusCode());
  }

  @Test
  void whatWasFoundUntilItWasStoppedStands() throws Exception {
    String address = "/mounts/found?" + LID + ZONES + "&rankBy=most-margin";
    Response begun = given().get(address);
    begun.then().statusCode(200).body(containsString("action=\"/mounts/stop\""));
    Response stopped = PageForm.of(begun, "action=\"/mounts/stop\"").post("/mounts/stop");
    stopped.then().statusCode(303).header("Location", containsString("stopped=true"));
    String again = stopped.header("Location");
    String page = found(() -> given().urlEncodingEnabled(false).get(again));
    assertTrue(page.contains("class=\"zones\""), page);
    assertTrue(page.contains("was stopped") || page.contains("Stopped: this is"), page);
    // Asked anew it is looked through to the end.
    page = found(() -> given().get(address));
    assertTrue(page.contains("class=\"arrangements\""), page);
    assertTrue(!page.contains("Stopped: this is"), page);
  }
}
