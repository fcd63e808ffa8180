package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.lowagie.text.pdf.PdfReader;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.form.Jobs;
import org.staywright.web.api.document.Described;
import org.staywright.web.api.request.Problem;

/** Documents of saved jobs and lists of several of them, over HTTP. */
@QuarkusTest
@Tag("server")
class ListsTest {

  private static final String JOBS = "/api/v1/jobs";
  private static final String LISTS = "/api/v1/parts-lists";

  @ParameterizedTest
  @ValueSource(strings = {"parts-list", "quotation-request", "job-sheet"})
  void pdfsOfAJobAreServed(String document) throws Exception {
    Response pdf = given().get(chosen(3) + "/" + document + ".pdf");
    pdf.then().statusCode(200).contentType("application/pdf");
    pdf.then().header("Content-Disposition", startsWith("inline; filename=\"" + document));
    assertTrue(new PdfReader(pdf.asByteArray()).getNumberOfPages() <= 2);
  }

  @Test
  void aWorkbookAndOrderLinesAreServed() {
    String job = chosen(1);
    given()
        .get(job + "/parts-list.xlsx")
        .then()
        .statusCode(200)
        .contentType(PartsListResource.XLSX)
        .header("Content-Disposition", containsString(".xlsx"));
    given()
        .get(job + "/order-lines.txt")
        .then()
        .statusCode(200)
        .contentType(startsWith("text/plain"))
        .body(startsWith("Order lines: Floor locker lid"));
  }

  @Test
  void likePartsOfSeveralJobsAreAddedUp() {
    String one = chosen(3);
    String other = chosen(4);
    JsonPath first = given().get(one + "/parts-list.json").jsonPath();
    JsonPath second = given().get(other + "/parts-list.json").jsonPath();
    Response both = post(LISTS + ".json", body(number(one), number(other)));
    both.then().statusCode(200).body("jobs.sets", is(List.of(3, 4)));
    both.then().body("lines.partNumber", is(first.getList("lines.partNumber")));
    for (int i = 0; i < first.getList("lines").size(); i++) {
      String needed = "lines[" + i + "].needed";
      assertEquals(
          first.getInt(needed) + second.getInt(needed), both.jsonPath().getInt(needed), needed);
    }
    Described described = Described.served();
    described.conforming(both, "POST", LISTS + ".json");
    described.conforming(given().get(one), "GET", JOBS + "/{id}");
    described.conforming(
        given().get(one + "/parts-list.json"), "GET", JOBS + "/{id}/parts-list.json");
  }

  @ParameterizedTest
  @CsvSource({
    "csv, text/csv",
    "xlsx, application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    "pdf, application/pdf"
  })
  void theCommonListComesInEveryForm(String ending, String type) {
    Response list = post(LISTS + "." + ending, body(number(chosen(1)), number(chosen(1))));
    list.then().statusCode(200).contentType(startsWith(type));
    assertTrue(list.asByteArray().length > 500);
  }

