package org.staywright.web.compare;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.document.job.OrderFile;
import org.staywright.web.PageForm;
import org.staywright.web.job.JobPagesTest;
import org.staywright.web.shell.PagesTest;

/** Several parts or jobs at once: one list, side by side; parts that do not fit. */
@QuarkusTest
@Tag("server")
class SideBySideTest {

  @Test
  void severalJobsShareOneListWithLikePartsAddedUp() {
    String one = JobPagesTest.chosen("First <i>");
    String other =
        JobPagesTest.saved(
            PageForm.empty(given().get("/jobs/" + one)).post("/jobs/" + one + "/copy"));
    Response list = given().get("/parts-list?job=" + one + "&job=" + other + "&job=999999999");
    list.then()
        .statusCode(200)
        .body(containsString("First &lt;i&gt;"))
        .body(containsString("Copy of First"))
        .body(containsString("There is no job 999999999"));
    String number = given().get("/api/v1/jobs/" + one).path("choice.partNumber");
    int each = given().get("/api/v1/jobs/" + one + "/parts-list.json").path("lines[0].needed");
    String query = "?job=" + one + "&job=" + other;
    given()
        .get("/parts-list/parts-list.json" + query)
        .then()
        .statusCode(200)
        .body("lines[0].partNumber", equalTo(number))
        .body("lines[0].needed", equalTo(2 * each));
    for (OrderFile file : OrderFile.OF_SEVERAL) {
      String address = "/parts-list/" + file.file() + query;
      list.then().body(containsString(file.file()));
      byte[] content =
          given()
              .get(address)
              .then()
              .statusCode(200)
              .contentType(file.type())
              .header("Content-Disposition", containsString(file.file()))
              .extract()
              .asByteArray();
      assertTrue(content.length > 100, file.file());
    }
    given().get("/parts-list/parts-list.doc" + query).then().statusCode(404);
    given().get("/parts-list").then().statusCode(200).body(containsString("Tick some"));
  }

  @Test
  void partsStandSideBySideWithTheBestMarked() {
    Response ranking = PagesTest.lid().get("/flap");
    String first = PageForm.first(JobPagesTest.PICK, ranking.asString());
    String other = PageForm.first("(?s)ranking\">.*" + JobPagesTest.PICK, ranking.asString());
    PagesTest.lid()
        .queryParam("pick", first, other, "1xNOPE-NOPE")
        .get("/compare")
        .then()
        .statusCode(200)
        .body(containsString("A opening"))
        .body(containsString("B closing"))
        .body(containsString("1xNOPE-NOPE is left out"))
        .body(containsString("<span class=\"hush\">best: </span>"))
        .body(containsString("Price breaks"));
    PagesTest.lid()
        .queryParam("pick", first, other)
        .get("/compare/side-by-side.csv")
        .then()
        .statusCode(200)
        .body(
            startsWith(
                "\"opened, °\",\"A opening: hand force, nominal, N\",\"A closing: hand force,"
                    + " nominal, N\",\"B opening: hand force, nominal, N\",\"B closing: hand force,"
                    + " nominal, N\""));
    given().get("/compare").then().statusCode(200).body(containsString("nothing to compare"));
    String id = JobPagesTest.chosen("Compared");
    given()
        .get("/compare?job=" + id + "&job=" + id)
        .then()
        .statusCode(200)
        .body(containsString("One alone"));
  }

  @Test
  void theTermsOfTheScoreStandBesideTheWeightsThatCanBeChanged() {
    String ranking = PagesTest.lid().get("/flap").asString();
    String first = PageForm.first(JobPagesTest.PICK, ranking);
    String other = PageForm.first("(?s)ranking\">.*" + JobPagesTest.PICK, ranking);
    Response usual = PagesTest.lid().queryParam("pick", first, other).get("/compare");
    usual
        .then()
        .statusCode(200)
        .body(containsString("Best balance, in points"))
        .body(containsString("name=\"weights.effort\" value=\"0.4\""))
        .body(containsString("name=\"weights.landing\" value=\"0.1\""));
    assertEquals(Map.of("40", 2, "25", 2, "10", 4, "15", 2), pointsAddUp(usual.asString()));
    Response weighed =
        PageForm.of(usual, "id=\"weighing\"")
            .with("weights.effort", "0")
            .with("weights.margin", "0")
            .with("weights.landing", "0")
            .with("weights.price", "3")
            .with("weights.supply", "1")
            .get("/compare");
    weighed.then().statusCode(200).body(containsString("name=\"weights.price\" value=\"3\""));
    assertEquals(Map.of("0", 6, "75", 2, "25", 2), pointsAddUp(weighed.asString()));
    PageForm.of(usual, "id=\"weighing\"")
        .with("weights.effort", "lots")
        .get("/compare")
        .then()
        .statusCode(200)
        .body(containsString("value=\"lots\""))
        .body(containsString("aria-invalid=\"true\""))
        .body(containsString(" of 40</td>"));
  }

