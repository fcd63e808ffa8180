package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.staywright.form.Jobs;

@QuarkusTest
class DamperBesideTest {

  private String damper;

  /** 100 mm of stroke, M6. */
  @BeforeEach
  void findsADamper() {
    damper =
        given()
            .get("/api/v1/parts?family=damper&rodDiameterMm=6&strokeMinMm=100&strokeMaxMm=100")
            .then()
            .statusCode(200)
            .extract()
            .path("items[0].partNumber");
  }

  private ObjectNode lid() {
    ObjectNode lid = Jobs.lid();
    ObjectNode mounts = lid.putObject("damper").put("partNumber", damper).putObject("mounts");
    mounts.putObject("frameMm").put("x", 15).put("y", -65);
    mounts.putObject("movingMm").put("x", 300).put("y", -11);
    return lid;
  }

  private static Response post(String address, ObjectNode body) {
    return given().contentType(ContentType.JSON).body(body.toString()).post("/api/v1" + address);
  }

  @Test
  void slowsTheFallOfALidWhoseSpringsFailed() {
    JsonPath best = post("/fits", lid()).then().statusCode(200).extract().jsonPath();
    double[] times = new double[2];
    for (int i = 0; i < 2; i++) {
      ObjectNode asked = lid().objectNode();
      asked.set("job", i == 0 ? Jobs.lid() : lid());
      asked.put("partNumber", best.getString("fits[0].partNumber"));
      asked
          .put("count", best.getInt("fits[0].count"))
          .put("failedSprings", asked.get("count").intValue());
      times[i] =
          post("/fits/motion", asked)
              .then()
              .statusCode(200)
              .extract()
              .jsonPath()
              .getDouble("endTimeS");
    }
    assertTrue(times[1] > 1.05 * times[0], times[0] + " s, damped " + times[1] + " s");
  }

  @Test
  void standsOnThePartsListWithItsEndFittings() {
    Response saved = post("/jobs", lid());
    String address = saved.then().statusCode(201).extract().header("Location");
    String best = post("/fits", lid()).then().extract().path("fits[0].partNumber");
    int count = post("/fits", lid()).then().extract().path("fits[0].count");
    given()
        .contentType(ContentType.JSON)
        .header("If-Match", saved.getHeader("ETag"))
        .body("{\"partNumber\": \"" + best + "\", \"count\": " + count + ", \"sets\": 3}")
        .put(address + "/choice")
        .then()
        .statusCode(200);
    JsonPath list =
        given().get(address + "/parts-list.json").then().statusCode(200).extract().jsonPath();
    assertEquals(3, list.getInt("lines.find {it.partNumber == '" + damper + "'}.quantity"));
    int sockets = 0;
    for (Object pieces : list.getList("lines.findAll {it.kind == 'ball-socket'}.quantity")) {
      sockets += ((Number) pieces).intValue();
    }
    assertEquals(3 * 2 * (count + 1), sockets);
  }

  @Test
  void refusesWhatIsNoDamperOrDoesNotReach() {
    ObjectNode none = lid();
    none.withObject("/damper").put("partNumber", "NO-SUCH");
    for (String address : new String[] {"/fits", "/jobs"}) {
      post(address, none)
          .then()
          .statusCode(422)
          .body("errors.pointer", hasItem("#/damper/partNumber"))
          .body("errors[0].value", is("NO-SUCH"));
    }
    ObjectNode far = lid();
    far.withObject("/damper/mounts/movingMm").put("x", 600);
    post("/fits", far).then().statusCode(422).body("errors[0].detail", containsString("reaches"));
    ObjectNode zoned = lid();
    zoned.withObject("/zones/frameMm").putArray("x").add(0).add(50);
    zoned.withObject("/zones/frameMm").putArray("y").add(-100).add(-50);
    zoned.withObject("/zones/movingMm").putArray("x").add(300).add(400);
    zoned.withObject("/zones/movingMm").putArray("y").add(-50).add(0);
    post("/mounts", zoned)
        .then()
        .statusCode(422)
        .body("errors.pointer", hasItem("#/damper/partNumber"));
  }

  @Test
  void isAskedForOnTheBenchWithItsFaultBesideTheField() {
    String least =
        "/flap?load.type=hinged-flap&load.massKg=18&load.centreOfMassMm.x=410"
            + "&load.centreOfMassMm.y=15&load.handleMm.x=800&load.handleMm.y=0"
            + "&load.opens=counterclockwise&load.openingAngleDeg=80&mounts.frameMm.x=15"
            + "&mounts.frameMm.y=-65&mounts.movingMm.x=360&mounts.movingMm.y=-11&damper.partNumber=";
    given()
        .get(least + "NO-SUCH")
        .then()
        .statusCode(200)
        .body(containsString("the stock has no damper of that number"));
    String mounts =
        "&damper.mounts.frameMm.x=15&damper.mounts.frameMm.y=-65&damper.mounts.movingMm.x=300"
            + "&damper.mounts.movingMm.y=-11";
    given()
        .get(least + damper + mounts)
        .then()
        .statusCode(200)
        .body(containsString("value=\"" + damper + "\""))
        .body(containsString(">damper</text>"))
        .body(containsString("class=\"verdict fits\""));
    given().get(least).then().statusCode(200).body(not(containsString(">damper</text>")));
  }
}
