package org.staywright.web.stock;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.form.Jobs;
import org.staywright.form.table.RowFile;
import org.staywright.web.PageForm;

/** Revisions compared and restored, and the choices that they leave alone. */
@QuarkusTest
@Tag("server")
class RevisionPageTest {

  private int before;

  @BeforeEach
  void lookWhatIsThere() {
    before = newest();
  }

  @AfterEach
  void restoreTheRange() {
    if (newest() > before) {
      restore(before);
    }
  }

  @Test
  void aPageTellsOldAndNewValues() {
    List<String> part = part(export(), 0);
    take(part, "lead_time_days", "77");
    String address = "/stock/revisions/" + newest() + "?since=" + before;
    String page = given().get(address).asString();
    assertTrue(page.contains("0 added, 1 changed, 0 gone"), page);
    assertTrue(page.contains("<th scope=\"row\">" + part.get(0) + "</th>"), page);
    assertTrue(page.contains("<code>lead_time_days</code>"), page);
    assertTrue(page.contains(">77</td>"), page);
    given().get("/stock/revisions/" + newest()).then().body(containsString("1 changed"));
    given().get("/stock/revisions/99999").then().statusCode(404);
    given().get("/stock/revisions/" + newest() + "?since=x").then().statusCode(404);
  }

  @Test
  void aLongDifferenceComesByThePage() {
    String all = export();
    StringBuilder few = new StringBuilder(all.lines().findFirst().orElseThrow()).append('\n');
    all.lines().skip(1).limit(5).forEach(line -> few.append(line).append('\n'));
    send(few.toString(), "replace");
    String address = "/stock/revisions/" + newest() + "?since=" + before;
    String first = given().get(address).asString();
    String next = PageForm.first("href=\"(/stock/revisions/[^\"]*page=2[^\"]*)\"", first);
    String second = given().get(next).asString();
    String number = part(all, 5).get(0);
    assertTrue(first.contains("<li>" + number + "</li>"), number);
    assertTrue(!second.contains("<li>" + number + "</li>"), number);
    assertTrue(second.contains("<li>" + part(all, 105).get(0) + "</li>"));
  }

  @Test
  void aPageRestoresAnEarlierRevision() {
    String all = export();
    take(part(all, 1), "lead_time_days", "78");
    Response page = given().get("/stock/revisions/" + before + "?since=" + newest());
    Response restored =
        PageForm.empty(page).with("revision", Integer.toString(before)).post("/stock/restore");
    assertEquals(303, restored.statusCode());
    assertEquals(before + 2, newest());
    assertEquals(all, export());
  }

  @Test
  void aFrozenChoiceStaysAsItWasAfterAnImportAndARestore() {
    JsonPath best =
        given().contentType(ContentType.JSON).body(Jobs.LID).post("/api/v1/fits").jsonPath();
    String number = best.getString("fits[0].partNumber");
    Response saved = given().contentType(ContentType.JSON).body(Jobs.LID).post("/api/v1/jobs");
    String job = saved.header("Location");
    String wish =
        "{\"partNumber\": \"%s\", \"count\": %d}".formatted(number, best.getInt("fits[0].count"));
    given()
        .contentType(ContentType.JSON)
        .header("If-Match", saved.header("ETag"))
        .body(wish)
        .put(job + "/choice")
        .then()
        .statusCode(200);
    String list = given().get(job + "/parts-list.csv").asString();

    List<String> row =
        rows(export()).stream().filter(cells -> cells.get(0).equals(number)).findFirst().get();
    take(row, "price_breaks", "1:999.00");
    assertNotEquals(before, newest());
    assertEquals(list, given().get(job + "/parts-list.csv").asString());
    restore(1);
    assertEquals(list, given().get(job + "/parts-list.csv").asString());
    given().get(job).then().statusCode(200).body("choice.stockRevision", not(newest()));
  }

  @Test
  void everyColumnIsListedWithItsBoundInTheReadersLanguage() {
    given()
        .get("/stock/columns")
        .then()
        .statusCode(200)
        .body(containsString("<code>stroke_mm</code>"), containsString("≥ 20 and ≤ 3000 mm"));
    given()
        .header("Accept-Language", "de")
        .get("/stock/columns")
        .then()
        .body(containsString("≥ 20 und ≤ 3000 mm"), not(containsString(" and ")));
    given().get("/api/v1/stock/sample.csv").then().statusCode(200);
    given().get("/api/v1/stock/sample.xlsx").then().statusCode(200);
  }

  private static String export() {
    return given().get("/api/v1/stock/export.csv").asString();
  }

  private static List<List<String>> rows(String export) {
    try (CSVParser rows = CSVParser.parse(export, RowFile.FORMAT)) {
      return rows.stream().map(CSVRecord::toList).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> part(String export, int row) {
    return rows(export).get(1 + row);
  }

  /** Takes in one row of an export with another value. */
  private static void take(List<String> row, String column, String value) {
    List<String> header = rows(export()).get(0);
    List<String> changed = new ArrayList<>(row);
    changed.set(header.indexOf(column), value);
    send(
        RowFile.FORMAT.format(header.toArray()) + "\n" + RowFile.FORMAT.format(changed.toArray()),
        "update");
  }

  private static void send(String file, String mode) {
    given()
        .contentType("text/csv")
        .body(file.getBytes(StandardCharsets.UTF_8))
        .post("/api/v1/stock/imports?mode=" + mode)
        .then()
        .statusCode(200);
  }

  private static void restore(int revision) {
    given()
        .contentType("application/json")
        .post("/api/v1/stock/revisions/" + revision + "/restore")
        .then()
        .statusCode(200);
  }

  private static int newest() {
    return given().get("/api/v1/stock/revisions").then().extract().path("items[0].revision");
  }
}
