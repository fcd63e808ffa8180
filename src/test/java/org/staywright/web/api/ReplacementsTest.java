package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
@Tag("server")
public class ReplacementsTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  /** Rod 8, tube 18, stroke 160, 400 N on two ball sockets of 30 mm. */
  public static final String BODY =
      """
      {"rodDiameterMm": {"value": 8.0, "plusMinus": 0.1}, "tubeDiameterMm": {"value": 18, "plusMinus": 0.3},
       "extendedLengthMm": {"value": 440, "plusMinus": 2, "measured": "centre-to-centre"},
       "strokeMm": {"value": 158, "plusMinus": 3}, "exposedRodMm": null, "tubeLengthMm": null,
       "compressedLengthMm": null, "ballDiameterMm": null, "centresClosedMm": null, "centresOpenMm": null,
       "printedForce": {"value": 400, "unit": "N"}, "scaleReading": null, "rodEnd": "ball-socket",
       "tubeEnd": "ball-socket", "rodThread": null, "finish": null, "springCount": 2, "damping": "unknown",
       "family": null, "limit": 20}
      """;

  private static JsonNode sent(String body, int status) {
    try {
      return JSON.readTree(
          given()
              .contentType(ContentType.JSON)
              .body(body)
              .post("/api/v1/replacements")
              .then()
              .statusCode(status)
              .extract()
              .asByteArray());
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void findsThePartInTheFormOfTheInterface() {
    JsonNode answer = sent(BODY, 200);
    JsonNode first = answer.at("/candidates/0");
    assertEquals(1, first.get("rank").intValue());
    assertEquals("drop-in", first.get("kind").textValue());
    assertEquals("MT6-6YQ", first.at("/fittings/rodEnd").textValue());
    JsonNode part =
        given()
            .get("/api/v1/parts/" + first.get("partNumber").textValue())
            .as(com.fasterxml.jackson.databind.JsonNode.class);
    assertEquals(8, part.get("rodDiameterMm").doubleValue());
    assertEquals(160, part.get("strokeMm").doubleValue());
    assertEquals(400, part.get("forceClassN").doubleValue());
    double sum = answer.get("noneOfTheRange").doubleValue();
    for (JsonNode one : answer.get("candidates")) {
      sum += one.get("likelihood").doubleValue();
    }
    assertTrue(sum > 0.9 && sum <= 1 + 1e-9, "sum " + sum);
    assertTrue(answer.get("gasLeft").isNull());
    assertEquals(20, answer.get("candidates").size());
  }

  @Test
  void tellsDifferencesWithTheirEffects() {
    String body =
        BODY.replace("\"value\": 400, \"unit\": \"N\"", "\"value\": 350, \"unit\": \"N\"");
    List<String> effects = new ArrayList<>();
    for (JsonNode one : sent(body, 200).get("candidates")) {
      one.get("differences").forEach(each -> effects.add(each.toString()));
    }
    assertTrue(
        effects.stream().anyMatch(e -> e.contains("\"what\":\"forceN\"") && e.contains("push")),
        effects.toString());
  }

  @Test
  void advisesOnTheSwap() {
    List<String> codes = new ArrayList<>();
    sent(BODY, 200).get("advice").forEach(each -> codes.add(each.get("code").textValue()));
    assertTrue(
        codes.containsAll(
            List.of(
                "swap-pair", "swap-brackets", "swap-class-changed", "prop-first", "never-open")),
        codes.toString());
  }

  @Test
  void readsPoundsAndKilograms() {
    String pounds =
        BODY.replace("\"value\": 400, \"unit\": \"N\"", "\"value\": 90, \"unit\": \"lbf\"");
    String kilograms =
        BODY.replace("\"value\": 400, \"unit\": \"N\"", "\"value\": 40.8, \"unit\": \"kgf\"");
    String part = sent(BODY, 200).at("/candidates/0/partNumber").textValue();
    assertEquals(part, sent(pounds, 200).at("/candidates/0/partNumber").textValue());
    assertEquals(part, sent(kilograms, 200).at("/candidates/0/partNumber").textValue());
  }

  @Test
  void tellsTheGasThatIsLeft() {
    String scale =
        "\"scaleReading\": {\"force\": 290, \"atCompressionMm\": 10, \"direction\": \"easing\"}";
    JsonNode answer =
        sent(BODY.replace("\"scaleReading\": null", scale + ", \"madeIn\": \"2012\""), 200);
    double left = answer.get("gasLeft").doubleValue();
    assertTrue(left > 0.65 && left < 0.8, "gas left " + left);
    List<String> codes = new ArrayList<>();
    answer.get("advice").forEach(each -> codes.add(each.get("code").textValue()));
    assertTrue(
        codes.contains("gas-replace") && codes.contains("gas-lost-yearly"), codes.toString());
  }

  /** Hinge to mounts 100 and 300 mm, 60° apart when open; 80 N at 0.8 m level, half at 60°. */
  private static final String FLAP =
      """
      {"springCount": 2, "rodDiameterMm": {"value": 8}, "rodEnd": "ball-socket",
       "tubeEnd": "ball-socket", "centresOpenMm": {"value": 264.575},
       "flap": {"propped": true, "frameMountMm": {"value": 100}, "movingMountMm": {"value": 300},
        "closedSlopeDeg": {"value": 0}, "openSlopeDeg": {"value": 60}, "handleMm": {"value": 800},
        "unit": "N", "first": {"force": {"value": 80}, "slopeDeg": {"value": 0}},
        "second": {"force": {"value": 40, "plusMinus": 2}, "slopeDeg": {"value": 60}}}}
      """;

  @Test
  void findsTheForceAtTheFlapWhereNobodyKnowsIt() {
    JsonNode answer = sent(FLAP, 200);
    double lever = 0.03 * Math.sin(Math.PI / 3) / 0.264575;
    double holds = 40 * 0.8 / (2 * lever);
    assertEquals(holds, answer.at("/flapForce/holdN").doubleValue(), 0.02 * holds);
    assertEquals("margin", answer.at("/flapForce/by").textValue());
    double force = answer.at("/flapForce/forceN").doubleValue();
    double plusMinus = answer.at("/flapForce/plusMinusN").doubleValue();
    assertTrue(plusMinus > 0.05 * force && plusMinus < 0.5 * force, answer.get("flapForce") + "");
    String part = answer.at("/candidates/0/partNumber").textValue();
    JsonNode found = given().get("/api/v1/parts/" + part).as(JsonNode.class);
    assertEquals(force, found.get("forceClassN").doubleValue(), plusMinus);
    assertTrue(
        answer.get("advice").findValuesAsText("code").contains("force-from-flap"),
        answer.get("advice").toString());
  }

  @Test
  void theFlapMayBeWeighedInPoundsOrKilograms() {
    double newtons = sent(FLAP, 200).at("/flapForce/forceN").doubleValue();
    String kilograms =
        FLAP.replace("\"unit\": \"N\"", "\"unit\": \"kgf\"")
            .replace("{\"value\": 80}", "{\"value\": " + 80 / 9.80665 + "}")
            .replace("40, \"plusMinus\": 2", 40 / 9.80665 + ", \"plusMinus\": " + 2 / 9.80665);
    assertEquals(
        newtons, sent(kilograms, 200).at("/flapForce/forceN").doubleValue(), 1e-6 * newtons);
  }

  /** Each with one thing of the flap replaced, and where the fault stands. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'propped': true | 'propped': false | #/flap/propped | not-propped",
        "'propped': true, | - | #/flap/propped | missing",
        "'centresOpenMm': {'value': 264.575}, | - | #/centresOpenMm | missing",
        "'openSlopeDeg': {'value': 60} | 'openSlopeDeg': {'value': 5}"
            + " | #/flap/openSlopeDeg | out-of-order",
        "'slopeDeg': {'value': 60} | 'slopeDeg': {'value': 8}"
            + " | #/flap/second/slopeDeg | slopes-too-near",
        "264.575 | 464 | #/centresOpenMm | contradicts",
        "'value': 80} | 'value': -80} | #/flap/first/force/value | out-of-bounds",
        "'unit': 'N' | 'unit': 'kg' | #/flap/unit | not-a-choice",
        "'value': 800} | 'value': 800, 'plusMinus': 0} | #/flap/handleMm/plusMinus | out-of-bounds"
      })
  void saysWhatIsWrongWithAMeasuredFlap(String was, String is, String pointer, String code) {
    String old = was.replace('\'', '"');
    assertTrue(FLAP.contains(old), old);
    String now = is.equals("-") ? "" : is.replace('\'', '"');
    JsonNode fault = sent(FLAP.replace(old, now), 422).at("/errors/0");
    assertEquals(pointer, fault.get("pointer").textValue(), fault.toString());
    assertEquals(code, fault.get("code").textValue(), fault.toString());
  }

  @Test
  void nothingMatchesButTheNearestIsTold() {
    JsonNode answer = sent(BODY.replace("\"value\": 18,", "\"value\": 20.4,"), 200);
    assertEquals("nothing-matches", answer.at("/advice/0/code").textValue());
    assertEquals("measure-again", answer.at("/advice/1/code").textValue());
    assertTrue(answer.get("noneOfTheRange").doubleValue() > 0.5);
    assertEquals("tubeDiameterMm", answer.at("/candidates/0/differences/0/what").textValue());
  }

  /** Each a body with one thing wrong, and where. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{} | # | nothing-measured",
        "{'strokeMm': {'value': 500}, 'extendedLengthMm': {'value': 380}} | #/strokeMm | contradicts",
        "{'compressedLengthMm': {'value': 500}, 'extendedLengthMm': {'value': 380}}"
            + " | #/compressedLengthMm | contradicts",
        "{'rodDiameterMm': {'value': 22}, 'tubeDiameterMm': {'value': 18}}"
            + " | #/rodDiameterMm | contradicts",
        "{'exposedRodMm': {'value': 10000}} | #/exposedRodMm/value | out-of-bounds",
        "{'strokeMm': {'value': -3}} | #/strokeMm/value | out-of-bounds",
        "{'strokeMm': 158} | #/strokeMm | not-an-object",
        "{'strokeMm': {}} | #/strokeMm/value | missing",
        "{'strokeMm': {'value': 10, 'plusMinus': 0}} | #/strokeMm/plusMinus | out-of-bounds",
        "{'printedForce': {'value': 4, 'unit': 'lb'}} | #/printedForce/unit | not-a-choice",
        "{'scaleReading': {'force': 4, 'atCompressionMm': 10}}"
            + " | #/scaleReading/direction | missing",
        "{'strokeMm': {'value': 100}, 'scaleReading':"
            + " {'force': 4, 'atCompressionMm': 300, 'direction': 'easing'}}"
            + " | #/scaleReading/atCompressionMm | contradicts",
        "{'strokeMm': {'value': 100}, 'madeIn': '2012-13'} | #/madeIn | not-of-the-form",
        "{'strokeMm': {'value': 100}, 'maker': 'x'} | #/maker | unknown-field",
        "[] | # | not-an-object"
      })
  void refusesNonsenseAndSaysWhatContradictsWhat(String body, String pointer, String code) {
    JsonNode problem = sent(body.replace('\'', '"'), 422);
    JsonNode fault = problem.at("/errors/0");
    assertEquals(pointer, fault.get("pointer").textValue(), problem.toString());
    assertEquals(code, fault.get("code").textValue(), problem.toString());
  }
}
