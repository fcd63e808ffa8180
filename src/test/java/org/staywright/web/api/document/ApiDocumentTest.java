package org.staywright.web.api.document;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.fit.job.Ask;
import org.staywright.fit.job.Criterion;
import org.staywright.form.Jobs;
import org.staywright.form.job.JobShape;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Shape;
import org.staywright.part.Family;
import org.staywright.web.api.Allowed;
import org.staywright.web.api.MountsTest;
import org.staywright.web.api.ReplacementsTest;
import org.staywright.wording.FigureText;
import org.staywright.wording.Wording;

/** The document is served and true: every route, every field with its bound and default. */
@QuarkusTest
@Tag("server")
class ApiDocumentTest {

  private static final String PANEL =
      """
      {"panel": {"massKg": 12, "nearMm": {"x": 0, "y": 0}, "farMm": {"x": 800, "y": 20}}}\
      """;

  private Described described;

  /** With everything in place that it refers to. */
  private JsonNode document;

  @BeforeEach
  void read() {
    described = Described.served();
    document = described.document();
  }

  @Test
  void namesTheProductAndItsLicence() {
    assertEquals("Staywright", document.at("/info/title").textValue());
    assertEquals("Apache-2.0", document.at("/info/license/name").textValue());
    assertTrue(document.path("servers").isMissingNode());
  }

  @Test
  void hasEveryRouteThatIsServedAndNoOther() {
    Set<String> described = new TreeSet<>();
    document
        .get("paths")
        .properties()
        .forEach(
            path ->
                path.getValue()
                    .fieldNames()
                    .forEachRemaining(m -> described.add(m.toUpperCase() + " " + path.getKey())));
    assertEquals(new TreeSet<>(Allowed.routes()), described);
  }

  @Test
  void hasEveryFieldOfAJobWithBoundAndDefault() {
    JsonNode job = document.at("/components/schemas/job");
    List<String> seen = new ArrayList<>();
    compare(JobShape.JOB, job, "", seen);
    assertTrue(seen.contains("/load/massKg"));
    assertTrue(seen.contains("/load/travelMm"));
    assertTrue(seen.contains("/load/points"));
    assertTrue(seen.contains("/requirements/maxHandForceN"));
    assertEquals(
        0, job.at("/properties/load/oneOf/0/properties/massKg/exclusiveMinimum").intValue());
    assertEquals(2000, job.at("/properties/load/oneOf/0/properties/massKg/maximum").intValue());
    assertEquals(
        50, job.at("/properties/requirements/properties/maxHandForceN/default").intValue());
    assertEquals("balanced", job.at("/properties/rankBy/default").textValue());
  }

  private static void compare(Shape shape, JsonNode schema, String at, List<String> seen) {
    assertFalse(schema.get("additionalProperties").booleanValue(), at);
    Set<String> required = new TreeSet<>();
    schema.path("required").forEach(name -> required.add(name.textValue()));
    for (Field field : shape.fields().values()) {
      if (field.kind() instanceof Kind.Later) {
        continue;
      }
      String place = at + "/" + field.name();
      JsonNode property = schema.at("/properties/" + field.name());
      assertFalse(property.isMissingNode(), place);
      assertEquals(field.required(), required.contains(field.name()), place);
      seen.add(place);
      if (field.kind() instanceof Kind.Many many && many.of() instanceof Shape nested) {
        assertEquals(many.most(), property.get("maxItems").intValue(), place);
        compare(nested, property.get("items"), place, seen);
      } else if (field.kind() instanceof Shape nested) {
        compare(nested, property, place, seen);
      } else if (field.kind() instanceof Kind.Variants variants) {
        assertEquals(variants.shapes().size(), property.get("oneOf").size(), place);
        for (int i = 0; i < variants.shapes().size(); i++) {
          compare(variants.shapes().get(i), property.get("oneOf").get(i), place, seen);
        }
      } else if (field.fallback() != null) {
        assertEquals(field.fallback().toString(), property.get("default").toString(), place);
      }
      if (field.kind() instanceof Kind.Amount amount) {
        String low = amount.bound().lowOpen() ? "exclusiveMinimum" : "minimum";
        assertEquals(amount.bound().low(), property.get(low).doubleValue(), place);
        assertEquals(amount.bound().high(), property.get("maximum").doubleValue(), place);
      }
    }
  }

  /** Of a ranking, a curve, a motion and their like, whatever lies within. */
  @Test
  void tellsTheMeaningOfEveryFieldOfAVerdict() {
    List<String> mute = new ArrayList<>();
    for (String path : List.of("", "/curve", "/motion", "/chance", "/ideal")) {
      mute(described.answer("POST", "/api/v1/fits" + path, 200), "fits" + path, mute);
    }
    mute(document.at("/components/schemas/fit-motion"), "fit-motion", mute);
    assertEquals(List.of(), mute);
    JsonNode requirements = document.at("/components/schemas/job/properties/requirements");
    for (Criterion criterion : Criterion.values()) {
      for (Ask ask : criterion.asks()) {
        String told = requirements.at("/properties/" + ask.field() + "/description").asText();
        String label = FigureText.in(Wording.english()).label(criterion);
        assertTrue(told.contains(label), ask.field() + ": " + told);
      }
    }
  }