  /** Of each of two parts the points add up to what is told; how often a term has which weight. */
  private static Map<String, Integer> pointsAddUp(String page) {
    Map<String, Integer> weights = new HashMap<>();
    for (String letter : new String[] {"A", "B"}) {
      String cell = "data-label=\"" + letter + "\">(?:<span class=\"hush\">best: </span>)?";
      double points = 0;
      Matcher term = Pattern.compile(cell + "([\\d.]+) of ([\\d.]+)<").matcher(page);
      while (term.find()) {
        points += Double.parseDouble(term.group(1));
        weights.merge(term.group(2), 1, Integer::sum);
      }
      Matcher lost =
          Pattern.compile("Lost by one spring at one side</th>.*?" + cell + "−?([\\d.]+)<")
              .matcher(page);
      points -= lost.find() ? Double.parseDouble(lost.group(1)) : 0;
      String total = PageForm.first("Altogether, of 100</th>.*?" + cell + "([\\d.]+)<", page);
      // Five terms and their sum, each rounded to a tenth.
      assertEquals(points, Double.parseDouble(total), 0.3, letter);
    }
    return weights;
  }

  @Test
  void eachEndTakesItsOwnFittingByKindOrNumber() {
    String number =
        given().get("/api/v1/fittings?type=eyelet&thread=M8").path("items[0].partNumber");
    PagesTest.lid()
        .queryParam("fittings.rodEnd", "clevis")
        .queryParam("fittings.tubeEnd", "ball-socket", number)
        .get("/flap")
        .then()
        .statusCode(200)
        .body(
            matchesPattern(
                "(?s).*On the rod: Clevis [A-Z0-9-]+, on the tube: Eyelet " + number + ".*"))
        .body(containsString("value=\"" + number + "\" list="))
        .body(containsString("<option value=\"eyelet\" selected>"));
  }

  @Test
  void aNearPartIsChosenAndMarkedAndOneThatIsOutOnlyByAnExtraTick() {
    Response ranking =
        PagesTest.lid()
            .queryParam("requirements.maxHandForceN", "16")
            .queryParam("springCounts", "1")
            .get("/flap");
    String pick = PageForm.first(JobPagesTest.PICK, ranking.asString());
    String near =
        JobPagesTest.saved(PageForm.of(ranking, "id=\"choose\"").with("pick", pick).post("/jobs"));
    given().get("/jobs/" + near).then().body(containsString("chosen although"));
    given()
        .get("/api/v1/jobs/" + near + "/order-lines.txt")
        .then()
        .body(containsString("chosen although"));

    Response heavy = PagesTest.lid().get("/flap");
    String out = pick.replace("!", "");
    String judged =
        PageForm.of(heavy, "id=\"choose\"")
            .with("conditions.maxC", "100")
            .with("pick", out)
            .post("/jobs")
            .then()
            .statusCode(303)
            .extract()
            .header("Location");
    Response asked = given().urlEncodingEnabled(false).get(judged);
    asked
        .then()
        .statusCode(200)
        .body(containsString("although it does not fit"))
        .body(containsString("Out for this job"));
    String id =
        JobPagesTest.saved(
            PageForm.of(asked, "action=\"/jobs\"")
                .with("pick", out)
                .with("even", "true")
                .post("/jobs"));
    given().get("/jobs/" + id).then().statusCode(200).body(containsString("chosen although"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2x", "9xAAAA", "0xAAAA-1", "1xNOPE-NOPE", "<script>"})
  void aPartThatIsNoneIsSaidBesideItsField(String pick) {
    PagesTest.lid()
        .queryParam("pick", pick)
        .get("/flap/fit")
        .then()
        .statusCode(200)
        .body(matchesPattern("(?s).*id=\"why-fault\">[^<]+<.*"))
        .body(not(containsString("<script>")));
  }
}
