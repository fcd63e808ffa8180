package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A seat on a column, ranked, saved and ordered by the API. */
@QuarkusTest
@Tag("server")
class SeatsTest {

  private static final String JOB =
      """
      {"name": "Till stool", "rankBy": "%s", "limit": 50,
       "load": {"type": "seat-column", "seatMassKg": 9, "sitterMassKg": {"min": 45, "max": 120}, "heightTravelMm": 100},
       "conditions": {"minC": 5, "maxC": 35}}
      """;

  private static ValidatableResponse posted(String path, String body) {
    return given().contentType("application/json").body(body).post("/api/v1" + path).then();
  }

  private static JsonPath ranked(String rankBy) {
    return posted("/fits", JOB.formatted(rankBy)).statusCode(200).extract().jsonPath();
  }

  @Test
  void theBooksBalanceAndEveryOtherFamilyIsCountedAsSuch() {
    JsonPath answer = ranked("balanced");
    Map<String, Integer> rejected = answer.getMap("rejected");
    int out = rejected.values().stream().mapToInt(Integer::intValue).sum();
    int all = answer.getInt("considered");
    assertEquals(all, answer.getInt("fitsTotal") + answer.getInt("nearTotal") + out);
    int columns = given().get("/api/v1/parts?family=seat-column&size=1").jsonPath().getInt("total");
    assertEquals(all - columns, rejected.get("family"));
    assertTrue(answer.getInt("fitsTotal") >= 3, "fits: " + answer.getInt("fitsTotal"));
    assertTrue(answer.getInt("nearTotal") >= 3, "near: " + answer.getInt("nearTotal"));
  }

  @Test
  void aFitCarriesTheFiguresOfASeatAndNoFittings() {
    posted("/fits", JOB.formatted("balanced"))
        .statusCode(200)
        .body("fits[0].count", equalTo(1))
        .body("fits[0].fittings", equalTo(null))
        .body("fits[0].figures.risesEmptyRatio", greaterThan(1f))
        .body("fits[0].figures.sinksUnderLightestRatio", greaterThan(1f))
        .body("fits[0].figures.bounceMm.low", notNullValue())
        .body("fits[0].figures.bounceMm.high", greaterThan(0f))
        .body("fits[0].figures.handRmsN", equalTo(null))
        .body("fits[0].cautions.code", not(hasSize(0)))
        .body("fits[0].cautions.message.join(' ')", containsString("no personal safety lock"));
  }

  @Test
  void aNearColumnSaysWhatItMissesAndWhatWouldClearIt() {
    List<Map<String, Object>> near = ranked("balanced").getList("near");
    boolean cleared = false;
    for (Map<String, Object> one : near) {
      assertFalse(((List<?>) one.get("blockedBy")).isEmpty());
      Map<?, ?> change = (Map<?, ?>) one.get("clearedBy");
      cleared |= change != null;
      assertTrue(change == null || change.get("path").toString().startsWith("/load/"));
    }
    assertTrue(cleared, "nothing was cleared");
  }

  @Test
  void everyOrderPutsFirstWhatItNames() {
    assertOrdered(ranked("least-effort").getList("fits.figures.loweringRmsN", Double.class), 1);
    assertOrdered(ranked("lowest-cost").getList("fits.figures.setPrice", Double.class), 1);
    assertOrdered(ranked("soonest").getList("fits.figures.leadTimeDays", Double.class), 1);
    assertOrdered(ranked("balanced").getList("fits.score", Double.class), -1);
    JsonPath margin = ranked("most-margin");
    List<Double> rises = margin.getList("fits.figures.risesEmptyRatio", Double.class);
    List<Double> sinks = margin.getList("fits.figures.sinksUnderLightestRatio", Double.class);
    double before = Double.POSITIVE_INFINITY;
    for (int i = 0; i < rises.size(); i++) {
      double bounce = 0;
      for (String height : new String[] {"low", "middle", "high"}) {
        double here = margin.getDouble("fits[" + i + "].figures.bounceMm." + height);
        bounce = Math.max(bounce, here);
      }
      // Of what is asked: a ratio of 1 each way, and 40 mm of bounce where nothing else is said.
      double ratio = Math.min(rises.get(i), sinks.get(i)) - 1;
      double least = Math.min(ratio, (40 - bounce) / 40);
      assertTrue(least <= before, "at " + i);
      before = least;
    }
  }

  private static void assertOrdered(List<Double> values, int sense) {
    assertNotNull(values.get(0));
    for (int i = 1; i < values.size(); i++) {
      assertTrue(sense * (values.get(i) - values.get(i - 1)) >= 0, values + " at " + i);
    }
  }

  @Test
  void aHandCurveIsRefusedWithItsReason() {
    String body = "{\"job\": %s, \"partNumber\": \"BZ3-STC\", \"count\": 1}";
    posted("/fits/curve", body.formatted(JOB.formatted("balanced"))).statusCode(422);
  }

  private static String saved() {
    String part = ranked("balanced").getString("fits[0].partNumber");
    var job = posted("/jobs", JOB.formatted("balanced")).statusCode(201).extract();
    String path = "/api/v1/jobs/" + job.jsonPath().getString("id");
    String choice = "{\"partNumber\": \"%s\", \"count\": %d}";
    given()
        .contentType("application/json")
        .header("If-Match", job.header("ETag"))
        .body(choice.formatted(part, 2))
        .put(path + "/choice")
        .then()
        .statusCode(422)
        .body("errors[0].pointer", equalTo("#/count"))
        .body("errors[0].bound", equalTo("1"));
    given()
        .contentType("application/json")
        .header("If-Match", job.header("ETag"))
        .body(choice.formatted(part, 1))
        .put(path + "/choice")
        .then()
        .statusCode(200)
        .body("choice.fittings", equalTo(null));
    return path;
  }

  @Test
  void aChosenColumnIsTheOnlyPieceOfItsList() {
    String path = saved();
    given()
        .get(path + "/parts-list.json")
        .then()
        .statusCode(200)
        .body("lines", hasSize(1))
        .body("lines[0].quantity", equalTo(1));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/parts-list.csv",
        "/parts-list.xlsx",
        "/parts-list.pdf",
        "/quotation-request.pdf",
        "/order-lines.txt"
      })
  void everyListIsMade(String document) {
    given().get(saved() + document).then().statusCode(200);
  }

  @Test
  void pagesOfASavedSeatSayWhatItDoes() {
    String path = saved();
    String id = path.substring(path.lastIndexOf('/') + 1);
    given().get("/jobs/" + id).then().statusCode(200).body(containsString("the empty seat"));
    given()
        .get("/compare?job=" + id)
        .then()
        .statusCode(200)
        .body(containsString("Lightest sitter over what sinking takes"))
        .body(containsString(">A slow<"))
        .body(containsString(">A fast<"));
  }

  @Test
  void aSavedSeatIsPutBackAsItWasGotAndRemoved() {
    String path = saved();
    var got = given().get(path);
    String tag =
        given()
            .contentType("application/json")
            .header("If-Match", got.header("ETag"))
            .body(got.asString())
            .put(path)
            .then()
            .statusCode(200)
            .extract()
            .header("ETag");
    given().header("If-Match", tag).delete(path).then().statusCode(204);
  }
}
