package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.Patience;
import org.staywright.web.api.document.Described;

@QuarkusTest
@Tag("server")
class StockResourceTest {

  private static final String STOCK = "/api/v1/stock/";

  /** Invented, as a maker's table would give it. */
  private static final String FILE =
      "part_number,family,finish,rod_thread,tube_thread,mounting,rod_diameter_mm,tube_diameter_mm,"
          + "stroke_mm,extended_length_mm,force_class_n,progression,lead_time_days\n"
          + "TRY-0001,gas-spring,zinc,M8,M8,rod-down,8,18,160,380,400,1.35,5\n";

  @AfterEach
  void restoreTheSamples() {
    if (newest() > 1) {
      given()
          .contentType("application/json")
          .post("/api/v1/stock/revisions/1/restore")
          .then()
          .statusCode(200);
    }
  }

  @Test
  void everyAnswerIsAsDescribed() {
    Described described = Described.served();
    int before = newest();
    described.conforming(sent("imports?dryRun=true&mode=update", FILE), "POST", STOCK + "imports");
    described.conforming(sent("imports?mode=update", FILE), "POST", STOCK + "imports");
    int middle = newest();
    String dearer = FILE.replace(",5\n", ",7\n");
    described.conforming(sent("imports?mode=update", dearer), "POST", STOCK + "imports");
    described.conforming(given().get(STOCK + "revisions"), "GET", STOCK + "revisions");
    String changes = STOCK + "revisions/{n}/changes";
    for (int since : List.of(before, middle)) {
      Response answer = given().get(changes + "?since=" + since, newest());
      JsonNode told = described.conforming(answer, "GET", changes);
      String listed = since == before ? "added" : "changed";
      assertEquals(1, told.at("/" + listed + "/count").intValue(), told.toString());
    }
    described.conforming(sent("revisions/1/restore", ""), "POST", STOCK + "revisions/{n}/restore");
  }

  private static Response sent(String path, String file) {
    return given().contentType("text/csv").body(file).post(STOCK + path);
  }

  @Test
  void aDryRunChangesNothing() {
    int before = newest();
    given()
        .contentType("text/csv")
        .body(FILE)
        .post("/api/v1/stock/imports?dryRun=true&mode=update")
        .then()
        .statusCode(200)
        .body("revision", nullValue(), "rows", equalTo(1), "accepted", equalTo(1))
        .body("added", equalTo(1), "faultCount", equalTo(0), "derived.gasVolumeMl", equalTo(1));
    assertEquals(before, newest());
  }

  @Test
  void whatIsWrittenIsThereUntilAnEarlierRevisionIsRestored() {
    given()
        .contentType("text/csv")
        .body(FILE)
        .post("/api/v1/stock/imports?mode=update")
        .then()
        .statusCode(200)
        .body("revision", notNullValue());
    given().get("/api/v1/parts/TRY-0001").then().statusCode(200).body("derived", notNullValue());
    given()
        .get("/api/v1/stock/revisions/" + newest() + "/changes?since=1")
        .then()
        .statusCode(200)
        .body("added.first", equalTo(List.of("TRY-0001")), "gone.count", equalTo(0));
    restoreTheSamples();
    given().get("/api/v1/parts/TRY-0001").then().statusCode(404);
  }

  @Test
  void aFileThatWasTriedIsTakenInWithoutSendingItAgain() {
    int before = newest();
    String id =
        given()
            .contentType("text/csv")
            .body(FILE.replace("stroke_mm", "Hub"))
            .post("/api/v1/stock/imports?dryRun=true&mode=update")
            .then()
            .statusCode(422)
            .body("columns[8].header", equalTo("Hub"), "columns[8].unknown", equalTo(true))
            .body("columns[8].column", nullValue())
            .extract()
            .path("id");
    String again = "/api/v1/stock/imports/" + id + "?mode=update";
    given()
        .contentType("application/json")
        .queryParam("columns", "#9=stroke_mm")
        .post(again + "&dryRun=true")
        .then()
        .statusCode(200)
        .body("columns[8].column", equalTo("stroke_mm"), "columns[8].unit", equalTo("mm"))
        .body("preview[0].values.stroke_mm", equalTo("160"));
    assertEquals(before, newest());
    given()
        .contentType("application/json")
        .queryParam("columns", "#9=stroke_mm")
        .post(again)
        .then()
        .statusCode(200)
        .body("revision", equalTo(before + 1));
    given()
        .contentType("application/json")
        .post("/api/v1/stock/imports/none?mode=update")
        .then()
        .statusCode(404);
  }

  @Test
  void faultsAreToldByRowAndKeptInAFile() {
    int before = newest();
    String file =
        given()
            .contentType("text/csv")
            .body(FILE.replace(",160,", ",-5,"))
            .post("/api/v1/stock/imports")
            .then()
            .statusCode(422)
            .contentType("application/problem+json")
            .body("faultCount", equalTo(1), "revision", nullValue())
            .body("faults[0].row", equalTo(2), "faults[0].column", equalTo("stroke_mm"))
            .body("faults[0].value", equalTo("-5"))
            .extract()
            .path("faultsFile");
    given().get(file).then().statusCode(200).body(containsString("stroke_mm,-5"));
    assertEquals(before, newest());
  }

  @Test
  void anImportCanBeATask() throws InterruptedException {
    String task =
        given()
            .contentType("text/csv")
            .header("Prefer", "respond-async")
            .body(FILE)
            .post("/api/v1/stock/imports?dryRun=true")
            .then()
            .statusCode(202)
            .extract()
            .header("Location");
    Patience.until(() -> given().get(task).<String>path("state"), "done"::equals);
    given().get(task).then().body("state", equalTo("done"), "result.accepted", equalTo(1));
  }

  @Test
  void theExportIsWhatAnImportTakes() {
    byte[] all =
        given().get("/api/v1/stock/export.csv").then().statusCode(200).extract().asByteArray();
    given()
        .contentType("text/csv")
        .body(all)
        .post("/api/v1/stock/imports?dryRun=true")
        .then()
        .statusCode(200)
        .body("added", equalTo(0), "changed", equalTo(0), "gone", equalTo(0));
  }

  @Test
  void thePageShowsFormRevisionsAndColumns() {
    given()
        .get("/stock")
        .then()
        .statusCode(200)
        .body(containsString("enctype=\"multipart/form-data\""));
  }

  @Test
  void refusesAnotherType() {
    given()
        .contentType("image/png")
        .body(new byte[] {1})
        .post("/api/v1/stock/imports")
        .then()
        .statusCode(415);
  }

  private static int newest() {
    return given().get("/api/v1/stock/revisions").then().extract().path("items[0].revision");
  }
}
