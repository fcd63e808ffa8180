package org.staywright.web.bench;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.form.Workbooks;
import org.staywright.web.PageCharts;
import org.staywright.web.PageForm;

/** Straight lift and force profile on pages that need no script. */
@QuarkusTest
@Tag("server")
class MechanismPagesTest {

  private static final String SOUND = "lengthMm,forceN\n400,385\n490,332\n550,275.5\n";

  @Test
  void aLiftOpensWithASoundJobAndAVerdictThatItsChartBears() {
    Response lift = given().get("/lift");
    lift.then()
        .statusCode(200)
        .body(containsString("name=\"load.type\" value=\"straight-lift\""))
        .body(containsString("name=\"load.travelMm\" value=\"200\""))
        .body(containsString("Side view of the lift"))
        .body(not(containsString("load.openingAngleDeg")))
        .body(not(containsString("flap stop")));
    PageCharts charts = PageCharts.of(lift.asString());
    String said = headline(lift.asString());
    charts.holdsMost(said, "at most (\\d+)\u00a0N to lower", "lowering, most in any corner");
    charts.holdsMost(said, "at most (\\d+)\u00a0N to lift", "lifting, most in any corner");
  }

  @Test
  void aProfileOpensWithASoundJobAndAVerdictThatItsChartBears() {
    Response profile = given().get("/profile");
    profile
        .then()
        .statusCode(200)
        .body(containsString(">\n400,385\n430,372\n"))
        .body(not(containsString("name=\"mounts.")))
        .body(not(containsString("openStop")));
    PageCharts charts = PageCharts.of(profile.asString());
    String said = headline(profile.asString());
    charts.holdsMost(said, "at most (\\d+)\u00a0N too much", "too much, most in any corner");
    charts.holdsMost(said, "at most (\\d+)\u00a0N too little", "too little, most in any corner");
  }

  /** What the best of a ranking does. */
  private static String headline(String page) {
    return PageForm.first("(?s)class=\"verdict fits\">\\s*(<p>.*?)</div>", page);
  }

  @ParameterizedTest
  @ValueSource(strings = {"/flap", "/lift", "/profile"})
  void everyMechanismLeadsToTheOthers(String path) {
    String page = given().get(path).asString();
    for (String other : new String[] {"/flap", "/lift", "/profile"}) {
      boolean here = other.equals(path);
      String link = "<a href=\"" + other + "\"" + (here ? " aria-current=\"page\">" : ">");
      assertTrue(page.contains(link), link);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "lift, lifting, lowering, 'Pushed off at the start, nominal, by'",
    "profile, too little, too much, 'More than asked at the shortest, nominal, by'"
  })
  void oneFitIsShownInFull(String name, String opening, String closing, String atTheStart) {
    String page = given().get("/" + name).asString();
    Matcher pick = Pattern.compile("name=\"pick\" value=\"([^\"]+)\"").matcher(page);
    assertTrue(pick.find());
    given()
        .queryParam("pick", pick.group(1))
        .get("/" + name + "/fit")
        .then()
        .statusCode(200)
        .body(containsString("Prop the load"))
        .body(containsString("href=\"/" + name + "?"));
    String detail =
        given().queryParam("pick", pick.group(1)).get("/" + name + "/fit/detail").asString();
    String told = PageForm.first("<dt>" + atTheStart + "</dt><dd>([\\d.]+)\u00a0N</dd>", detail);
    // What pushing in takes more than letting out gives, halved, is free of friction.
    PageCharts charts = PageCharts.of(detail);
    double off = (charts.first(closing + ", nominal") - charts.first(opening + ", nominal")) / 2;
    assertEquals(off, Double.parseDouble(told), 0.1, atTheStart);
  }

  @Test
  void aFaultInATableNamesThePointAndKeepsTheText() {
    given()
        .queryParam("load.points", "400,385\n390 370\n500 much\n520")
        .get("/profile")
        .then()
        .statusCode(200)
        .body(containsString("Points, no. 3, force is “much”, which cannot be read as a number"))
        .body(containsString("Points, no. 4, force is missing"))
        .body(containsString("400,385\n390 370\n500 much\n520</textarea>"));
    given()
        .queryParam("load.points", "400 385\n390 370")
        .get("/profile")
        .then()
        .body(containsString("Points, no. 2, length is 390, not longer than the length before it"));
  }

  @Test
  void fiveHundredPointsTravelInTheAddress() {
    String points =
        IntStream.range(0, 500)
            .mapToObj(i -> 400 + 0.25 * i + "," + (385.125 - 0.2 * i))
            .collect(Collectors.joining("\r\n"));
    given()
        .queryParam("load.points", points)
        .get("/profile")
        .then()
        .statusCode(200)
        .body(containsString("class=\"verdict "));
    given()
        .queryParam("load.points", points + "\r\n900,1")
        .get("/profile")
        .then()
        .statusCode(200)
        .body(containsString("Give 2…500 of them"));
  }

