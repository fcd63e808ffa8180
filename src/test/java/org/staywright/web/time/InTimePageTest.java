package org.staywright.web.time;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.web.PageForm;
import org.staywright.web.job.JobPagesTest;
import org.staywright.web.shell.PagesTest;

@QuarkusTest
@Tag("server")
class InTimePageTest {

  private static RequestSpecification inTime() {
    String pick = PageForm.first(JobPagesTest.PICK, PagesTest.lid().get("/flap").asString());
    return PagesTest.lid().queryParam("pick", pick);
  }

  @Test
  void aFitTellsInShortWhatItDoesInTime() {
    inTime()
        .get("/flap/fit")
        .then()
        .statusCode(200)
        .body(containsString("When one spring fails"))
        .body(containsString("Hand slamming shut in 0.5 s"))
        .body(containsString("formaction=\"/in-time\""))
        .body(not(containsString("Motions in figures")));
  }

  @Test
  void aPageOfItsOwnPlaysTheMotionAndTellsHowSureItIs() {
    inTime()
        .queryParam("failedSprings", "0")
        .queryParam("release", "from-closed")
        .queryParam("handForceN", "80")
        .get("/in-time")
        .then()
        .statusCode(200)
        .body(matchesPattern("(?s).*data-seconds=\"[1-9]\\..*"))
        .body(containsString("data-track=\""))
        .body(containsString("It meets the stop after"))
        .body(containsString("The motion in figures"))
        .body(containsString("Motions in figures"))
        .body(containsString("Motion over time"))
        .body(containsString("Matters most to holding"))
        .body(not(containsString("onclick")));
  }

  /** What is played is what its sentence tells: rounded up there, to the nearest here. */
  @Test
  void playsFirstWhatIsWorstWhenOneSpringFails() {
    String page = inTime().get("/in-time").asString();
    assertTrue(page.contains("<option value=\"weak\" selected>"), page);
    assertTrue(page.contains("<option value=\"heavy\" selected>"), page);
    String told = PageForm.first("at worst it falls: .* comes down with ([\\d.]+) J", page);
    String seen =
        PageForm.first("It meets the stop after [\\d.]+\u00a0s with ([\\d.]+)\u00a0J", page);
    assertEquals(Double.parseDouble(seen) + 0.05, Double.parseDouble(told), 0.0501);
  }

  /** The chance of holding and what is at worst are never told better than they are. */
  @Test
  void roundsItsTilesToTheWorseSide() {
    String page = inTime().get("/in-time").asString();
    String tile = PageForm.first("Energy at the stop, at worst</dt><dd>([\\d.]+)\u00a0J<", page);
    double most =
        Pattern.compile("Opened by a hand that lets go</th>.*?([\\d.]+)\u00a0J</td>")
            .matcher(page)
            .results()
            .mapToDouble(row -> Double.parseDouble(row.group(1)))
            .max()
            .orElseThrow();
    assertEquals(most + 0.05, Double.parseDouble(tile), 0.0501);
  }

  @Test
  void itsChartsAreTakenAwayAsNumbersAndPictures() {
    inTime()
        .get("/in-time/opening-travel.csv")
        .then()
        .statusCode(200)
        .header("Content-Disposition", containsString("-opening-travel.csv"))
        .body(
            startsWith(
                "\"time, s\""
                    + ",\"cold and aged, heavy load: opened, °\",\"cold and aged, light load: opened, °\""
                    + ",\"hot and new, heavy load: opened, °\",\"hot and new, light load: opened, °\""))
        .body(matchesPattern("(?s).*,80,.*"));
    inTime().get("/in-time/failing-speed.svg").then().statusCode(200).body(containsString("<svg"));
    inTime().get("/in-time/no-such-chart.svg").then().statusCode(404);
  }

  @Test
  void whatIsLetGoIsAsAsked() {
    inTime()
        .queryParam("failedSprings", "0")
        .get("/in-time")
        .then()
        .statusCode(200)
        .body(containsString("It stays where it is let go"))
        .body(not(containsString("class=\"player\"")));
    inTime()
        .queryParam("failedSprings", "0")
        .queryParam("release", "from-closed")
        .queryParam("handForceN", "80")
        .get("/in-time")
        .then()
        .body(containsString("It meets the stop after"));
  }

  @Test
  void whereTheGasCannotFollowIsSaidInWordsAndOfNoField() {
    inTime()
        .queryParam("failedSprings", "0")
        .queryParam("release", "from-closed")
        .queryParam("handForceN", "5000")
        .queryParam("hand", "pushes-on")
        .get("/in-time")
        .then()
        .statusCode(200)
        .body(containsString("role=\"alert\"><p>The temperature of the gas would be "))
        .body(containsString("Ask for less force at the hand"))
        .body(not(containsString("href=\"#f-")));
  }

  @Test
  void whatStraysDecidesWhatMattersMost() {
    RequestSpecification still = inTime();
    for (String name :
        List.of(
            "forceN",
            "frictionPercent",
            "centreOfMassMm",
            "mountsMm",
            "temperatureK",
            "ageYears")) {
      still.queryParam("spreads." + name, "0");
    }
    still
        .queryParam("spreads.massPercent", "40")
        .get("/in-time")
        .then()
        .statusCode(200)
        .body(containsString("name=\"spreads.massPercent\" value=\"40\""))
        .body(matchesPattern("(?s).*Matters most to holding</dt><dd>mass, (99|100)\\.\\d.*"));
  }

  @Test
  void whatIsOutOfBoundsIsSaidBesideItsField() {
    inTime()
        .queryParam("failedSprings", "9")
        .queryParam("temperatureC", "900")
        .queryParam("spreads.massPercent", "1e9")
        .queryParam("spreads.mountsMm", "much")
        .get("/in-time")
        .then()
        .statusCode(200)
        .body(containsString("id=\"f-failedSprings-fault\">Springs failed is 9"))
        .body(
            containsString(
                "id=\"f-temperatureC-fault\">Temperature, if not the springs&#39; is 900"))
        .body(containsString("id=\"f-spreads-massPercent-fault\">Mass is"))
        .body(containsString("id=\"f-spreads-mountsMm-fault\">Mounts is"));
  }

  @Test
  void aTableOfForcesMovesOnceItIsSaidWhatMoves() {
    String pick = PageForm.first(JobPagesTest.PICK, given().get("/profile").asString());
    Map<String, List<String>> job = PageForm.of(given().get("/profile"), "id=\"detail\"").values();
    given()
        .queryParams(job)
        .queryParam("pick", pick)
        .get("/in-time")
        .then()
        .statusCode(200)
        .body(containsString("does not tell what mass moves"));
    given()
        .queryParams(job)
        .queryParam("pick", pick)
        .queryParam("movingMassKg", "20")
        .get("/in-time")
        .then()
        .statusCode(200)
        .body(containsString("The motion in figures"));
  }

  @Test
  void aTableOfForcesSaysNothingOfMotion() {
    String pick = PageForm.first(JobPagesTest.PICK, given().get("/profile").asString());
    given()
        .queryParam("pick", pick)
        .get("/profile/fit")
        .then()
        .statusCode(200)
        .body(not(containsString("When one spring fails")));
  }

  @Test
  void aPartTellsItsFreeSpeeds() {
    String number =
        given().get("/api/v1/parts?family=gas-spring&size=1").path("items[0].partNumber");
    given()
        .get("/parts/" + number)
        .then()
        .statusCode(200)
        .body(containsString("Free rod out, through gas"))
        .body(containsString("mm/s"));
  }
}
