package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.staywright.form.Jobs;
import org.staywright.web.start.Way;

/** What a ranking answers holds together, and with its curves: nothing is said beyond them. */
@QuarkusTest
@Tag("server")
class FourCornersTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  /** What is built or preferred; nobody can give way on the rest. */
  private static final Set<String> MAY_TURN =
      Set.of(
          "/mounts/frameMm/x",
          "/mounts/frameMm/y",
          "/mounts/movingMm/x",
          "/mounts/movingMm/y",
          "/load/openingAngleDeg",
          "/load/travelMm",
          "/springCounts",
          "/fittings/rodEnd",
          "/fittings/tubeEnd",
          "/requirements/maxHandForceN",
          "/requirements/minHoldRatio",
          "/requirements/compressedReserveMm",
          "/requirements/extendedReserveMm");

  /** Lids, a counter let down, a guard that leans, a lift and a table of forces. */
  static Stream<ObjectNode> jobs() {
    ObjectNode tilted = Jobs.lid();
    tilted.withObject("/load").put("tiltDeg", -10).put("openingAngleDeg", 100);
    return Stream.concat(
        Stream.of(Way.values()).map(way -> (ObjectNode) JSON.valueToTree(way.job())),
        Stream.of(Jobs.lid(), tilted, Jobs.tree(Jobs.LIFT), Jobs.tree(Jobs.PROFILE)));
  }

  private static ObjectNode withRequirement(ObjectNode job, String field, double value) {
    job.withObject("/requirements").put(field, value);
    return job;
  }

  private static JsonNode post(String address, ObjectNode body) {
    String answer =
        given()
            .contentType(ContentType.JSON)
            .body(body.toString())
            .post("/api/v1" + address)
            .then()
            .statusCode(200)
            .extract()
            .asString();
    try {
      return JSON.readTree(answer);
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static List<JsonNode> list(JsonNode nodes) {
    return StreamSupport.stream(nodes.spliterator(), false).toList();
  }

  /** A few of both lists. */
  private static List<JsonNode> some(JsonNode answer) {
    return Stream.of("fits", "near")
        .flatMap(name -> list(answer.get(name)).stream().limit(3))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void whatIsWorstIsTheGreatestOfTheCurvesWhereItIsSaidToBe(ObjectNode job) {
    List<JsonNode> rows = some(post("/fits", job));
    assertFalse(rows.isEmpty());
    for (JsonNode row : rows) {
      ObjectNode asked = JsonNodeFactory.instance.objectNode();
      asked.set("job", job);
      asked.set("partNumber", row.get("partNumber"));
      asked.set("count", row.get("count"));
      JsonNode curve = post("/fits/curve", asked);
      assertEquals(4, curve.get("corners").size());
      greatest(curve, "openN", row.at("/figures/handOpenWorstN"), row.at("/worst/handOpen"));
      greatest(curve, "closeN", row.at("/figures/handCloseWorstN"), row.at("/worst/handClose"));
      double nominal =
          list(curve.get("openN")).stream().mapToDouble(JsonNode::doubleValue).max().orElseThrow();
      assertEquals(nominal, row.at("/figures/handOpenMaxN").doubleValue(), 1e-6);
    }
  }

  private static void greatest(JsonNode curve, String way, JsonNode figure, JsonNode worst) {
    double most = Double.NEGATIVE_INFINITY;
    double there = Double.NaN;
    for (JsonNode corner : curve.get("corners")) {
      boolean named =
          corner.get("spring").equals(worst.get("spring"))
              && corner.get("load").equals(worst.get("load"));
      for (int i = 0; i < 61; i++) {
        double force = corner.get(way).get(i).doubleValue();
        most = Math.max(most, force);
        double apart = curve.at("/travel/" + i).doubleValue() - worst.get("travel").doubleValue();
        there = named && Math.abs(apart) < 1e-6 ? force : there;
      }
    }
    assertEquals(figure.doubleValue(), most, 1e-6 * Math.max(1, Math.abs(most)), way);
    assertEquals(most, there, 1e-6 * Math.max(1, Math.abs(most)), () -> way + " " + worst);
    assertTrue(worst.get("case").isNull());
  }

  @Test
  void theScoreIsMadeOfTheFiguresAndWeightsBesideIt() {
    ObjectNode lid = Jobs.lid();
    lid.put("limit", 200);
    lid.putObject("weights").put("effort", 2).put("landing", 3);
    JsonNode answer = post("/fits", lid);
    List<JsonNode> fits = list(answer.get("fits"));
    assertEquals(answer.get("fitsTotal").intValue(), fits.size(), "all, to know the cheapest");
    double cheapest = fits.stream().mapToDouble(fit -> at(fit, "setPrice")).min().orElseThrow();
    int alone = 0;
    int damped = 0;
    for (JsonNode fit : fits) {
      double worst = Math.max(at(fit, "handOpenWorstN"), at(fit, "handCloseWorstN"));
      JsonNode ratio = fit.at("/figures/holdRatioOpen");
      double margin =
          Stream.of(
                  (50 - worst) / 50,
                  ratio.isNull() ? Double.POSITIVE_INFINITY : (ratio.doubleValue() - 1.1) / 1.1,
                  at(fit, "holdOpenN") / 20,
                  (at(fit, "compressedReserveMm") - 5) / 10,
                  (at(fit, "extendedReserveMm") - 4) / 10)
              .min(Double::compare)
              .orElseThrow();
      JsonNode speed = fit.at("/figures/endSpeedMmPerS");
      double landing = speed.isNull() ? 0 : 1 - Math.min(1, speed.doubleValue() / 1000);
      boolean single = fit.get("count").intValue() == 1;
      double score =
          100
                  * (weight(answer, "effort") * (1 - Math.min(1, at(fit, "handRmsN") / 50))
                      + weight(answer, "margin") * Math.min(1, Math.max(0, margin) / 0.5)
                      + weight(answer, "landing") * landing
                      + weight(answer, "price") * cheapest / at(fit, "setPrice")
                      + weight(answer, "supply") / (1 + at(fit, "leadTimeDays") / 7))
              - (single ? 10 : 0);
      assertEquals(score, fit.get("score").doubleValue(), 1e-5, fit.get("partNumber").asText());
      alone += single ? 1 : 0;
      damped += landing > 0 ? 1 : 0;
    }
    assertTrue(alone > 0 && damped > 0, alone + " alone, " + damped + " damped");
  }

  private static double at(JsonNode fit, String figure) {
    return fit.get("figures").get(figure).doubleValue();
  }

  private static double weight(JsonNode answer, String term) {
    return answer.get("weights").get(term).doubleValue();
  }

  @Test
  void whatIsNearComesByWhatItMisses() {
    ObjectNode lid = Jobs.lid();
    withRequirement(lid, "maxHandForceN", 25).put("limit", 200);
    int fewest = 1;
    double smallest = 0;
    for (JsonNode near : post("/fits", lid).get("near")) {
      int count = near.get("blockedBy").size();
      double largest = 0;
      for (JsonNode blocker : near.get("blockedBy")) {
        double needed = blocker.get("needed").doubleValue();
        assertTrue(needed > 0, "a limit to measure by: " + blocker);
        largest = Math.max(largest, Math.abs(blocker.get("has").doubleValue() - needed) / needed);
      }
      assertTrue(count > fewest || count == fewest && largest >= smallest - 1e-9, near::toString);
      fewest = count;
      smallest = largest;
    }
    assertTrue(smallest > 0);
  }

  @Test
  void whatClearsGivesUpNeitherAHoldNorAShutStay() {
    int cleared = 0;
    for (ObjectNode job : jobs().toList()) {
      ObjectNode hard = withRequirement(job, "minHoldRatio", 1.4);
      hard.withObject("/requirements").remove("minHoldOpenN");
      for (JsonNode near : post("/fits", hard).get("near")) {
        JsonNode change = near.get("clearedBy");
        if (change.isNull()) {
          continue;
        }
        cleared++;
        String path = change.get("path").textValue();
        assertTrue(MAY_TURN.contains(path), path);
        boolean ratio = path.endsWith("minHoldRatio");
        assertTrue(!ratio || change.get("to").doubleValue() >= 1.05, change::toString);
        assertTrue(near.get("holdsFrom").isNull(), "told only where nothing clears it");
      }
    }
    assertTrue(cleared > 0);
  }

  @Test
  void fromWhereOnAPartIsSaidToHoldItFits() {
    ObjectNode held = withRequirement(Jobs.tree(Jobs.PROFILE), "minHoldOpenN", 40);
    ObjectNode cold = held.deepCopy();
    cold.withObject("/conditions").put("serviceYears", 0).put("minC", -10);
    ObjectNode past = withRequirement(Jobs.lid(), "minHoldOpenN", 20);
    past.withObject("/load").put("openingAngleDeg", 100).put("tiltDeg", -8);
    List<String> paths = new ArrayList<>();
    for (ObjectNode job : new ObjectNode[] {held, cold, past}) {
      for (JsonNode near : post("/fits", job).get("near")) {
        JsonNode from = near.get("holdsFrom");
        if (from.isNull() || paths.contains(from.get("path").textValue())) {
          continue;
        }
        paths.add(from.get("path").textValue());
        ObjectNode then = job.deepCopy().put("limit", 200);
        JsonPointer path = JsonPointer.compile(paths.get(paths.size() - 1));
        assertEquals(then.at(path).decimalValue(), from.get("from").decimalValue());
        ((ObjectNode) then.at(path.head())).set(path.last().getMatchingProperty(), from.get("to"));
        assertTrue(
            list(post("/fits/why", why(then, near.get("partNumber"))).get("counts")).stream()
                .filter(count -> count.get("count").equals(near.get("count")))
                .allMatch(count -> count.get("verdict").textValue().equals("fits")),
            () -> near.get("partNumber") + " " + from);
      }
    }
    assertEquals(List.of("/conditions/serviceYears", "/conditions/minC", "/load/tiltDeg"), paths);
  }

  private static ObjectNode why(ObjectNode job, JsonNode partNumber) {
    ObjectNode asked = JsonNodeFactory.instance.objectNode();
    asked.set("job", job);
    asked.set("partNumber", partNumber);
    return asked;
  }
}
