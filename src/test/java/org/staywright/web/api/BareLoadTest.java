package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.form.Jobs;

/** The load with no spring at all stands beside every ranking, and what makes it worse is near. */
@QuarkusTest
@Tag("server")
class BareLoadTest {

  /** Light, and opened beyond the vertical: it stays where it ends and does not hurt. */
  private static ObjectNode content(double kilograms) {
    ObjectNode lid = Jobs.lid();
    lid.withObject("/load").put("massKg", kilograms).put("openingAngleDeg", 110);
    return lid;
  }

  private static Response post(String address, ObjectNode body) {
    return given().contentType(ContentType.JSON).body(body.toString()).post("/api/v1" + address);
  }

  private static JsonNode answer(String address, ObjectNode body) throws Exception {
    return new ObjectMapper()
        .readTree(post(address, body).then().statusCode(200).extract().asString());
  }

  @Test
  void isTheStaticsOfTheLoadAlone() throws Exception {
    JsonNode bare = answer("/fits", Jobs.lid()).get("bare");
    // Closed, heaviest: m·g·x over the handle's lever, and the friction of the hinge besides.
    double closed = (18 * 1.05 * 9.80665 * 0.410 + 0.5) / 0.8;
    double most = 0;
    double open = 0;
    for (int i = 0; i <= 60; i++) {
      double angle = Math.toRadians(80.0 * i / 60);
      double x = 0.410 * Math.cos(angle) - 0.015 * Math.sin(angle);
      open = 18 * 1.05 * 9.80665 * x / 0.8;
      most = Math.max(most, open + 0.5 / 0.8);
    }
    assertEquals(closed, most, 1e-9);
    assertEquals(most, bare.get("handOpenWorstN").doubleValue(), 1e-6);
    assertEquals(-open, bare.get("holdOpenN").doubleValue(), 1e-6);
  }

  @Test
  void whatMakesItWorseIsNearAndNothingClearsThat() throws Exception {
    JsonNode answer = answer("/fits", content(0.6));
    assertFalse(answer.get("springNeeded").booleanValue());
    JsonNode bare = answer.get("bare");
    assertTrue(bare.get("dropJ").doubleValue() < 4);
    int worse = 0;
    for (JsonNode near : answer.get("near")) {
      for (JsonNode blocker : near.get("blockedBy")) {
        if (blocker.get("code").textValue().equals("no-gain")) {
          worse++;
          JsonNode figures = near.get("figures");
          double worst = Math.max(at(figures, "handOpenWorstN"), at(figures, "handCloseWorstN"));
          assertTrue(at(figures, "handRmsN") >= at(bare, "handRmsN"));
          assertTrue(worst >= Math.max(at(bare, "handOpenWorstN"), at(bare, "handCloseWorstN")));
          assertTrue(near.get("clearedBy").isNull());
          assertTrue(blocker.get("has").doubleValue() <= 0);
        }
      }
    }
    assertTrue(worse > 0);
  }

  private static double at(JsonNode figures, String name) {
    return figures.get(name).doubleValue();
  }

  @Test
  void nothingIsToBeMadeWhereNoSpringIsNeeded() throws Exception {
    JsonNode ideal = answer("/fits/ideal", content(0.3));
    assertEquals("take-none", ideal.get("advice").textValue());
    assertEquals("no-gain", ideal.at("/made/fit/blockedBy/0/code").textValue());
    assertEquals(answer("/fits", content(0.3)).get("bare"), ideal.get("bare"));
    // Twice as heavy it is worth one that saves more than it rubs.
    JsonNode worth = answer("/fits/ideal", content(0.6));
    assertEquals("make", worth.get("advice").textValue());
    assertTrue(at(worth.at("/made/fit/figures"), "handRmsN") < at(worth.get("bare"), "handRmsN"));
  }

  @Test
  void oneSpringThatFailsLeavesIt() throws Exception {
    ObjectNode single = Jobs.lid();
    single.putArray("springCounts").add(1);
    JsonNode answer = answer("/fits", single);
    JsonNode bare = answer.get("bare");
    for (JsonNode fit : answer.get("fits")) {
      JsonNode figures = fit.get("figures");
      assertEquals(at(bare, "holdOpenN"), at(figures, "oneFailedHoldN"), 1e-6);
      assertEquals(at(bare, "handOpenWorstN"), at(figures, "oneFailedHandN"), 1e-6);
    }
    assertTrue(answer.get("fits").size() > 0);
  }

  @Test
  void aSeatHasNone() {
    post(
            "/fits",
            Jobs.tree(
                """
                {"load": {"type": "seat-column", "seatMassKg": 9,
                          "sitterMassKg": {"min": 45, "max": 120}, "heightTravelMm": 100}}
                """))
        .then()
        .statusCode(200)
        .body("bare", nullValue(), "springNeeded", is(true));
  }
}
