package org.staywright.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.form.job.JobShape;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.HingedFlap;
import org.staywright.unit.Units;
import org.staywright.web.field.FormFields;
import org.staywright.web.field.Input;
import org.staywright.web.field.Typed;
import org.staywright.web.shell.PagesTest;
import org.staywright.wording.Wording;

/** The pages in inch-pound units. */
@QuarkusTest
@Tag("server")
class InchPoundPagesTest {

  private static final Pattern FIELD =
      Pattern.compile(
          "<input(?: id=\"[^\"]*\")? (?:type=\"hidden\" )?name=\"([^\"]+)\" value=\"([^\"]*)\"");

  @Test
  void theBenchShowsInchesPoundsAndFahrenheit() {
    Response page = given().spec(PagesTest.lid()).cookie("units", "inch-pound").get("/flap");
    page.then()
        .statusCode(200)
        .body(containsString("name=\"load.massKg\" value=\"39.68\""))
        .body(containsString("id=\"f-load-massKg-unit\">lb<"))
        .body(containsString("name=\"mounts.frameMm.x\" value=\"0.5906\""))
        .body(containsString("name=\"conditions.nominalC\" value=\"68\""))
        .body(containsString("\u00a0lbf"))
        .body(not(containsString("\u00a0N<")))
        .body(not(containsString("\u00a0mm")));
    // 1 lbf is 4.448 N: 0.45359237 kg at 9.80665 m/s² (the yard and pound agreement of 1959, and
    // standard gravity).
    PageCharts metric = PageCharts.of(given().spec(PagesTest.lid()).get("/flap").asString());
    String hand = "data-label=\"Hand open / close, at worst, lbf\">([\\d.]+) / ([\\d.]+)<";
    Matcher told = Pattern.compile(hand).matcher(page.asString());
    assertTrue(told.find(), hand);
    double open = metric.most("opening, most in any corner") / 4.4482216152605;
    double close = metric.most("closing, most in any corner") / 4.4482216152605;
    assertEquals(open, Double.parseDouble(told.group(1)), 0.1, "never less: rounded up");
    assertEquals(close, Double.parseDouble(told.group(2)), 0.1, "never less: rounded up");
    assertTrue(Double.parseDouble(told.group(1)) > open - 0.002, told.group(1) + " of " + open);
    assertTrue(Double.parseDouble(told.group(2)) > close - 0.002, told.group(2) + " of " + close);
  }

  /** Every page that shows figures, the first part of the range on its own. */
  @ParameterizedTest
  @ValueSource(strings = {"/flap", "/lift", "/profile", "/parts", "/replace?rodDiameterMm.value=8"})
  void noPageKeepsMetricFigures(String path) {
    given()
        .cookie("units", "inch-pound")
        .get(path)
        .then()
        .statusCode(200)
        .body(not(containsString("\u00a0mm")))
        .body(not(containsString("\u00a0N ")))
        .body(not(containsString("\u00a0kg")))
        .body(not(containsString("\u00a0°C")));
  }

  @ParameterizedTest
  @CsvSource({"en", "de"})
  void aFormSentBackUnchangedMeansTheSameJob(String language) {
    Response page =
        given()
            .spec(PagesTest.lid())
            .queryParam("requirements.maxHandForceN", "47.3")
            .queryParam("mounts.lateralOffsetMm", "12.345678")
            .cookie("units", "inch-pound")
            .cookie("lang", language)
            .get("/flap");
    String html = page.asString();
    int from = html.indexOf("<form id=\"job\"");
    Map<String, List<String>> sent = new LinkedHashMap<>();
    Matcher field = FIELD.matcher(html.substring(from, html.indexOf("</form>", from)));
    while (field.find()) {
      sent.computeIfAbsent(field.group(1), n -> new ArrayList<>()).add(field.group(2));
    }
    assertTrue(sent.get("shown").size() > 20, sent.toString());
    Map<String, List<String>> meant = Typed.of(JobShape.JOB, sent, wording(language)).values();
    assertEquals(List.of("18"), meant.get("load.massKg"));
    assertEquals(List.of("360"), meant.get("mounts.movingMm.x"));
    assertEquals(List.of("-11"), meant.get("mounts.movingMm.y"));
    assertEquals(List.of("47.3"), meant.get("requirements.maxHandForceN"));
    assertEquals(List.of("12.345678"), meant.get("mounts.lateralOffsetMm"));
    assertEquals(List.of("20"), meant.get("conditions.nominalC"));
  }

