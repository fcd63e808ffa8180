package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.form.Jobs;

/** Dampers and further springs that act along, by JSON, by flat names and in a table. */
@QuarkusTest
@Tag("server")
class BesideTheSpringsTest {

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
    return beside(Jobs.lid(), damper, 300);
  }

  /** With one part more, on the frame where the springs are. */
  private static ObjectNode beside(ObjectNode job, String number, double x) {
    ObjectNode mounts =
        job.withArray("beside").addObject().put("partNumber", number).putObject("mounts");
    mounts.putObject("frameMm").put("x", 15).put("y", -65);
    mounts.putObject("movingMm").put("x", x).put("y", -11);
    return job;
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
  void refusesWhatIsThereNotOrDoesNotReach() {
    ObjectNode none = beside(lid(), "NO-SUCH", 300);
    for (String address : new String[] {"/fits", "/jobs"}) {
      post(address, none)
          .then()
          .statusCode(422)
          .body("errors.pointer", is(List.of("#/beside/1/partNumber")))
          .body("errors[0].value", is("NO-SUCH"));
    }
    ObjectNode asked = none.objectNode();
    asked.set("job", none);
    for (String address : new String[] {"/fits/curve", "/fits/why"}) {
      post(address, asked.put("partNumber", damper).put("count", 1)).then().statusCode(422);
    }
    asked.remove("count");
    post("/fits/why", asked)
        .then()
        .statusCode(422)
        .body("errors.pointer", is(List.of("#/job/beside/1/partNumber")));
    post("/fits", beside(Jobs.lid(), damper, 600))
        .then()
        .statusCode(422)
        .body("errors[0].pointer", is("#/beside/0/partNumber"))
        .body("errors[0].detail", containsString("reaches"));
  }

  @Test
  void aDamperOfFormerDaysIsToldThatItsNameIsAnother() {
    ObjectNode former = Jobs.lid();
    former.putObject("damper").put("partNumber", damper);
    post("/fits", former)
        .then()
        .statusCode(422)
        .body("errors.pointer", is(List.of("#/damper")))
        .body("errors[0].bound", containsString("beside"));
  }

  @Test
  void boundsOfEveryFieldAreKept() {
    ObjectNode lid = lid();
    for (int i = 0; i < 4; i++) {
      beside(lid, damper, 300);
    }
    post("/fits", lid)
        .then()
        .statusCode(422)
        .body("errors.pointer", is(List.of("#/beside")))
        .body("errors[0].value", is(5))
        .body("errors[0].bound", is("0…4"));
    ObjectNode wrong = lid();
    wrong.withArray("beside").addObject().put("count", 9).putObject("mounts").putObject("frameMm");
    post("/fits", wrong)
        .then()
        .statusCode(422)
        .body(
            "errors.collect { it.pointer + ' ' + it.code }.sort()",
            is(
                List.of(
                    "#/beside/1/count out-of-bounds",
                    "#/beside/1/mounts/frameMm/x missing",
                    "#/beside/1/mounts/frameMm/y missing",
                    "#/beside/1/mounts/movingMm missing",
                    "#/beside/1/partNumber missing")));
  }

  @Test
  void isNotConsideredWhereMountsAreStillToBeFound() {
    ObjectNode zoned = lid();
    zoned.withObject("/zones/frameMm").putArray("x").add(0).add(50);
    zoned.withObject("/zones/frameMm").putArray("y").add(-100).add(-50);
    zoned.withObject("/zones/movingMm").putArray("x").add(300).add(400);
    zoned.withObject("/zones/movingMm").putArray("y").add(-50).add(0);
    post("/mounts", zoned)
        .then()
        .statusCode(422)
        .body("errors.pointer", is(List.of("#/beside/0/partNumber")))
        .body("errors.code", is(List.of("nothing-beside-in-zones")));
  }

  private static final String LEAST =
      "/flap?load.type=hinged-flap&load.massKg=18&load.centreOfMassMm.x=410"
          + "&load.centreOfMassMm.y=15&load.handleMm.x=800&load.handleMm.y=0"
          + "&load.opens=counterclockwise&load.openingAngleDeg=80&mounts.frameMm.x=15"
          + "&mounts.frameMm.y=-65&mounts.movingMm.x=360&mounts.movingMm.y=-11";

  private static String slot(String list, String number) {
    return ("&LIST.partNumber=" + number)
        .concat("&LIST.mounts.frameMm.x=15&LIST.mounts.frameMm.y=-65")
        .concat("&LIST.mounts.movingMm.x=300&LIST.mounts.movingMm.y=-11")
        .replace("LIST", list);
  }

  @Test
  void isAskedForOnTheBenchWithItsFaultBesideTheField() {
    given()
        .get(LEAST + "&beside.0.partNumber=NO-SUCH")
        .then()
        .statusCode(200)
        .body(containsString("no spring or damper of that number"))
        .body(containsString("<span class=\"fault\" id=\"f-beside-0-partNumber-fault\">Beside"));
    given()
        .get(LEAST + slot("beside.0", damper))
        .then()
        .statusCode(200)
        .body(containsString("name=\"beside.0.partNumber\" value=\"" + damper + "\""))
        .body(containsString("name=\"beside.1.partNumber\" value=\"\""))
        .body(not(containsString("name=\"beside.2.partNumber\"")))
        .body(containsString("class=\"verdict fits\""));
    // An empty slot comes with its count of one.
    given()
        .get(LEAST + "&beside.0.partNumber=&beside.0.count=1")
        .then()
        .statusCode(200)
        .body(not(containsString("name=\"beside.1.partNumber\"")))
        .body(containsString("class=\"verdict fits\""));
    given()
        .get(LEAST + "&beside.0.count=2")
        .then()
        .body(containsString("id=\"f-beside-0-partNumber-fault\">Beside"));
  }

  @Test
  void anAddressKeepsItsDamperFromWhenThereWasOneAndAnEmptySlotIsPassedOver() {
    for (String list : new String[] {"damper", "beside.2"}) {
      given()
          .get(LEAST + slot(list, damper))
          .then()
          .statusCode(200)
          .body(containsString("name=\"beside.0.partNumber\" value=\"" + damper + "\""));
    }
  }

  @Test
  void columnsOfATableHaveItByItsIndex() {
    String names = LEAST.substring("/flap?".length()) + slot("beside.0", damper);
    StringBuilder head = new StringBuilder();
    StringBuilder row = new StringBuilder();
    for (String pair : names.split("&")) {
      head.append(head.isEmpty() ? "" : ",").append(pair, 0, pair.indexOf('='));
      row.append(row.isEmpty() ? "" : ",").append(pair.substring(pair.indexOf('=') + 1));
    }
    String task =
        given()
            .contentType("text/csv")
            .body(head + "\n" + row + "\n")
            .post("/api/v1/batches?name=beside")
            .then()
            .statusCode(202)
            .extract()
            .header("Location");
    given().delete(task).then().statusCode(204);
    given().delete(task);
    given()
        .contentType("text/csv")
        .body(head + "\n" + row.toString().replace(damper, "NO-SUCH") + "\n")
        .post("/api/v1/batches")
        .then()
        .statusCode(422)
        .body("faults[0].column", is("beside.0.partNumber"));
  }
}
