package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;
import org.staywright.form.Jobs;
import org.staywright.part.Column;
import org.staywright.part.Range;
import org.staywright.web.api.request.Problem;

/** Jobs saved over the interface, whichever the database. */
abstract class SavedJobs {

  private static final String JOBS = "/api/v1/jobs";

  @Test
  void comesWithSampleJobs() {
    given().get(JOBS + "?size=200").then().body("items.name", hasItems("Floor locker lid"));
  }

  @Test
  void savesAJobWithItsDefaultsAndGivesItBack() {
    Response saved = post(Jobs.tree(Jobs.LEAST).put("name", "Least"));
    saved.then().statusCode(201).header("Location", containsString(JOBS + "/"));
    String tag = saved.getHeader("ETag");
    given()
        .get(saved.getHeader("Location"))
        .then()
        .statusCode(200)
        .header("ETag", tag)
        .body("name", is("Least"))
        .body("load.massTolerancePercent", is(5))
        .body("requirements.maxHandForceN", is(50))
        .body("choice", nullValue())
        .body("created", notNullValue())
        .body("changed", notNullValue());
  }

  @Test
  void storesNothingOfAFaultyJob() {
    int before = count();
    ObjectNode lid = Jobs.lid();
    lid.withObject("/load").put("massKg", -1);
    post(lid).then().statusCode(422);
    given().contentType(ContentType.JSON).body("{").post(JOBS).then().statusCode(400);
    post(Jobs.lid().put("id", 7)).then().statusCode(422);
    assertEquals(before, count());
  }

  @Test
  void takesBackWhatItGaveAndGuardsEveryChange() {
    Response saved = post(Jobs.lid());
    String address = saved.getHeader("Location");
    String given = given().get(address).asString();
    put(address, given, null).then().statusCode(428).contentType(Problem.TYPE);
    put(address, given, "\"99\"").then().statusCode(412).contentType(Problem.TYPE);
    Response changed = put(address, given.replace("Floor", "Roof"), saved.getHeader("ETag"));
    changed.then().statusCode(200).body("name", is("Roof locker lid"));
    put(address, given, saved.getHeader("ETag")).then().statusCode(412);
    given().delete(address).then().statusCode(428);
    given().header("If-Match", saved.getHeader("ETag")).delete(address).then().statusCode(412);
    given().header("If-Match", changed.getHeader("ETag")).delete(address).then().statusCode(204);
    given().get(address).then().statusCode(404);
  }

  @Test
  void aFaultyChangeChangesNothing() {
    Response saved = post(Jobs.lid());
    String address = saved.getHeader("Location");
    put(address, Jobs.lid().put("limit", 0).toString(), saved.getHeader("ETag"))
        .then()
        .statusCode(422);
    given().get(address).then().header("ETag", saved.getHeader("ETag")).body("limit", is(20));
  }

  @Test
  void pagesAreTheNewestFirst() {
    post(Jobs.lid().put("name", "older"));
    post(Jobs.lid().put("name", "newer"));
    given()
        .get(JOBS + "?size=2")
        .then()
        .statusCode(200)
        .body("items.name", is(List.of("newer", "older")))
        .body("size", is(2));
    given().get(JOBS + "?page=999999").then().statusCode(200).body("items", hasSize(0));
  }

  @Test
  void freezesAChoiceAndWritesItsPartsList() {
    Response saved = post(Jobs.lid());
    String address = saved.getHeader("Location");
    given().get(address + "/parts-list.json").then().statusCode(404);
    int revision = given().get("/api/v1/stock/revisions").path("items[0].revision");
    JsonPath best = best();
    int count = best.getInt("fits[0].count");
    ObjectNode wish = choice(best.getString("fits[0].partNumber"), count).put("sets", 3);
    Response chosen =
        put(address + "/choice", wish.put("spares", 2).toString(), saved.getHeader("ETag"));
    chosen
        .then()
        .statusCode(200)
        .header("ETag", not(saved.getHeader("ETag")))
        .body("choice.stockRevision", is(revision))
        .body("choice.fittings.rodEnd", is(best.getString("fits[0].fittings.rodEnd")));

    JsonPath list =
        given().get(address + "/parts-list.json").then().statusCode(200).extract().jsonPath();
    Map<String, Integer> needed =
        list.<Map<String, Object>>getList("lines").stream()
            .collect(Collectors.toMap(l -> (String) l.get("kind"), l -> (Integer) l.get("needed")));
    assertEquals(
        Map.of(
            "gas-spring", 3 * count + 2,
            "ball-socket", 3 * 2 * count + 2,
            "ball-stud", 3 * 2 * count + 2,
            "retaining-clip", 3 * 2 * count + 2),
        needed);
    assertEquals("net", list.getString("vatBasis"));
    assertTrue(list.getInt("lines.find { it.kind == 'retaining-clip' }.quantity") % 10 == 0);

    String csv =
        given()
            .get(address + "/parts-list.csv")
            .then()
            .statusCode(200)
            .contentType(startsWith("text/csv"))
            .extract()
            .asString();
    assertEquals(1 + 4, csv.lines().count());

    given()
        .header("If-Match", chosen.getHeader("ETag"))
        .delete(address + "/choice")
        .then()
        .statusCode(200)
        .body("choice", nullValue());
  }

  @Test
  void refusesAChoiceThatIsOutForTheJob() {
    Response saved = post(Jobs.lid());
    Range range = SampleRange.read();
    double[] stroke = range.column(Column.STROKE);
    int shortest = 0;
    for (int i = 0; i < stroke.length; i++) {
      shortest = stroke[i] < stroke[shortest] ? i : shortest;
    }
    put(
            saved.getHeader("Location") + "/choice",
            choice(range.number(shortest), 1).toString(),
            saved.getHeader("ETag"))
        .then()
        .statusCode(422)
        .body("errors.code", everyItem(is("part-rejected")));
    given().get(saved.getHeader("Location")).then().body("choice", nullValue());
  }

  @Test
  void aChangeThatTheChoiceCannotServeIsRefused() {
    Response saved = post(Jobs.lid());
    String address = saved.getHeader("Location");
    JsonPath best = best();
    Response chosen =
        put(
            address + "/choice",
            choice(best.getString("fits[0].partNumber"), best.getInt("fits[0].count")).toString(),
            saved.getHeader("ETag"));
    ObjectNode moved = Jobs.lid();
    moved.withObject("/mounts/movingMm").put("x", 700);
    put(address, moved.toString(), chosen.getHeader("ETag"))
        .then()
        .statusCode(422)
        .body("errors.code", is(List.of("choice-rejected")));
    put(address, Jobs.lid().put("name", "Renamed").toString(), chosen.getHeader("ETag"))
        .then()
        .statusCode(200)
        .body("choice.partNumber", is(best.getString("fits[0].partNumber")));
  }

  private static ObjectNode choice(String partNumber, int count) {
    return JsonNodeFactory.instance.objectNode().put("partNumber", partNumber).put("count", count);
  }

  private static JsonPath best() {
    return given().contentType(ContentType.JSON).body(Jobs.LID).post("/api/v1/fits").jsonPath();
  }

  private static int count() {
    return given().get(JOBS).jsonPath().getInt("total");
  }

  private static Response post(ObjectNode job) {
    return given().contentType(ContentType.JSON).body(job.toString()).post(JOBS);
  }

  private static Response put(String address, String body, String tag) {
    var request = given().contentType(ContentType.JSON).body(body);
    return (tag == null ? request : request.header("If-Match", tag)).put(address);
  }
}
