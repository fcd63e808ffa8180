package org.staywright.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A seat on pages that need no script. */
@QuarkusTest
@Tag("server")
class SeatPageTest {

  private static RequestSpecification stool() {
    return given()
        .queryParam("load.type", "seat-column")
        .queryParam("load.seatMassKg", "9")
        .queryParam("load.sitterMassKg.min", "45")
        .queryParam("load.sitterMassKg.max", "120")
        .queryParam("load.heightTravelMm", "100");
  }

  private static String pick(Response ranking) {
    return PageForm.first(JobPagesTest.PICK, ranking.asString());
  }

  @Test
  void opensWithASoundJobItsVerdictAndItsOwnWords() {
    given()
        .get("/seat")
        .then()
        .statusCode(200)
        .body(containsString("name=\"load.type\" value=\"seat-column\""))
        .body(containsString("name=\"load.sitterMassKg.min\" value=\"45\""))
        .body(
            matchesPattern(
                "(?s).*class=\"verdict fits\">\\s*<p>[^<]*times the empty seat[^<]*\\hN on its bearing.*"))
        .body(containsString("A seat on its column, from the side"))
        .body(containsString("Rises / sinks"))
        .body(containsString("id=\"why-part\" name=\"partNumber\""))
        .body(not(containsString("id=\"f-requirements-maxHandForceN\"")))
        .body(not(containsString("formaction=\"/mounts\"")));
  }

  @Test
  void everyOtherKindOfJobLeadsToIt() {
    for (String path : new String[] {"/", "/flap", "/lift", "/profile"}) {
      given().get(path).then().statusCode(200).body(containsString("href=\"/seat\""));
    }
  }

  @Test
  void bringsThePageUpToDateWhileItIsFilledIn() {
    stool()
        .get("/seat/live")
        .then()
        .statusCode(200)
        .body(containsString("hx-swap-oob"))
        .body(containsString("times the empty seat"));
  }

  @Test
  void saysWhatIsWrongBesideTheField() {
    stool()
        .queryParam("load.seatShare", "1.2")
        .get("/seat")
        .then()
        .statusCode(200)
        .body(containsString("Share of the sitter on the seat"))
        .body(containsString("aria-invalid=\"true\""));
  }

  @Test
  void aSeatThatNoColumnServesSaysWhy() {
    given()
        .queryParam("load.type", "seat-column")
        .queryParam("load.seatMassKg", "150")
        .queryParam("load.sitterMassKg.min", "45")
        .queryParam("load.sitterMassKg.max", "120")
        .queryParam("load.heightTravelMm", "900")
        .get("/seat")
        .then()
        .statusCode(200)
        .body(containsString("No column in stock comes near this seat"));
  }

  @Test
  void aColumnHasItsChartsAndFigures() {
    stool()
        .queryParam("pick", pick(stool().get("/seat")))
        .get("/seat/fit")
        .then()
        .statusCode(200)
        .body(containsString("Open: its push as the seat rises and sinks"))
        .body(containsString("Locked: how far it gives when somebody sits down"))
        .body(containsString("Locked low, half-way and high"))
        .body(containsString("Locked: how stiff it is over the height"))
        .body(containsString("On the thrust bearing, heaviest sitter"))
        .body(containsString("Least over greatest slow force on the way"))
        .body(not(containsString("End fitting on the rod")));
  }

  @Test
  void saysWhyAPartIsWhereItIs() {
    String number = pick(stool().get("/seat")).replaceFirst(".*x", "");
    stool()
        .queryParam("partNumber", number)
        .get("/seat/why")
        .then()
        .statusCode(200)
        .body(containsString("no. 1 in this order"))
        .body(not(containsString("no. 0")));
    String spring =
        given().get("/api/v1/parts?family=gas-spring&size=1").path("items[0].partNumber");
    stool()
        .queryParam("partNumber", spring)
        .get("/seat/why")
        .then()
        .statusCode(200)
        .body(containsString("another kind of spring"));
  }

  @Test
  void columnsStandSideBySideWithALockedCurveEach() {
    Response ranking = stool().get("/seat");
    String first = pick(ranking);
    String other = PageForm.first("(?s)ranking\">.*" + JobPagesTest.PICK, ranking.asString());
    stool()
        .queryParam("pick", first, other)
        .get("/compare")
        .then()
        .statusCode(200)
        .body(containsString("Under the sitter"))
        .body(containsString(">A slow<"))
        .body(containsString(">B fast<"))
        .body(containsString("<span class=\"hush\">best: </span>"))
        .body(containsString("Lightest sitter over what sinking takes"));
  }

  @Test
  void aSeatAndALidStandSideBySideWithoutASharedChart() {
    String lid = JobPagesTest.chosen("A lid");
    String seat =
        JobPagesTest.saved(
            PageForm.of(stool().get("/seat"), "id=\"choose\"")
                .with("pick", pick(stool().get("/seat")))
                .post("/jobs"));
    given()
        .get("/compare?job=" + lid + "&job=" + seat)
        .then()
        .statusCode(200)
        .body(containsString("do not share a chart"))
        .body(containsString("Hand opening, at most"))
        .body(containsString("Lightest sitter over what sinking takes"));
    given().get("/jobs/" + seat).then().statusCode(200).body(containsString("/seat?"));
  }

  @Test
  void isSeenToRiseWhenItsValveIsOpened() {
    stool()
        .queryParam("pick", pick(stool().get("/seat")))
        .get("/in-time")
        .then()
        .statusCode(200)
        .body(containsString("data-track=\"0 0 0;0 0 -"))
        .body(containsString("class=\"player\""))
        .body(containsString("The motion in figures"));
  }
}
