package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.form.Jobs;

@QuarkusTest
@Tag("server")
class InTimeTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  /** A question about the best part for a job. */
  private static ObjectNode about(String job) throws Exception {
    JsonNode best =
        JSON.readTree(post("/api/v1/fits", job).statusCode(200).extract().asByteArray())
            .at("/fits/0");
    ObjectNode asked = JSON.createObjectNode();
    asked.set("job", JSON.readTree(job));
    asked.set("partNumber", best.get("partNumber"));
    asked.set("count", best.get("count"));
    return asked;
  }

  @Test
  void aLidWithAllItsSpringsStaysUp() throws Exception {
    motion(about(Jobs.LID))
        .statusCode(200)
        .body("endedAt", is("rest"))
        .body("endTimeS", is(0))
        .body("travelUnit", is("deg"));
  }

  @Test
  void aLidWithoutItsSpringsFalls() throws Exception {
    ObjectNode asked = about(Jobs.LID);
    asked.set("failedSprings", asked.get("count"));
    JsonNode answer = JSON.readTree(motion(asked).statusCode(200).extract().asByteArray());
    assertEquals("stop", answer.get("endedAt").textValue());
    assertEquals(0, answer.at("/travel/120").doubleValue(), 1e-3);
    assertTrue(answer.get("endSpeed").doubleValue() < -100, "degrees a second, closing");
    // All that gravity gave but for the hinge's friction: ½·I·ω².
    double inertia = 4.0 / 3 * 18 * (0.41 * 0.41 + 0.015 * 0.015);
    double speed = Math.toRadians(answer.get("endSpeed").doubleValue());
    assertEquals(inertia * speed * speed / 2, answer.get("stopEnergyJ").doubleValue(), 0.01);
  }

  @Test
  void aHandOpensIt() throws Exception {
    ObjectNode asked = about(Jobs.LID);
    asked.put("release", "from-closed").put("handForceN", 80).put("temperatureC", -10);
    motion(asked).body("endedAt", is("stop")).body("timeS", hasSize(121)).body("choked", is(false));
  }

  @Test
  void aHandThatLetsGoBringsItToItsStopSlower() throws Exception {
    ObjectNode asked = about(Jobs.LID);
    asked.put("release", "from-closed").put("handForceN", 80).putNull("case");
    float eased = motion(asked).statusCode(200).extract().path("stopEnergyJ");
    float thrown = motion(asked.put("hand", "pushes-on")).extract().path("stopEnergyJ");
    assertTrue(eased < thrown / 2, eased + " J against " + thrown + " J");
  }

  @Test
  void springsAndLoadMoveAsTheyTurnOut() throws Exception {
    ObjectNode asked = about(Jobs.LID).put("release", "from-closed").put("handForceN", 80);
    motion(asked.put("spring", "weak")).body("gasTemperatureC[0]", is(-10));
    motion(asked.put("spring", "strong")).body("gasTemperatureC[0]", is(40));
    motion(asked.put("temperatureC", 5)).body("gasTemperatureC[0]", is(5));
    // Without springs all is the weight's work but for the hinge's friction.
    ObjectNode bare = about(Jobs.LID).put("hand", "pushes-on");
    bare.set("failedSprings", bare.get("count"));
    float heavy = motion(bare.put("load", "heavy")).extract().path("stopEnergyJ");
    float light = motion(bare.put("load", "light")).extract().path("stopEnergyJ");
    double lost = 0.5 * Math.toRadians(80);
    assertEquals(1.05 / 0.95, (heavy + lost) / (light + lost), 1e-4);
    // Inertia goes with the mass, also where it was given: the fall takes as long but for friction.
    bare.withObject("/job/load").put("inertiaKgM2", 12).put("hingeFrictionNm", 0);
    float slow = motion(bare).extract().path("endTimeS");
    assertEquals(slow, (float) motion(bare.put("load", "heavy")).extract().path("endTimeS"), 1e-4);
  }

  @Test
  void itsOwnInertiaCounts() throws Exception {
    ObjectNode asked = about(Jobs.LID);
    asked.set("failedSprings", asked.get("count"));
    float plate = motion(asked).extract().path("endTimeS");
    asked.withObject("/job/load").put("inertiaKgM2", 12);
    float heavy = motion(asked).extract().path("endTimeS");
    assertTrue(heavy > 1.5 * plate, heavy + " s against " + plate + " s");
  }

  @Test
  void aTableMustSayWhatMoves() throws Exception {
    ObjectNode asked = about(Jobs.PROFILE);
    motion(asked).statusCode(422).body("errors[0].pointer", is("#/movingMassKg"));
    motion(asked.put("movingMassKg", 20)).statusCode(200).body("travelUnit", is("mm"));
    ObjectNode lid = about(Jobs.LID).put("movingMassKg", 20);
    motion(lid).statusCode(422).body("errors[0].code", is("moving-mass-known"));
  }

  @Test
  void aHandOfAGiantIsAnsweredOrRefusedInWords() throws Exception {
    ObjectNode asked = about(Jobs.LID);
    long began = System.nanoTime();
    asked.put("hand", "pushes-on").put("temperatureC", 20);
    motion(asked.put("handForceN", -5000)).statusCode(200).body("choked", is(true));
    motion(asked.put("handForceN", 5000).put("release", "from-closed"))
        .statusCode(422)
        .body("detail", containsString("Ask for less force at the hand"))
        .body("beyond.quantity", is("temperature"))
        .body("beyond.value", greaterThan(350.85f))
        .body("beyond.bound", is("≥ -60.15 and ≤ 350.85 °C"))
        .body("errors", nullValue());
    assertTrue(System.nanoTime() - began < 5e9, "never a hang");
  }

  @Test
  void badQuestionsAreNamed() throws Exception {
    ObjectNode asked = about(Jobs.LID);
    asked.put("failedSprings", 7).put("temperatureC", 900).put("handForceN", "a").put("x", 1);
    asked.put("hand", "slips").put("spring", "broken").put("load", "none").put("case", "snow");
    motion(asked)
        .statusCode(422)
        .body("errors.pointer", hasItem("#/failedSprings"))
        .body("errors.pointer", hasItem("#/temperatureC"))
        .body("errors.pointer", hasItem("#/handForceN"))
        .body("errors.pointer", hasItem("#/hand"))
        .body("errors.pointer", hasItem("#/spring"))
        .body("errors.pointer", hasItem("#/load"))
        .body("errors.find { it.pointer == '#/case' }.code", is("no-load-cases"))
        .body("errors.pointer", hasItem("#/x"));
  }

  @Test
  void aRankingTellsOfMotionsOnlyWhereItsJobAsks() throws Exception {
    ObjectNode job = (ObjectNode) JSON.readTree(Jobs.LID);
    post("/api/v1/fits", job.toString()).body("fits[0].inTime", nullValue());
    JsonNode slowest = slowest(job);
    double limit = 0.9999 * slowest.at("/blockedBy/0/has").doubleValue();
    job.withObject("/requirements")
        .put("maxStopSpeedMmPerS", limit)
        .put("maxStopEnergyJ", 10_000)
        .put("maxOpeningTimeS", 30);
    JsonNode ranking = ranked(job);
    assertEquals(0, ranking.get("fitsTotal").intValue(), "none opens as slowly as that");
    JsonNode near = find(ranking.get("near"), slowest);
    JsonNode blocker = near.at("/blockedBy/0");
    assertEquals("stop-speed", blocker.get("code").textValue());
    assertEquals(limit, blocker.get("needed").doubleValue(), 1e-5);
    assertEquals("mm/s", blocker.get("unit").textValue());
    JsonNode inTime = near.get("inTime");
    assertEquals(
        inTime.get("stopSpeedMmPerS").doubleValue(), blocker.get("has").doubleValue(), 1e-5);
    assertTrue(inTime.get("stopSpeedMmPerS").doubleValue() > limit);
    assertTrue(inTime.get("failedHandN").doubleValue() > 0);
    JsonNode kept = inTime.get("requirements");
    assertEquals(3, kept.size());
    assertEquals("max-stop-speed", kept.at("/0/code").textValue());
    assertEquals(false, kept.at("/0/met").booleanValue());
    assertEquals("strong", kept.at("/0/spring").textValue());
    assertEquals(
        inTime.get("stopSpeedMmPerS").doubleValue(), kept.at("/0/has").doubleValue(), 1e-5);
    assertEquals(true, kept.at("/1/met").booleanValue());
    assertEquals(true, kept.at("/2/met").booleanValue());
    assertEquals("weak", kept.at("/2/spring").textValue());
  }

  @Test
  void whatWouldOpenSlowlyEnoughIsSolvedAndAskedAfresh() throws Exception {
    ObjectNode job = (ObjectNode) JSON.readTree(Jobs.LID);
    JsonNode slowest = slowest(job);
    double speed = slowest.at("/blockedBy/0/has").doubleValue();
    job.withObject("/requirements").put("maxStopSpeedMmPerS", 0.9999 * speed);
    JsonNode blocked = find(ranked(job).get("near"), slowest);
    JsonNode change = blocked.get("clearedBy");
    assertTrue(change.has("path"), blocked.toString());
    String path = change.get("path").textValue();
    int last = path.lastIndexOf('/');
    ((ObjectNode) job.at(path.substring(0, last))).set(path.substring(last + 1), change.get("to"));
    job.put("limit", 200);
    assertEquals("fits", find(ranked(job).get("fits"), slowest).get("verdict").textValue());
  }

  /** Of those that fit otherwise, but for a stop speed that the hand itself exceeds. */
  private static JsonNode slowest(ObjectNode plain) throws Exception {
    ObjectNode job = plain.deepCopy().put("limit", 200);
    job.withObject("/requirements").put("maxStopSpeedMmPerS", 499);
    for (JsonNode row : ranked(job).get("near")) {
      if (row.at("/blockedBy/0/code").textValue().equals("stop-speed")) {
        return row;
      }
    }
    return fail("nothing that fits otherwise");
  }

  private static JsonNode ranked(ObjectNode job) throws Exception {
    return JSON.readTree(
        post("/api/v1/fits", job.toString()).statusCode(200).extract().asByteArray());
  }

  private static JsonNode find(JsonNode rows, JsonNode like) {
    for (JsonNode row : rows) {
      if (row.get("partNumber").equals(like.get("partNumber"))
          && row.get("count").equals(like.get("count"))) {
        return row;
      }
    }
    return fail(like.get("partNumber") + " is not among " + rows.size());
  }

  @Test
  void chancesAreGivenWithWhatMatters() throws Exception {
    ObjectNode asked = about(Jobs.LID);
    JsonNode answer = JSON.readTree(chance(asked).statusCode(200).extract().asByteArray());
    assertTrue(answer.get("holds").doubleValue() > 0.5);
    assertTrue(answer.get("yearsUntilNotHolding").doubleValue() > 0);
    assertEquals(10_000, answer.get("draws").intValue());
    assertEquals(answer, JSON.readTree(chance(asked).extract().asByteArray()));
    asked.withObject("/spreads").put("massPercent", 0).put("forceN", 0);
    chance(asked).body("holdShares.mass", is(0)).body("holdShares.force", is(0));
  }

  @Test
  void tooManyDrawsAreRefused() throws Exception {
    ObjectNode asked = about(Jobs.LID);
    chance(asked.put("draws", 1_000_000_000))
        .statusCode(422)
        .body("errors[0].pointer", is("#/draws"))
        .body("errors[0].detail", containsString("100000"));
    chance(asked.put("draws", 0)).statusCode(422);
    chance(asked.put("draws", 1)).statusCode(200).body("holdsStandardError", is(0));
  }

  @Test
  void nothingStraysNothingMatters() throws Exception {
    ObjectNode asked = about(Jobs.LID);
    ObjectNode spreads = asked.withObject("/spreads");
    for (String name :
        new String[] {"forceN", "frictionPercent", "massPercent", "centreOfMassMm"}) {
      spreads.put(name, 0);
    }
    spreads.put("mountsMm", 0).put("temperatureK", 0).put("ageYears", 0);
    chance(asked).statusCode(200).body("mattersMost", nullValue());
  }

  private static ValidatableResponse motion(ObjectNode body) {
    return post("/api/v1/fits/motion", body.toString());
  }

  private static ValidatableResponse chance(ObjectNode body) {
    return post("/api/v1/fits/chance", body.toString());
  }

  private static ValidatableResponse post(String address, String body) {
    return given().contentType(ContentType.JSON).body(body).post(address).then();
  }
}
