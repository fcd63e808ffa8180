package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.form.Jobs;

/** What no part whatever could do is said in words, not by an empty list. */
@QuarkusTest
@Tag("server")
class ContradictionsTest {

  /** Hangs down from its hinge and is pushed further down by its springs. */
  private static ObjectNode hanging() {
    ObjectNode lid = Jobs.lid();
    lid.withObject("/load").put("opens", "clockwise");
    lid.withObject("/load/centreOfMassMm").put("y", -15);
    lid.withObject("/mounts/frameMm").put("y", 65);
    lid.withObject("/mounts/movingMm").put("y", 11);
    return lid;
  }

  private static ObjectNode asking(ObjectNode job, String field, Object value) {
    job.withObject("/requirements").putPOJO(field, value);
    return job;
  }

  private static ValidatableResponse post(String address, ObjectNode job) {
    return given()
        .contentType(ContentType.JSON)
        .body(job.toString())
        .post("/api/v1" + address)
        .then();
  }

  private static void refused(ObjectNode job, String at, String code, String... words) {
    ValidatableResponse answer =
        post("/fits", job)
            .statusCode(422)
            .contentType("application/problem+json")
            .body("errors.pointer", is(List.of(at)))
            .body("errors.code", is(List.of(code)));
    for (String word : words) {
      answer.body("errors[0].detail", containsString(word));
    }
    // Nobody keeps such a job, and every question about a part in it says the same.
    post("/jobs", job).statusCode(422).body("errors.code", is(List.of(code)));
    ObjectNode about = JsonNodeFactory.instance.objectNode();
    about.set("job", job);
    post("/fits/why", about.put("partNumber", "ANY-0001"))
        .statusCode(422)
        .body("errors.pointer", is(List.of(at.replace("#", "#/job"))))
        .body("errors.code", is(List.of(code)));
  }

  @Test
  void aHoldAboveWhatTheHandMayCloseWith() {
    // 0.5 N·m in the hinge take 0.625 N at the handle, 800 mm from it: 50 − 0.625 are left.
    String at = "#/requirements/minHoldOpenN";
    refused(asking(Jobs.lid(), "minHoldOpenN", 49.4), at, "hold-above-hand", "≤ 49.3 N", "closing");
    post("/fits", asking(Jobs.lid(), "minHoldOpenN", 49.3)).statusCode(200);
    // Its own limit for closing, where there is one.
    ObjectNode eased = asking(Jobs.lid(), "minHoldOpenN", 49.4);
    post("/fits", asking(eased, "maxHandCloseN", 60)).statusCode(200);
    refused(
        asking(asking(Jobs.lid(), "minHoldOpenN", 20), "maxHandCloseN", 15),
        at,
        "hold-above-hand",
        "≤ 14.3 N");
  }

  @Test
  void shutThoughGravityAndEverySpringOpenIt() {
    // m·g·x closed and heaviest over the handle's lever: 95.0 N, which no part could take away.
    String newtons = "95 N";
    refused(
        asking(hanging(), "staysShut", true),
        "#/requirements/staysShut",
        "opens-by-itself",
        newtons);
    refused(
        asking(hanging(), "maxLatchPushN", 40),
        "#/requirements/maxLatchPushN",
        "pushes-by-itself",
        newtons);
    post("/fits", asking(hanging(), "maxLatchPushN", 400)).statusCode(200);
    // A spring that pulls could hold it.
    ObjectNode pulled = asking(hanging(), "staysShut", true);
    pulled.withObject("/filters").putArray("families").add("traction-spring");
    post("/fits", pulled).statusCode(200);
    // A load that closes by itself may be asked to.
    post("/fits", asking(Jobs.lid(), "staysShut", true)).statusCode(200);
  }

  @Test
  void shutThoughGravityOpensItFartherThanAnyPartHoldsIsSaidOfEveryNearPart() {
    // Over its dead centre when shut, so that springs hold it, but no spring holds 300 kg.
    ObjectNode heavy = asking(hanging(), "staysShut", true);
    heavy.withObject("/load").put("massKg", 300);
    heavy.withObject("/mounts/frameMm").put("y", -20);
    post("/fits", heavy)
        .statusCode(200)
        .body("fitsTotal", is(0))
        .body("nearTotal", not(is(0)))
        .body("near.findAll { !it.blockedBy.code.contains('stays-shut') }.size()", is(0));
  }

  @Test
  void risingFromWhereItIsToStay() {
    ObjectNode still = asking(Jobs.lid(), "staysPutFromDeg", 20);
    refused(
        asking(asking(still, "staysPutToDeg", 40), "risesFromDeg", 10),
        "#/requirements/risesFromDeg",
        "rises-where-it-stays",
        "≥ 40 °");
    refused(
        asking(asking(Jobs.lid(), "staysShut", true), "risesFromDeg", 0),
        "#/requirements/risesFromDeg",
        "rises-though-shut");
  }

  @Test
  void stayingOpenWithTheOnlySpringFailed() {
    ObjectNode single = asking(Jobs.lid(), "staysWithOneFailed", true);
    single.putArray("springCounts").add(1);
    refused(single, "#/springCounts", "one-failed-leaves-none", "2");
    single.putArray("springCounts").add(1).add(2);
    post("/fits", single).statusCode(200);
  }
}
