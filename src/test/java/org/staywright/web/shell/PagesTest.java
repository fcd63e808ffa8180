package org.staywright.web.shell;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.stock.CurrentRange;
import org.staywright.web.PageCharts;
import org.staywright.web.PageForm;
import org.staywright.web.job.JobPagesTest;

/** The pages as a browser without script gets them. */
@QuarkusTest
@Tag("server")
public class PagesTest {

  private static final String SCRIPT = "<script>alert(1)</script>";

  @Inject CurrentRange stock;

  public static RequestSpecification lid() {
    return given()
        .queryParam("load.type", "hinged-flap")
        .queryParam("load.massKg", "18")
        .queryParam("load.centreOfMassMm.x", "410")
        .queryParam("load.centreOfMassMm.y", "15")
        .queryParam("load.handleMm.x", "800")
        .queryParam("load.handleMm.y", "0")
        .queryParam("load.opens", "counterclockwise")
        .queryParam("load.openingAngleDeg", "80")
        .queryParam("mounts.frameMm.x", "15")
        .queryParam("mounts.frameMm.y", "-65")
        .queryParam("mounts.movingMm.x", "360")
        .queryParam("mounts.movingMm.y", "-11");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "/flap", "/flap/live", "/parts", "/jobs", "/nowhere"})
  void everyPageForbidsWhatIsNotItsOwn(String path) {
    given()
        .get(path)
        .then()
        .header(
            "Content-Security-Policy",
            allOf(
                containsString("default-src 'self'"),
                containsString("frame-ancestors 'none'"),
                not(containsString("unsafe"))))
        .header("X-Content-Type-Options", "nosniff")
        .header("Referrer-Policy", "same-origin");
  }

  @Test
  void startHasThreeDoorsAndTheSampleJobs() {
    given()
        .get("/")
        .then()
        .statusCode(200)
        .body(containsString("<h1>The right gas spring, from the shelf</h1>"))
        .body(containsString("href=\"/flap\""))
        .body(containsString("href=\"/jobs\""))
        .body(containsString("href=\"/parts\""))
        .body(containsString("Jobs on the bench"));
  }

  @Test
  void flapOpensWithALidAndItsVerdictInNewtons() {
    String page = given().get("/flap").then().statusCode(200).extract().asString();
    assertTrue(page.contains("name=\"load.massKg\" value=\"18\""));
    assertTrue(page.contains("name=\"conditions.minC\" value=\"-10\""));
    assertTrue(
        Pattern.compile("class=\"verdict fits\">\\s*<p>[^<]*\\d+\u00a0N spring")
            .matcher(page)
            .find());
    assertTrue(page.contains("Why the others are out"));
    assertTrue(page.contains("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing\""));
  }

  @Test
  void kindsOfSpringAreThereToTick() {
    String html = given().get("/flap").asString();
    assertTrue(html.contains("name=\"filters.families\" value=\"gas-spring\" checked"));
    assertTrue(html.contains("name=\"filters.families\" value=\"coil-spring\" aria"));
    assertTrue(!html.contains("value=\"damper\""), "a damper carries nothing");
  }

  @Test
  void aFaultStandsBesideItsFieldWithTheValueKept() {
    lid()
        .queryParam("requirements.maxHandForceN", "-7")
        .queryParam("load.tiltDeg", "steep")
        .get("/flap")
        .then()
        .statusCode(200)
        .body(containsString("2 entries need mending"))
        .body(containsString("name=\"requirements.maxHandForceN\" value=\"-7\""))
        .body(containsString("name=\"load.tiltDeg\" value=\"steep\""))
        .body(
            matchesPattern(
                "(?s).*id=\"f-requirements-maxHandForceN-fault\">Hand force limit is -7; give a number"
                    + " &gt; 0.*"))
        .body(containsString("id=\"f-load-massKg-fault\"></span>"))
        .body(not(containsString("class=\"verdict ")));
  }

  @Test
  void mountsThatCoincideAreSaidAtTheMount() {
    lid()
        .queryParam("mounts.lateralOffsetMm", "0")
        .get("/flap")
        .then()
        .body(containsString("class=\"verdict fits\""));
    given()
        .get(
            "/flap?load.type=hinged-flap&load.massKg=18&load.centreOfMassMm.x=410"
                + "&load.centreOfMassMm.y=15&load.handleMm.x=800&load.handleMm.y=0"
                + "&load.opens=counterclockwise&load.openingAngleDeg=80&mounts.frameMm.x=100"
                + "&mounts.frameMm.y=5&mounts.movingMm.x=100&mounts.movingMm.y=5")
        .then()
        .statusCode(200)
        .body(
            matchesPattern("(?s).*id=\"f-mounts-movingMm-fault\">On the flap lies on the other.*"));
  }

  @Test
  void whatWasLeftOutShowsItsDefaultBesideAFault() {
    given()
        .get("/flap?load.massKg=-3")
        .then()
        .statusCode(200)
        .body(containsString("name=\"load.massKg\" value=\"-3\""))
        .body(containsString("name=\"requirements.maxHandForceN\" value=\"50\""));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "load.type=straight-lift",
        "load.opens=sideways",
        "springCounts=abc",
        "springCounts=9",
        "fittings.rodEnd=glue",
        "filters.families=bogus",
        "filters.finish=gold",
        "requirements.openStop=x",
        "requirements.staysShut=maybe",
        "rankBy=luck",
        "limit=0",
        "zones=1",
        "load.massKg=NaN",
        "load.massKg=1e999",
        "load=1",
        "mounts=1",
        "conditions.minC=90"
      })
  void wrongWordsAreSaidAndNeverBreakThePage(String query) {
    for (String path : List.of("/flap", "/flap/live")) {
      given()
          .get(path + "?load.massKg=18&" + query)
          .then()
          .statusCode(200)
          .body(containsString("class=\"faults\""));
    }
  }

  @Test
  void aNearPartSaysWhatItMissesAndByHowMuch() {
    String page =
        lid()
            .queryParam("requirements.maxHandForceN", "16")
            .queryParam("springCounts", "1")
            .get("/flap")
            .asString();
    assertTrue(page.contains("class=\"verdict near\""), page);
    PageCharts charts = PageCharts.of(page);
    double open = charts.most("opening, most in any corner");
    double close = charts.most("closing, most in any corner");
    charts.holdsMost(
        page,
        "<li>needs (\\d+)\u00a0N at the hand at worst, 16\u00a0N allowed</li>",
        (open > close ? "opening" : "closing") + ", most in any corner");
  }

  @Test
  void aNameIsTextAndNothingElse() {
    lid()
        .queryParam("name", SCRIPT)
        .get("/flap")
        .then()
        .statusCode(200)
        .body(containsString("value=\"&lt;script&gt;alert(1)&lt;/script&gt;\""))
        .body(not(containsString(SCRIPT)));
  }

  @Test
  void whatAnAddressCarriesBesidesIsPassedOver() {
    lid().queryParam("campaign", "x").get("/flap").then().body(containsString("verdict fits"));
  }

  @Test
  void liveBringsFragmentsAndTheAddressToKeep() {
    lid()
        .get("/flap/live")
        .then()
        .statusCode(200)
        .header("HX-Replace-Url", startsWith("/flap?"))
        .body(not(containsString("<html")))
        .body(containsString("id=\"view\" class=\"view graph\" hx-swap-oob=\"true\""))
        .body(containsString("id=\"verdict\" hx-swap-oob"));
  }

  @Test
  void aPartIsAskedAboutByItsNumber() {
    String number = PageForm.first(JobPagesTest.PICK, lid().get("/flap").asString()).substring(2);
    lid()
        .queryParam("partNumber", number.toLowerCase(java.util.Locale.ROOT))
        .get("/flap/why")
        .then()
        .statusCode(200)
        .body(containsString("1 × " + number))
        .body(containsString("2 × " + number))
        .body(containsString("no. 1 in this order"));
    lid()
        .queryParam("partNumber", "NOPE-<i>")
        .get("/flap/why")
        .then()
        .statusCode(200)
        .body(containsString("NOPE-&lt;I&gt;"))
        .body(containsString("id=\"why-fault\">No part in stock has that number"));
  }

  @Test
  void aPartThatIsOutIsAskedAboutToo() {
    String shortest =
        given().get("/api/v1/parts?family=gas-spring&size=1").path("items[0].partNumber");
    String why =
        lid().queryParam("partNumber", shortest).get("/flap/why").then().extract().asString();
    assertTrue(why.contains("verdict none"), why);
    String all = PageForm.first("href=\"(/flap/fit[^\"]*pick=[^\"]*)\"", why);
    given()
        .urlEncodingEnabled(false)
        .get(all.replace("&amp;", "&"))
        .then()
        .statusCode(200)
        .body(containsString("name=\"even\""));
  }

  @Test
  void rankingFollowsTheOrderAskedFor() {
    lid()
        .queryParam("rankBy", "lowest-cost")
        .get("/flap")
        .then()
        .body(containsString("<option value=\"lowest-cost\" selected>"));
  }

  @Test
  void errorsLookLikePagesExceptUnderTheInterface() {
    for (String path : List.of("/nowhere", "/parts/NOPE-1", "/jobs/999999", "/jobs/x")) {
      given()
          .get(path)
          .then()
          .statusCode(404)
          .contentType(ContentType.HTML)
          .body(containsString("<h1>There is no such page</h1>"));
    }
    given()
        .get("/api/v1/nowhere")
        .then()
        .statusCode(404)
        .contentType(equalTo("application/problem+json"));
  }
}