  @Test
  void everyFaultOfACommonListIsNamed() {
    Response unchosen = save(Jobs.lid());
    int without = number(unchosen.getHeader("Location"));
    Response refused = post(LISTS + ".json", body(number(chosen(1)), without, 999_999_999));
    refused.then().statusCode(422).contentType(Problem.TYPE);
    refused.then().body("errors.pointer", is(List.of("#/jobs/1", "#/jobs/2")));
    refused.then().body("errors.code", is(List.of("nothing-chosen", "no-such-job")));
    Described.served().conforming(refused, "POST", LISTS + ".json");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "{\"jobs\": []}",
        "{\"jobs\": [1, 1]}",
        "{\"jobs\": [0]}",
        "{\"jobs\": [-1]}",
        "{\"jobs\": [1e99]}",
        "{\"jobs\": \"all\"}",
        "{\"jobs\": [1], \"more\": 1}"
      })
  void aFaultyBodyIsRefused(String body) {
    post(LISTS + ".pdf", body).then().statusCode(422).contentType(Problem.TYPE);
  }

  @ParameterizedTest
  @CsvSource({
    "sets, 0",
    "sets, -1",
    "sets, 1000000000",
    "spares, -1",
    "spares, 1000000000",
    "count, 0",
    "count, 1000000000"
  })
  void quantitiesBeyondTheirBoundsAreRefused(String field, int value) {
    Response saved = save(Jobs.lid());
    JsonPath best = ranked();
    ObjectNode wish = wish(best.getString("fits[0].partNumber"), 1).put(field, value);
    choose(saved, wish)
        .then()
        .statusCode(422)
        .body("errors.pointer", hasItem("#/" + field))
        .body("errors.value", hasItem(value))
        .body("errors.bound", hasItem(notNullValue()));
    given().get(saved.getHeader("Location")).then().body("choice", nullValue());
  }

  @Test
  void aPartThatDoesNotFitIsChosenOnlyWhenSaidSoAndMarked() {
    JsonPath ranked = ranked();
    String part = ranked.getString("near[0].partNumber");
    int count = ranked.getInt("near[0].count");
    Response saved = save(Jobs.lid());
    choose(saved, wish(part, count))
        .then()
        .statusCode(422)
        .body("errors.code", is(List.of("part-near")));
    Response chosen = choose(saved, wish(part, count).put("evenIfMisfit", true));
    chosen.then().statusCode(200).body("choice.evenIfMisfit", is(true));
    given()
        .get(saved.getHeader("Location") + "/parts-list.json")
        .then()
        .body("jobs[0].chosenAlthough", containsString("chosen although: "));
    given()
        .get("/jobs/" + number(saved.getHeader("Location")))
        .then()
        .statusCode(200)
        .body(containsString("chosen although: "));
  }

  @Test
  void evenAPartThatIsOutCanBeHadWhenSaidSo() {
    Response saved = save(Jobs.lid());
    String part = given().get("/api/v1/parts?size=1").jsonPath().getString("items[0].partNumber");
    choose(saved, wish(part, 1)).then().statusCode(422);
    choose(saved, wish(part, 1).put("evenIfMisfit", true)).then().statusCode(200);
    String address = saved.getHeader("Location");
    given().get(address + "/job-sheet.pdf").then().statusCode(200);
    given()
        .get(address + "/parts-list.csv")
        .then()
        .body(containsString("chosen although: "))
        .body(not(containsString("null")));
  }

  @Test
  void aNameOfAHundredKilobytesIsRefused() {
    save(Jobs.lid().put("name", "N".repeat(100_000)))
        .then()
        .statusCode(422)
        .body("errors.pointer", hasItem("#/name"));
  }

  private static String chosen(int sets) {
    JsonPath best = ranked();
    Response saved = save(Jobs.lid());
    ObjectNode wish = wish(best.getString("fits[0].partNumber"), best.getInt("fits[0].count"));
    choose(saved, wish.put("sets", sets)).then().statusCode(200);
    return saved.getHeader("Location");
  }

  private static JsonPath ranked() {
    return given().contentType(ContentType.JSON).body(Jobs.LID).post("/api/v1/fits").jsonPath();
  }

  private static ObjectNode wish(String part, int count) {
    return JsonNodeFactory.instance.objectNode().put("partNumber", part).put("count", count);
  }

  private static Response choose(Response saved, ObjectNode wish) {
    return given()
        .contentType(ContentType.JSON)
        .header("If-Match", saved.getHeader("ETag"))
        .body(wish.toString())
        .put(saved.getHeader("Location") + "/choice");
  }

  private static Response save(ObjectNode job) {
    return post(JOBS, job.toString());
  }

  private static Response post(String address, String body) {
    return given().contentType(ContentType.JSON).body(body).post(address);
  }

  private static int number(String location) {
    return Integer.parseInt(location.substring(location.lastIndexOf('/') + 1));
  }

  private static String body(int... jobs) {
    ObjectNode body = JsonNodeFactory.instance.objectNode();
    for (int job : jobs) {
      body.withArray("jobs").add(job);
    }
    return body.toString();
  }
}
