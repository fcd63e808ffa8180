package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.Patience;
import org.staywright.document.job.OrderFile;
import org.staywright.form.Jobs;
import org.staywright.form.Workbooks;
import org.staywright.web.PageForm;
import org.staywright.web.api.document.Described;

@QuarkusTest
@Tag("server")
class BatchResourceTest {

  private static final String TABLE =
      "name,load.type,load.massKg,load.centreOfMassMm.x,load.centreOfMassMm.y,load.handleMm.x,"
          + "load.handleMm.y,load.opens,load.openingAngleDeg,mounts.frameMm.x,mounts.frameMm.y,"
          + "mounts.movingMm.x,mounts.movingMm.y\n"
          + "Lid,hinged-flap,18,410,15,800,0,counterclockwise,80,15,-65,360,-11\n"
          + "Gate,hinged-flap,190,410,15,800,0,counterclockwise,80,15,-65,360,-11\n";

  private static String over(String location) throws InterruptedException {
    return Patience.until(
            () -> given().get(location).then().statusCode(200).extract().response(),
            task -> task.path("state").equals("done"))
        .path("result.id");
  }

  @Test
  void aTableBecomesATaskWhoseResultsComeAsJsonAndAsATable() throws InterruptedException {
    String location =
        given()
            .contentType("text/csv")
            .body(TABLE)
            .post("/api/v1/batches?name=two")
            .then()
            .statusCode(202)
            .body("total", equalTo(2), "result.name", equalTo("two"))
            .extract()
            .header("Location");
    String id = over(location);
    String best =
        given()
            .contentType("application/json")
            .body(Jobs.LEAST)
            .post("/api/v1/fits")
            .path("fits[0].partNumber");
    given()
        .get("/api/v1/batches/" + id + "/results.json")
        .then()
        .statusCode(200)
        .body("items.size()", equalTo(2))
        .body("items[0].row", equalTo(2), "items[0].name", equalTo("Lid"))
        .body("items[0].verdict", equalTo("fits"), "items[0].best.partNumber", equalTo(best));
    List<String> lines =
        given().get("/api/v1/batches/" + id + "/results.csv").asString().lines().toList();
    assertEquals(3, lines.size());
    assertTrue(lines.get(1).startsWith("2,Lid,fits,"), lines.get(1));
    assertTrue(lines.get(1).contains("," + best + ","), lines.get(1));
    given().get("/api/v1/batches").then().body("items.id", hasItem(id));
    given()
        .get("/batches/" + id)
        .then()
        .statusCode(200)
        .body(containsString("All 2 jobs are judged"), containsString(best));
    Described described = Described.served();
    for (String told :
        List.of("/batches", "/batches/{id}", "/batches/{id}/results.json", "/tasks/{id}")) {
      String path = "/api/v1" + told;
      described.conforming(given().get(path.replace("{id}", id)), "GET", path);
    }
    given().delete("/api/v1/tasks/" + id).then().statusCode(204);
    given().get("/api/v1/batches/" + id).then().statusCode(404);
    given().get("/batches/" + id).then().statusCode(404);
  }

  @Test
  void aWorkbookGivesTheVeryResultsOfTheSameTable() throws InterruptedException {
    List<Object> table = results("text/csv", TABLE.getBytes(StandardCharsets.UTF_8));
    assertEquals(2, table.size());
    assertEquals(table, results(OrderFile.Type.XLSX, Workbooks.of(TABLE)));
  }

  private static List<Object> results(String type, byte[] file) throws InterruptedException {
    String id = over(sent(type, file).then().statusCode(202).extract().header("Location"));
    List<Object> items = given().get("/api/v1/batches/" + id + "/results.json").path("items");
    given().delete("/api/v1/tasks/" + id).then().statusCode(204);
    return items;
  }

  private static Response sent(String type, byte[] file) {
    return given().contentType(type).body(file).post("/api/v1/batches");
  }

