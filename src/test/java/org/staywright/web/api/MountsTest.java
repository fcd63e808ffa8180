package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.is;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.staywright.Effort;
import org.staywright.Patience;
import org.staywright.form.Jobs;
import org.staywright.form.schema.JsonText;

/** Mounts found over the interface, waited for or not. */
@QuarkusTest
@Tag("server")
public class MountsTest {

  public static final String LID =
      """
      {"load": {"type": "hinged-flap", "massKg": 18, "centreOfMassMm": {"x": 410, "y": 15},
                "handleMm": {"x": 800, "y": 0}, "opens": "counterclockwise", "openingAngleDeg": 80},
       "zones": {"frameMm": {"x": [-50, 150], "y": [-250, -50]},
                 "movingMm": {"x": [200, 400], "y": [-100, 100]}}}
      """;

  private static JsonNode found;

  private static ObjectNode asked() {
    ObjectNode job = Jobs.tree(LID);
    ofAThird(job);
    return job;
  }

  /** What is found for the lid, asked once. */
  private static synchronized JsonNode found() {
    if (found == null) {
      found = tree(post(asked().toString()).then().statusCode(200).extract().response());
    }
    return found;
  }

  @Test
  void everyArrangementIsCalledAFitAtItsMounts() {
    JsonNode found = found();
    assertTrue(found.get("obstacle").isNull());
    int arrangements = found.get("arrangements").size();
    assertTrue(arrangements >= 3 && arrangements <= 8, "arrangements: " + arrangements);
    for (JsonNode each : found.get("arrangements")) {
      assertEquals(askedAfresh(asked(), each).get("figures"), each.at("/fit/figures"));
      assertEquals(61, each.at("/curve/openN").size());
      assertTrue(each.at("/sensitivityNPerMm/moving/y").isNumber());
    }
  }

  /** What a ranking at the mounts of an arrangement says of its part: it must call it a fit. */
  private static JsonNode askedAfresh(ObjectNode asked, JsonNode arrangement) {
    ObjectNode job = asked.deepCopy();
    job.remove("zones");
    job.set("mounts", arrangement.get("mounts"));
    job.put("limit", 200);
    JsonNode fits =
        tree(given().contentType(ContentType.JSON).body(job.toString()).post("/api/v1/fits"));
    for (JsonNode fit : fits.get("fits")) {
      if (fit.get("partNumber").equals(arrangement.at("/fit/partNumber"))
          && fit.get("count").equals(arrangement.at("/fit/count"))) {
        return fit;
      }
    }
    return fail(arrangement.at("/fit/partNumber") + " at " + arrangement.get("mounts"));
  }

  /** An ordinary run looks among the stainless ones only, a third of the range. */
  private static void ofAThird(ObjectNode job) {
    if (!Effort.FULL) {
      job.putObject("filters").put("finish", "stainless");
    }
  }

  @Test
  void aFlapThatIsToStayPutDoesSoWhereverItIsHung() {
    ObjectNode job = Jobs.tree(LID);
    ((ObjectNode) job.get("load")).put("hingeFrictionNm", 12);
    ofAThird(job);
    job.putObject("requirements").put("staysPutFromDeg", 20).put("staysPutToDeg", 75);
    JsonNode found = tree(post(job.toString()).then().statusCode(200).extract().response());
    assertTrue(found.get("arrangements").size() >= 3, found.toString());
    for (JsonNode each : found.get("arrangements")) {
      JsonNode fit = askedAfresh(job, each);
      // The force that keeps it where it is, either way and all along the stretch.
      assertTrue(fit.at("/figures/staysPutN").doubleValue() > 0, fit.toString());
      for (int i = 15; i <= 56; i++) {
        // 80° in 60 steps: 20° is the fifteenth, 75° just past the fifty-sixth.
        assertTrue(each.at("/curve/openN/" + i).doubleValue() > 0, each.get("mounts") + " " + i);
        assertTrue(each.at("/curve/closeN/" + i).doubleValue() > 0, each.get("mounts") + " " + i);
      }
    }
  }

  @Test
  void aSpringThatIsToGoOverItsDeadCentreDoesSoWhereverItIsHung() {
    ObjectNode job = Jobs.tree(LID);
    job.set(
        "zones",
        Jobs.tree(
            """
            {"frameMm": {"x": [60, 250], "y": [-80, 20]},
             "movingMm": {"x": [200, 450], "y": [-250, -60]}}
            """));
    ofAThird(job);
    job.putObject("requirements")
        .put("maxHandForceN", 150)
        .put("overCentreByDeg", 20)
        .put("staysShut", true);
    JsonNode found = tree(post(job.toString()).then().statusCode(200).extract().response());
    assertTrue(found.get("arrangements").size() >= 3, found.toString());
    for (JsonNode each : found.get("arrangements")) {
      JsonNode fit = askedAfresh(job, each);
      double centre = fit.at("/figures/overCentreDeg").doubleValue();
      assertTrue(centre > 0 && centre <= 20, fit.toString());
      assertTrue(fit.at("/figures/closedHoldLeastNm").doubleValue() > 0, fit.toString());
      // Below the line from hinge to frame mount the spring presses shut: by eye, not by figure.
      JsonNode mounts = each.get("mounts");
      double turn =
          mounts.at("/frameMm/x").doubleValue() * mounts.at("/movingMm/y").doubleValue()
              - mounts.at("/frameMm/y").doubleValue() * mounts.at("/movingMm/x").doubleValue();
      assertTrue(turn < 0, mounts.toString());
    }
  }

