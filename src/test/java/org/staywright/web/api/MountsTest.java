package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.is;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.staywright.form.Jobs;
import org.staywright.form.JsonText;

/** Mounts found over the interface, waited for or not. */
@QuarkusTest
class MountsTest {

  static final String LID =
      """
      {"load": {"type": "hinged-flap", "massKg": 18, "centreOfMassMm": {"x": 410, "y": 15},
                "handleMm": {"x": 800, "y": 0}, "opens": "counterclockwise", "openingAngleDeg": 80},
       "zones": {"frameMm": {"x": [-50, 150], "y": [-250, -50]},
                 "movingMm": {"x": [200, 400], "y": [-100, 100]}}}
      """;

  @Test
  void everyArrangementIsCalledAFitAtItsMounts() {
    JsonNode found = tree(post(LID).then().statusCode(200).extract().response());
    assertTrue(found.get("obstacle").isNull());
    int arrangements = found.get("arrangements").size();
    assertTrue(arrangements >= 3 && arrangements <= 8, "arrangements: " + arrangements);
    for (JsonNode each : found.get("arrangements")) {
      ObjectNode job = Jobs.tree(LID);
      job.remove("zones");
      job.set("mounts", each.get("mounts"));
      job.put("limit", 200);
      JsonNode fits =
          tree(given().contentType(ContentType.JSON).body(job.toString()).post("/api/v1/fits"));
      JsonNode same = null;
      for (JsonNode fit : fits.get("fits")) {
        if (fit.get("partNumber").equals(each.at("/fit/partNumber"))
            && fit.get("count").equals(each.at("/fit/count"))) {
          same = fit;
        }
      }
      assertTrue(same != null, each.at("/fit/partNumber") + " at " + each.get("mounts"));
      assertEquals(same.get("figures"), each.at("/fit/figures"));
      assertEquals(61, each.at("/curve/openN").size());
      assertTrue(each.at("/sensitivityNPerMm/moving/y").isNumber());
    }
  }

  @Test
  void whoWouldRatherNotWaitIsToldWhereToLook() throws Exception {
    Response begun =
        given()
            .contentType(ContentType.JSON)
            .header("Prefer", "respond-async")
            .body(LID)
            .post("/api/v1/mounts");
    begun.then().statusCode(202).header("Preference-Applied", "respond-async");
    String task = begun.getHeader("Location");
    assertTrue(task.contains("/api/v1/tasks/"), task);
    JsonNode seen = null;
    for (int i = 0; i < 600; i++) {
      seen = tree(given().get(task).then().statusCode(200).extract().response());
      if (seen.get("state").textValue().equals("done")) {
        break;
      }
      Thread.sleep(50);
    }
    assertEquals("done", seen.get("state").textValue());
    assertEquals(seen.get("total"), seen.get("done"));
    assertEquals(tree(post(LID)), seen.get("result"));
    given().delete(task).then().statusCode(204);
    given().get(task).then().statusCode(404).body("detail", containsString("twenty minutes"));
  }

  @Test
  void aTaskIsStopped() {
    String task =
        given()
            .contentType(ContentType.JSON)
            .header("Prefer", "wait=1, respond-async")
            .body(LID)
            .post("/api/v1/mounts")
            .getHeader("Location");
    given().delete(task).then().statusCode(204);
    given().get(task).then().statusCode(200).body("state", is("stopped"));
  }

  @ParameterizedTest
  @CsvSource({
    "/zones/frameMm/x,        '[150, -50]',   #/zones/frameMm/x/0,  zone-turned-round",
    "/zones/frameMm/x,        '[0, 1000000]', #/zones/frameMm/x/1,  out-of-bounds",
    "/zones/frameMm/x,        '[0]',          #/zones/frameMm/x,    list-size",
    "/zones/frameMm/y,        '\"low\"',      #/zones/frameMm/y,    not-a-list",
    "/zones/movingMm,         'null',         #/zones/movingMm,     missing",
    "/zones,                  'null',         #/zones,              missing",
    "/zones/keepOutMm,        '[{\"x\": [-60, 160], \"y\": [-260, -40]}]', #/zones/keepOutMm/0, zone-kept-out",
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
