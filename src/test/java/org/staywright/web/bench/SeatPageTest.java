package org.staywright.web.bench;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.web.PageCharts;
import org.staywright.web.PageForm;
import org.staywright.web.job.JobPagesTest;

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
  void opensWithASoundJobAndItsOwnWords() {
    given()
        .get("/seat")
        .then()
        .statusCode(200)
        .body(containsString("name=\"load.type\" value=\"seat-column\""))
        .body(containsString("name=\"load.sitterMassKg.min\" value=\"45\""))
        .body(containsString("A seat on its column, from the side"))
        .body(containsString("id=\"why-part\" name=\"partNumber\""))
        .body(not(containsString("id=\"f-requirements-maxHandForceN\"")))
        .body(not(containsString("formaction=\"/mounts\"")));
  }

  /** The weights that its numbers are ratios to are m·g: 9 kg of seat, 0.8 of 45 kg on it. */
  @Test
  void saysNoMoreThanItsChartsAndTiles() {
    Response page = stool().get("/seat");
    String seat = page.asString();
    String detail = stool().queryParam("pick", pick(page)).get("/seat/fit").asString();
    PageCharts charts = PageCharts.of(detail);
    String rises = PageForm.first("at least ([\\d.]+) times the empty seat, cold and aged", seat);
    String sinks = PageForm.first("at least ([\\d.]+) times what sinking takes, hot and new", seat);
    double empty = 9 * 9.80665;
    double lightest = empty + 0.8 * 45 * 9.80665;
    double lifted = charts.least("rising, least in any corner") / empty;
    double carried = lightest / charts.most("sinking, most in any corner");
    assertEquals(lifted, Double.parseDouble(rises) + 0.005, 0.0051, "rounded down");
    assertEquals(carried, Double.parseDouble(sinks) + 0.005, 0.0051, "rounded down");
    charts.holdsMost(
        seat, "it gives at most ([\\d.]+)\u00a0mm at once under the weight", "heaviest, at once");
    assertEquals(
        rises + " / " + sinks,
        PageForm.first("<dt>Rises / sinks, at worst</dt><dd>([^<]+)<", seat));
    assertEquals(
        PageForm.first("at most (\\d+)\u00a0N on its bearing", seat),
        PageForm.first("On the thrust bearing, heaviest sitter</dt><dd>(\\d+)\u00a0N<", detail));
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
    Response both = given().get("/compare?job=" + lid + "&job=" + seat);
    both.then()
        .statusCode(200)
        .body(containsString("do not share a chart"))
        .body(containsString("Lightest sitter over what sinking takes"));
    assertEquals(
        PageForm.first("at most (\\d+\u00a0N) to open", both.asString()),
        PageForm.first("Hand opening, at worst</th>.*?best: </span>([^<]+)<", both.asString()));
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
