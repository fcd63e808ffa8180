package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.form.Jobs;
import org.staywright.web.api.request.Problem;

@QuarkusTest
@Tag("server")
class BadInputTest {

  @ParameterizedTest
  @ValueSource(strings = {"", "{", "not json", "{\"a\": NaN}", "{} {}", "[[[[", "{\"a\": 1,}"})
  void answers400ToWhatIsNoJson(String body) {
    post("/api/v1/fits", body)
        .statusCode(400)
        .contentType(Problem.TYPE)
        .body("status", is(400))
        .body("title", is("Bad Request"))
        .body("detail", containsString("line 1"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"[]", "3", "\"job\"", "null", "true"})
  void answers422ToJsonThatIsNoObject(String body) {
    post("/api/v1/fits", body).statusCode(422).body("errors[0].pointer", is("#"));
  }

  @Test
  void listsEveryFaultWithItsPointerValueBoundAndMend() {
    ObjectNode lid = Jobs.lid();
    lid.withObject("/load").put("massKg", -3).put("colour", "red").remove("openingAngleDeg");
    lid.withObject("/load/handleMm").put("x", "far");
    lid.withObject("/conditions").put("maxC", 1e30);
    String twice = lid.toString().replace("\"rankBy\"", "\"limit\": 3, \"rankBy\"");
    post("/api/v1/fits", twice)
        .statusCode(422)
        .contentType(Problem.TYPE)
        .body(
            "errors.pointer",
            hasItems(
                "#/load/massKg",
                "#/load/colour",
                "#/load/openingAngleDeg",
                "#/load/handleMm/x",
                "#/conditions/maxC",
                "#/limit"))
        .body("errors.find { it.pointer == '#/load/massKg' }.value", is(-3))
        .body("errors.find { it.pointer == '#/load/massKg' }.bound", is("> 0 and ≤ 2000 kg"))
        .body(
            "errors.find { it.pointer == '#/load/massKg' }.detail",
            containsString("give a number > 0"))
        .body("errors.find { it.pointer == '#/limit' }.code", is("repeated"))
        .body("errors.detail", everyItem(not(containsString("Exception"))));
  }

  @ParameterizedTest
  @CsvSource({
    "/load/massKg, 0",
    "/load/massKg, 1e400",
    "/load/massKg, -1e-400",
    "/load/openingAngleDeg, 0",
    "/load/openingAngleDeg, 271",
    "/load/centreOfMassMm/x, 10001",
    "/conditions/serviceYears, -1",
    "/requirements/maxHandForceN, 0",
    "/limit, 0",
    "/limit, 201",
    "/limit, 1.5"
  })
  void refusesNumbersOutOfBounds(String pointer, String number) {
    ObjectNode lid = Jobs.lid();
    int cut = pointer.lastIndexOf('/');
    ObjectNode parent = cut == 0 ? lid : lid.withObject(pointer.substring(0, cut));
    parent.put(pointer.substring(cut + 1), "@");
    post("/api/v1/fits", lid.toString().replace("\"@\"", number))
        .statusCode(422)
        .body("errors.pointer", equalTo(java.util.List.of("#" + pointer)))
        .body("errors[0].bound", not(empty()));
  }

  @Test
  void refusesMountsThatCoincide() {
    ObjectNode lid = Jobs.lid();
    lid.withObject("/mounts").set("frameMm", lid.at("/mounts/movingMm"));
    post("/api/v1/fits", lid.toString())
        .statusCode(422)
        .body("errors.pointer", hasItem("#/mounts/movingMm"))
        .body("errors[0].code", is("mounts-coincide"))
        .body("errors[0].value.x", is(360));
  }

  @Test
  void refusesOtherKindsOfBody() {
    given()
        .contentType("text/plain")
        .body(Jobs.LID)
        .post("/api/v1/fits")
        .then()
        .statusCode(415)
        .contentType(Problem.TYPE);
    given()
        .body(Jobs.LID.getBytes())
        .contentType("application/xml")
        .post("/api/v1/fits")
        .then()
        .statusCode(415);
  }

  @Test
  void refusesABodyOfMoreThanAMebibyte() {
    post("/api/v1/fits", " ".repeat((1 << 20) + 1))
        .statusCode(413)
        .contentType(Problem.TYPE)
        .body("detail", containsString("1 MiB"));
    post("/api/v1/fits", " ".repeat(1 << 20)).statusCode(400);
  }

  @Test
  void refusesABodyOfNoKind() throws Exception {
    HttpRequest untyped =
        HttpRequest.newBuilder(URI.create("http://localhost:" + RestAssured.port + "/api/v1/jobs"))
            .POST(HttpRequest.BodyPublishers.ofString(Jobs.LID))
            .build();
    HttpResponse<String> answer =
        HttpClient.newHttpClient().send(untyped, HttpResponse.BodyHandlers.ofString());
    assertEquals(415, answer.statusCode(), answer.body());
  }

  @Test
  void refusesToAnswerInAnotherKind() {
    given()
        .accept("application/xml")
        .get("/api/v1/parts")
        .then()
        .statusCode(406)
        .contentType(Problem.TYPE);
  }

  @Test
  void saysWhichMethodsAnAddressTakes() {
    given()
        .delete("/api/v1/parts")
        .then()
        .statusCode(405)
        .contentType(Problem.TYPE)
        .header("Allow", containsString("GET"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/api/v1/nothing",
        "/api/v1/parts/NO-SUCH",
        "/api/v1/parts/NO-SUCH/curve",
        "/api/v1/fittings/x%00y"
      })
  void answers404WithAProblem(String path) {
    given().urlEncodingEnabled(false).get(path).then().statusCode(404).contentType(Problem.TYPE);
  }

  @ParameterizedTest
  @CsvSource({
    "/api/v1/parts?size=0, size",
    "/api/v1/parts?size=201, size",
    "/api/v1/parts?size=1e9, size",
    "/api/v1/parts?page=-1, page",
    "/api/v1/parts?page=x, page",
    "/api/v1/parts?page=1&page=2, page",
    "/api/v1/parts?rodDiameterMm=-8, rodDiameterMm",
    "/api/v1/parts?forceMinN=NaN, forceMinN",
    "/api/v1/parts?finish=gold, finish",
    "/api/v1/parts?sort=colour, sort",
    "/api/v1/parts?inStock=perhaps, inStock",
    "/api/v1/parts?colour=red, colour",
    "/api/v1/parts/ANY-1?size=3, size",
    "/api/v1/fittings?type=hook, type",
    "/api/v1/parts/ANY-1/curve?samples=1, samples",
    "/api/v1/parts/ANY-1/curve?temperatureC=151, temperatureC"
  })
  void answers400ToAFaultyParameter(String address, String parameter) {
    given()
        .get(address)
        .then()
        .statusCode(400)
        .contentType(Problem.TYPE)
        .body("errors.parameter", equalTo(java.util.List.of(parameter)))
        .body("errors[0].detail", containsString(parameter));
  }

  private static ValidatableResponse post(String path, String body) {
    RequestSpecification request = given().contentType(ContentType.JSON).body(body);
    return request.post(path).then();
  }
}