  @Test
  void whoWouldRatherNotWaitIsToldWhereToLook() throws Exception {
    Response begun =
        given()
            .contentType(ContentType.JSON)
            .header("Prefer", "respond-async")
            .body(asked().toString())
            .post("/api/v1/mounts");
    begun.then().statusCode(202).header("Preference-Applied", "respond-async");
    String task = begun.getHeader("Location");
    assertTrue(task.contains("/api/v1/tasks/"), task);
    JsonNode seen =
        Patience.until(
            () -> tree(given().get(task).then().statusCode(200).extract().response()),
            each -> each.get("state").textValue().equals("done"));
    assertEquals(seen.get("total"), seen.get("done"));
    assertEquals(found(), seen.get("result"));
    given().delete(task).then().statusCode(204);
    given().get(task).then().statusCode(404).body("detail", containsString("twenty minutes"));
  }

  @Test
  void aTaskIsStoppedAndKeepsWhatItHadFound() throws Exception {
    String task =
        given()
            .contentType(ContentType.JSON)
            .header("Prefer", "wait=1, respond-async")
            .body(LID)
            .post("/api/v1/mounts")
            .getHeader("Location");
    given().delete(task).then().statusCode(204);
    JsonNode seen =
        Patience.until(
            () -> tree(given().get(task)),
            each -> !each.get("state").textValue().equals("running"));
    assertEquals("stopped", seen.get("state").textValue());
    // One that had not begun has nothing to show.
    JsonNode found = seen.get("result");
    assertTrue(found.isNull() || found.has("arrangements"), seen.toString());
    assertTrue(found.isNull() || found.get("places").asInt() <= seen.get("done").asInt());
  }

  @ParameterizedTest
  @CsvSource({
    "/zones/frameMm/x,        '[150, -50]',   #/zones/frameMm/x/0,  zone-turned-round",
    "/zones/frameMm/x,        '[0, 1000000]', #/zones/frameMm/x/1,  out-of-bounds",
    "/zones/frameMm/x,        '[0]',          #/zones/frameMm/x,    list-size",
    "/zones/frameMm/y,        '\"low\"',      #/zones/frameMm/y,    not-a-list",
    "/zones/movingMm,         'null',         #/zones/movingMm,     missing",
    "/zones,                  'null',         #/zones,              missing",
    "/zones/keepOutMm,        '[{\"x\": [-60, 160], \"y\": [-260, -40]}]', #/zones/keepOutMm/0,"
        + " zone-kept-out",
    "/load/handleMm,          '{\"x\": 0, \"y\": 0}', #/load/handleMm, handle-at-hinge",
    "/zones/depthMm,          '3',            #/zones/depthMm,      unknown-field"
  })
  void saysWhatIsWrongWithTheZones(String at, String value, String where, String code) {
    ObjectNode job = Jobs.tree(LID);
    int last = at.lastIndexOf('/');
    ObjectNode parent = last == 0 ? job : (ObjectNode) job.at(at.substring(0, last));
    parent.set(at.substring(last + 1), JsonText.read(value.getBytes()).tree());
    JsonNode problem = tree(post(job.toString()).then().statusCode(422).extract().response());
    Map<String, String> codes = new HashMap<>();
    problem
        .get("errors")
        .forEach(e -> codes.put(e.get("pointer").textValue(), e.get("code").textValue()));
    assertEquals(Map.of(where, code), codes);
  }

  @Test
  void aForceProfileHasNoMountsToFind() {
    ObjectNode job = Jobs.tree(Jobs.PROFILE);
    job.set("zones", Jobs.tree(LID).get("zones"));
    post(job.toString()).then().statusCode(422).body("errors.code", hasItem("no-mounts-to-find"));
  }

  @Test
  void zonesThatNothingSpansAreAnsweredByWhatStandsInTheWay() {
    ObjectNode job = Jobs.tree(LID);
    ((ObjectNode) job.at("/zones/frameMm")).putArray("x").add(5000).add(5200);
    JsonNode found = tree(post(job.toString()).then().statusCode(200).extract().response());
    assertEquals(0, found.get("arrangements").size());
    assertEquals("mounts-too-far", found.at("/obstacle/code").textValue());
    assertTrue(found.at("/obstacle/neededMm").doubleValue() > 4000);
    assertTrue(found.at("/obstacle/message").textValue().contains("Move the zones nearer"));
  }

  @Test
  void whatMissesLeastIsShownWhereNothingFits() {
    ObjectNode job = Jobs.tree(LID);
    job.putObject("requirements").put("maxHandForceN", 5);
    JsonNode found = tree(post(job.toString()).then().statusCode(200).extract().response());
    assertEquals("requirements", found.at("/obstacle/code").textValue());
    assertEquals("near", found.at("/near/0/fit/verdict").textValue());
    assertEquals("hand-force", found.at("/near/0/fit/blockedBy/0/code").textValue());
  }

  @Test
  void zonesGoAlongWithASavedJob() {
    ObjectNode job = Jobs.lid();
    job.set("zones", Jobs.tree(LID).get("zones"));
    Response saved =
        given().contentType(ContentType.JSON).body(job.toString()).post("/api/v1/jobs");
    saved.then().statusCode(201).body("zones.frameMm.x", is(List.of(-50, 150)));
    given()
        .header("If-Match", saved.getHeader("ETag"))
        .delete(saved.getHeader("Location"))
        .then()
        .statusCode(204);
  }

  private static Response post(String body) {
    return given().contentType(ContentType.JSON).body(body).post("/api/v1/mounts");
  }

  private static JsonNode tree(Response response) {
    return JsonText.read(response.asByteArray()).tree();
  }
}