  @Test
  void whatIsTypedAnewIsReadInTheUnitThatStoodThere() {
    Map<String, List<String>> sent =
        Map.of(
            "load.massKg", List.of("40"),
            "conditions.minC", List.of("-4"),
            "mounts.lateralOffsetMm", List.of("10 mm"),
            "shown",
                List.of(
                    "load.massKg|lb|39.68|18",
                    "conditions.minC|°F|-22|-30",
                    "mounts.lateralOffsetMm|in|0|0"));
    Map<String, List<String>> meant = Typed.of(JobShape.JOB, sent, wording("en")).values();
    assertEquals(List.of("18.1436948"), meant.get("load.massKg"));
    assertEquals(List.of("-20"), meant.get("conditions.minC"));
    assertEquals(List.of("10"), meant.get("mounts.lateralOffsetMm"));
  }

  /** Whatever number a job has, its field shown in inches and posted back gives the same double. */
  @Test
  void everyNumberComesBackAsItWas() {
    long seed = 91_125;
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      double value = Math.round(random.nextDouble() * 1e12) / Math.pow(10, random.nextInt(12));
      String canonical = Double.toString(value % 10_000);
      Map<String, List<String>> values =
          Map.of("mounts.frameMm.x", List.of(canonical), "load.massKg", List.of(canonical));
      for (String language : List.of("en", "de")) {
        Wording wording = wording(language);
        FormFields form = new FormFields(wording, JobShape.of(HingedFlap.CODE), values, List.of());
        for (String name : values.keySet()) {
          Input input = form.of(name);
          Map<String, List<String>> sent =
              Map.of(name, List.of(input.value()), "shown", input.shown());
          String back = Typed.of(JobShape.JOB, sent, wording).values().get(name).get(0);
          assertEquals(
              Double.parseDouble(canonical), Double.parseDouble(back), "seed " + seed + " " + name);
        }
      }
    }
  }

  @Test
  void aTableStandsInTheUnitsThatAreShown() {
    String text = "lengthMm,forceN\n300,250\n412.5,180.75\n500.123456789,12";
    FormFields form =
        new FormFields(
            wording("en"),
            JobShape.of(ForceProfile.CODE),
            Map.of("load.points", List.of(text)),
            List.of());
    Input points = form.of("load.points");
    assertTrue(
        points.value().startsWith("lengthMm,forceN\n11.81102362,56.2022358"), points.value());
    assertTrue(points.value().contains("500.123456789mm,"), points.value());
    Map<String, List<String>> sent =
        Map.of(
            "load.points",
            List.of(points.value().replace("\n", "\r\n") + "\r\n20 1.5"),
            "shown",
            points.shown());
    String back = Typed.of(JobShape.JOB, sent, wording("en")).values().get("load.points").get(0);
    assertEquals(text.replace("500.123456789", "500.123456789mm") + "\n508,6.67233242", back);
  }

  @Test
  void aFaultStandsInTheUnitsThatAreShown() {
    given()
        .queryParam("load.type", "hinged-flap")
        .queryParam("load.massKg", "9999 lb")
        .cookie("units", "inch-pound")
        .get("/flap")
        .then()
        .body(allOf(containsString("≤ 4409.25 lb"), not(containsString("2000 kg"))));
  }

  @Test
  void theInterfaceStaysMetric() {
    given()
        .cookie("units", "inch-pound")
        .get("/api/v1/parts?size=1")
        .then()
        .statusCode(200)
        .body(containsString(" mm, "))
        .body(not(containsString(" lbf")));
  }

  private static Wording wording(String language) {
    return Wording.of(java.util.Locale.forLanguageTag(language), Units.INCH_POUND);
  }
}