  private static void mute(JsonNode schema, String at, List<String> mute) {
    for (var property : schema.path("properties").properties()) {
      String place = at + "." + property.getKey();
      // Loads, points and shares say all by their names.
      if (place.matches(
          "(.*\\.job\\..*)|(.*Shares\\..*)|(fits/ideal\\.(made|balance|room)\\.\\w+)")) {
        continue;
      }
      if (property.getValue().path("description").asText().isBlank()) {
        mute.add(place);
      }
      mute(property.getValue(), place, mute);
      mute(property.getValue().path("items"), place, mute);
    }
  }

  /** What was said of a field that is gone must not stay behind. */
  @Test
  void saysNothingOfFieldsThatThereAreNot() {
    Set<String> there = new TreeSet<>();
    for (var each : document.at("/components/schemas").properties()) {
      String object = AnswerSchemas.object(each.getKey());
      each.getValue()
          .path("properties")
          .fieldNames()
          .forEachRemaining(
              field -> {
                there.add(object + '.' + field);
                // A saved job is a job.
                there.add(object.replaceFirst("^.*?-", "") + '.' + field);
              });
    }
    Sent.QUERIES
        .values()
        .forEach(query -> query.fields().keySet().forEach(f -> there.add(query.name() + '.' + f)));
    Set<String> said =
        ResourceBundle.getBundle("wording.api", Locale.ENGLISH).keySet().stream()
            .filter(key -> key.startsWith("api.about."))
            .map(key -> key.substring("api.about.".length()))
            .collect(Collectors.toCollection(TreeSet::new));
    said.removeAll(there);
    assertEquals(Set.of(), said);
  }

  @Test
  void describesTheParametersOfASearch() {
    JsonNode parameters = document.at("/paths/~1api~1v1~1parts/get/parameters");
    JsonNode size =
        StreamSupport.stream(parameters.spliterator(), false)
            .filter(parameter -> parameter.get("name").textValue().equals("size"))
            .findFirst()
            .orElseThrow();
    assertEquals(200, size.at("/schema/maximum").intValue());
    assertEquals(50, size.at("/schema/default").intValue());
    assertEquals(15, parameters.size());
  }

  @Test
  void everyAnswerIsAsDescribed() {
    String part = find("/api/v1/parts?size=3", "").at("/items/0/partNumber").textValue();
    JsonNode fittings = find("/api/v1/fittings?size=200", "");
    find("/api/v1/fittings/{partNumber}", fittings.at("/items/0/partNumber").textValue());
    find("/api/v1/parts/{partNumber}", part);
    find("/api/v1/parts/{partNumber}/curve", part);
    String column =
        find("/api/v1/parts?family=seat-column&size=1", "").at("/items/0/partNumber").textValue();
    find("/api/v1/parts/{partNumber}/locked-curve?atCompressionMm=20", column);
    for (Family family : Family.values()) {
      find("/api/v1/parts?size=1&family=" + family.code(), "");
    }
    find("/api/v1/jobs", "");
    JsonNode fits = sent("/api/v1/fits", Jobs.LID, 200);
    String request =
        "{\"job\": %s, \"partNumber\": \"%s\", \"count\": %d}"
            .formatted(
                Jobs.LID,
                fits.at("/fits/0/partNumber").textValue(),
                fits.at("/fits/0/count").intValue());
    sent("/api/v1/fits/curve", request, 200);
    sent("/api/v1/fits/motion", request, 200);
    sent("/api/v1/fits/chance", request, 200);
    sent("/api/v1/fits/why", request.replaceFirst(", \"count.*", "}"), 200);
    sent("/api/v1/fits/ideal", Jobs.LID, 200);
    JsonNode found = sent("/api/v1/mounts", MountsTest.LID, 200);
    assertTrue(found.at("/arrangements").size() >= 3, found.toString());
    sent("/api/v1/centre-of-mass", PANEL, 200);
    sent("/api/v1/jobs", Jobs.LID, 201);
    for (String job : List.of(Jobs.LIFT, Jobs.PROFILE)) {
      JsonNode ranked = sent("/api/v1/fits", job, 200);
      assertTrue(ranked.at("/fits/0/figures").has("travelMm"), ranked.toString());
      assertFalse(ranked.at("/fits/0/figures").has("openingAngleDeg"));
      sent("/api/v1/jobs", job, 201);
    }
    sent("/api/v1/replacements", ReplacementsTest.BODY, 200);
    sent("/api/v1/fits", "{\"load\": {\"massKg\": [-1]}}", 422);
    find("/api/v1/parts?size=0", "", 400);
  }

  private JsonNode find(String address, String name) {
    return find(address, name, 200);
  }

  private JsonNode find(String address, String name, int status) {
    String path = address.replaceFirst("\\?.*", "");
    Response given = given().get(address.replaceFirst("\\{\\w+}", name));
    return conforming(given, "get", path, status);
  }

  private JsonNode sent(String path, String body, int status) {
    Response given = given().contentType(ContentType.JSON).body(body).post(path);
    return conforming(given, "post", path, status);
  }

  private JsonNode conforming(Response given, String method, String path, int status) {
    assertEquals(status, given.statusCode(), given::asString);
    return described.conforming(given, method, path);
  }
}