  @Test
  void aFileLandsItsPointsInTheFormAndLosesNothingElse() {
    Response sent = upload(SOUND, token());
    assertEquals(303, sent.statusCode());
    String address = sent.header("Location");
    assertTrue(
        URLDecoder.decode(address, StandardCharsets.UTF_8)
            .contains("load.points=400,385\n490,332\n550,275.5"),
        address);
    given()
        .urlEncodingEnabled(false)
        .get(address)
        .then()
        .statusCode(200)
        .body(containsString("400,385\n490,332\n550,275.5</textarea>"))
        .body(containsString("name=\"name\" value=\"Roof &amp; more\""));
  }

  @Test
  void aWorkbookOfForcesIsReadLikeTheSameTable() {
    String table = upload(SOUND, token()).header("Location");
    assertEquals(table, upload(Workbooks.of(SOUND), token()).header("Location"));
    Response bomb = upload(Workbooks.bomb(), token());
    assertEquals(422, bomb.statusCode());
    assertTrue(bomb.asString().contains("The workbook unpacks to far more"), bomb.asString());
  }

  @Test
  void aFileAtFaultIsSaidByRowAndColumnAndThePointsStay() {
    Response sent = upload("lengthMm,forceN\n400,385\n390,x\n380,3\n400,1\n", token());
    assertEquals(422, sent.statusCode());
    String page = sent.asString();
    assertTrue(page.contains("Row 3 forceN is “x”"), page);
    assertTrue(page.contains("Row 4 lengthMm is 380, not longer"), page);
    assertTrue(page.contains("Row 5 lengthMm stands there twice"), page);
    assertTrue(page.contains("1,1\n2,2</textarea>"), page);
    assertEquals(422, upload("", token()).statusCode());
    assertEquals(422, upload("colour\nred\n", token()).statusCode());
  }

  @Test
  void aFileWithoutTheTokenIsRefused() {
    assertEquals(400, upload(SOUND, "").statusCode());
  }

  @Test
  void aChosenLiftIsSavedAsALift() {
    String page = given().get("/lift").asString();
    String choose = page.substring(page.indexOf("<form id=\"choose\""));
    Matcher pair =
        Pattern.compile("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\">")
            .matcher(choose.substring(0, choose.indexOf("</form>")));
    RequestSpecification form = given().redirects().follow(false);
    Response start = given().get("/lift");
    form.cookies(start.cookies());
    while (pair.find()) {
      String value = pair.group(1).equals("csrf-token") ? token(start) : pair.group(2);
      form.formParam(pair.group(1), value);
    }
    Matcher pick = Pattern.compile("name=\"pick\" value=\"([^\"]+)\"").matcher(page);
    assertTrue(pick.find());
    Response saved = form.formParam("pick", pick.group(1)).post("/jobs");
    assertEquals(303, saved.statusCode(), saved.asString());
    String job = given().get(saved.header("Location")).asString();
    assertTrue(job.contains("href=\"/lift?"), job);
    List<String> said =
        Pattern.compile("<p>[^<]*</p>")
            .matcher(headline(page))
            .results()
            .map(MatchResult::group)
            .toList();
    assertEquals(2, said.size(), "what the hand has to do, and what it does at the end");
    said.forEach(sentence -> assertTrue(job.contains(sentence), sentence + " in " + job));
  }

  private Response page;

  private String token() {
    page = given().get("/profile");
    return token(page);
  }

  private static String token(Response page) {
    Matcher token =
        Pattern.compile("name=\"csrf-token\" value=\"([^\"]+)\"").matcher(page.asString());
    assertTrue(token.find());
    return token.group(1);
  }

  private Response upload(String file, String token) {
    return upload(file.getBytes(StandardCharsets.UTF_8), token);
  }

  private Response upload(byte[] file, String token) {
    RequestSpecification form = given().redirects().follow(false);
    if (page != null) {
      form.cookies(page.cookies());
    }
    return form.multiPart("csrf-token", token)
        .multiPart("load.type", "force-profile")
        .multiPart("name", "Roof & more")
        .multiPart("load.points", "1,1\n2,2")
        .multiPart("table", "forces.csv", file, "text/csv")
        .post("/profile/points");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/flap", "/lift", "/profile", "/seat"})
  void bringsUpToDateOnlyWhatStandsOnThePage(String path) {
    Set<String> there = ids(given().get(path).asString(), "");
    Set<String> renewed = ids(given().get(path + "/live").asString(), "[^>]* hx-swap-oob");
    assertTrue(renewed.contains("view"), renewed.toString());
    renewed.removeAll(there);
    assertEquals(Set.of(), renewed);
  }

  private static Set<String> ids(String page, String then) {
    return Pattern.compile("\\sid=\"([^\"]+)\"" + then)
        .matcher(page)
        .results()
        .map(match -> match.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