  @Test
  void faultsOfAWorkbookAreThoseOfTheSameTable() {
    String wrong = TABLE.replace(",18,", ",-18,").replace(",190,", ",heavy,");
    List<Object> faults = faults("text/csv", wrong.getBytes(StandardCharsets.UTF_8));
    assertEquals(faults, faults(OrderFile.Type.XLSX, Workbooks.of(wrong)));
    String heavy = TABLE.replace(",18,", ",-18,");
    sent(OrderFile.Type.XLSX, Workbooks.of(heavy, sheet -> sheet.formula(2, 2, "19*10")))
        .then()
        .statusCode(422)
        .body("faultCount", equalTo(2))
        .body("faults.row", contains(2, 3))
        .body("faults.column", contains("load.massKg", "load.massKg"))
        .body("faults[1].value", equalTo("=19*10"))
        .body("faults[1].detail", containsString("paste the cells as values"));
  }

  @Test
  void aWorkbookThatCannotBeReadIsRefusedWithWhatToDo() {
    byte[] whole = Workbooks.of(TABLE);
    sent(OrderFile.Type.XLSX, Arrays.copyOf(whole, whole.length / 2))
        .then()
        .statusCode(422)
        .contentType("application/problem+json")
        .body("faults[0].detail", containsString("no workbook that can be read"));
    sent(OrderFile.Type.XLSX, Workbooks.bomb())
        .then()
        .statusCode(422)
        .body("faults[0].detail", containsString("unpacks to far more"));
  }

  private static List<Object> faults(String type, byte[] file) {
    return sent(type, file).then().statusCode(422).extract().path("faults");
  }

  @Test
  void faultsAreNamedByRowAndNothingIsBegun() {
    int before = given().get("/api/v1/batches").path("items.size()");
    given()
        .contentType("text/csv")
        .body(TABLE.replace(",18,", ",-18,"))
        .post("/api/v1/batches")
        .then()
        .statusCode(422)
        .contentType("application/problem+json")
        .body("faultCount", equalTo(1), "faults[0].row", equalTo(2))
        .body("faults[0].column", equalTo("load.massKg"), "faults[0].value", equalTo("-18"))
        .body("faults[0].expected", containsString("kg"));
    given()
        .contentType("application/json")
        .body("[" + Jobs.LEAST)
        .post("/api/v1/batches")
        .then()
        .statusCode(400);
    given().contentType("text/plain").body("x").post("/api/v1/batches").then().statusCode(415);
    given()
        .contentType("application/json")
        .put("/api/v1/batches")
        .then()
        .statusCode(405)
        .header("Allow", "GET, POST");
    assertEquals(before, (int) given().get("/api/v1/batches").path("items.size()"));
  }

  @Test
  void thePageTakesAFileAndLeadsToItsResults() {
    Response page = given().get("/batches");
    String location =
        sent(page, "[" + Jobs.LEAST + "]").then().statusCode(303).extract().header("Location");
    given().get(location).then().statusCode(200).body(containsString("jobs.json"));
    stop(location);
  }

  @Test
  void thePageTakesAWorkbook() {
    Response page = given().get("/batches");
    page.then().body(containsString("CSV, XLSX or JSON"), containsString(".xlsx"));
    String location =
        sent(page, Workbooks.of(TABLE)).then().statusCode(303).extract().header("Location");
    given().get(location).then().statusCode(200);
    stop(location);
    sent(page, Workbooks.of(TABLE.replace(",190,", ",heavy,")))
        .then()
        .statusCode(200)
        .body(containsString("Faults in the file: 1"), containsString("Row 3"));
  }

  private static void stop(String location) {
    PageForm.of(given().get(location), "/stop\"")
        .post("/batches/" + location.replaceAll(".*/", "") + "/stop");
  }

  @Test
  void thePageNamesFaultsByRow() {
    Response page = given().get("/batches");
    sent(page, TABLE.replace(",190,", ",heavy,"))
        .then()
        .statusCode(200)
        .body(containsString("Faults in the file: 1"), containsString("heavy"));
    sent(page, "[{]").then().statusCode(200).body(containsString("not"));
  }

  private static Response sent(Response page, String file) {
    return sent(page, file.getBytes(StandardCharsets.UTF_8));
  }

  private static Response sent(Response page, byte[] file) {
    return given()
        .redirects()
        .follow(false)
        .cookies(page.cookies())
        .multiPart("csrf-token", PageForm.empty(page).values().get("csrf-token").get(0))
        .multiPart("file", "jobs.json", file, "text/plain")
        .post("/batches");
  }
}
