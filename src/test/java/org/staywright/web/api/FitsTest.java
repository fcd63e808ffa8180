package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.is;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.form.Jobs;
import org.staywright.part.Column;
import org.staywright.part.Family;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.stock.Stock;

@QuarkusTest
@Tag("server")
class FitsTest {

  @Inject CurrentRange current;
  @Inject Stock stock;

  @Test
  void theBooksBalance() throws Exception {
    JsonNode answer = rank(Jobs.lid());
    long rejected =
        StreamSupport.stream(answer.get("rejected").spliterator(), false)
            .mapToLong(JsonNode::longValue)
            .sum();
    assertEquals(2L * current.get().size(), answer.get("considered").longValue());
    assertEquals(
        answer.get("considered").longValue(),
        answer.get("fitsTotal").longValue() + answer.get("nearTotal").longValue() + rejected);
    assertTrue(answer.get("fitsTotal").intValue() > 0, "the sample lid must have an answer");
    assertEquals(1, sum(answer.get("weights")), 1e-12);
  }

  @Test
  void aFitShowsItsFiguresAndCautions() throws Exception {
    JsonNode first = rank(Jobs.lid()).at("/fits/0");
    JsonNode figures = first.get("figures");
    assertEquals(1, first.get("rank").intValue());
    assertEquals("fits", first.get("verdict").textValue());
    assertEquals(80, figures.get("openingAngleDeg").doubleValue(), 1e-9);
    // Mount to mount, closed: hypot(360 − 15, −11 + 65) mm.
    assertEquals(Math.hypot(345, 54), figures.get("lengthClosedMm").doubleValue(), 1e-6);
    assertEquals(
        figures.get("lengthMinMm").doubleValue() - figures.get("compressedMm").doubleValue(),
        figures.get("compressedReserveMm").doubleValue(),
        1e-6);
    assertTrue(figures.get("handOpenWorstN").doubleValue() <= 50);
    assertTrue(figures.get("setPrice").isNumber());
    assertTrue(first.get("cautions").size() > 0);
    assertTrue(first.at("/cautions/0/message").textValue().length() > 20);
  }

  @Test
  void nearPartsSayWhatBlocksThem() throws Exception {
    ObjectNode lid = Jobs.lid();
    lid.withObject("/requirements").put("maxHandForceN", 20);
    JsonNode near = rank(lid).get("near");
    assertTrue(near.size() > 0);
    for (JsonNode row : near) {
      assertEquals("near", row.get("verdict").textValue());
      assertTrue(row.get("blockedBy").size() > 0);
      assertTrue(row.has("clearedBy"));
    }
  }

  @Test
  void whatIsSaidToClearANearPartMakesItAFit() throws Exception {
    ObjectNode lid = Jobs.lid();
    lid.withObject("/requirements").put("maxHandForceN", 20);
    int cleared = 0;
    for (JsonNode row : rank(lid).get("near")) {
      JsonNode change = row.get("clearedBy");
      if (change.isNull()) {
        continue;
      }
      cleared++;
      int count = row.get("count").intValue();
      ObjectNode changed = lid.deepCopy();
      changed.put("limit", 200);
      if (change.get("path").textValue().equals("/springCounts")) {
        count = change.get("to").intValue();
        changed.putArray("springCounts").add(count);
      } else {
        JsonPointer path = JsonPointer.compile(change.get("path").textValue());
        changed
            .withObject(path.head().toString())
            .set(path.last().getMatchingProperty(), change.get("to"));
      }
      String wanted = count + " × " + row.get("partNumber").textValue();
      List<String> fits = new ArrayList<>();
      rank(changed)
          .get("fits")
          .forEach(fit -> fits.add(fit.get("count") + " × " + fit.get("partNumber").textValue()));
      assertTrue(fits.contains(wanted), () -> wanted + " with " + change + " is not in " + fits);
    }
    assertTrue(cleared > 0, "nothing was cleared");
  }

  @Test
  void weightsAreSharedOutReturnedAndDecideTheBalance() throws Exception {
    ObjectNode lid = Jobs.lid();
    lid.putArray("springCounts").add(2);
    ObjectNode weights = lid.putObject("weights").put("price", 3);
    List.of("effort", "margin", "landing", "supply").forEach(term -> weights.put(term, 0));
    JsonNode cheap = rank(lid);
    assertEquals(1, cheap.at("/weights/price").doubleValue());
    assertEquals(0, cheap.at("/weights/effort").doubleValue());
    assertEquals(0, cheap.at("/weights/landing").doubleValue());
    // With price alone the cheapest fit scores the whole hundred, less ten where it is but one.
    assertEquals(100, cheap.at("/fits/0/score").doubleValue(), 1e-9);
    ObjectNode single = lid.deepCopy();
    single.putArray("springCounts").add(1);
    assertEquals(90, rank(single).at("/fits/0/score").doubleValue(), 1e-9);
    JsonNode cost = rank(((ObjectNode) lid.deepCopy()).put("rankBy", "lowest-cost"));
    assertEquals(cost.at("/fits/0/partNumber"), cheap.at("/fits/0/partNumber"));
    lid.withObject("/weights").put("price", 0);
    post("/api/v1/fits", lid)
        .statusCode(422)
        .body("errors.pointer", is(List.of("#/weights/effort")))
        .body("errors.code", is(List.of("no-weight")));
  }

  @Test
  void whyTellsTheRankOfAFitAndTheReasonAgainstTheRest() throws Exception {
    JsonNode third = rank(Jobs.lid()).at("/fits/2");
    JsonNode why =
        json(post("/api/v1/fits/why", why(third.get("partNumber").textValue())).statusCode(200));
    assertEquals(2, why.get("counts").size());
    for (JsonNode count : why.get("counts")) {
      if (count.get("count").intValue() == third.get("count").intValue()) {
        assertEquals("fits", count.get("verdict").textValue());
        assertEquals(3, count.get("rank").intValue());
      }
    }
    JsonNode tiny = json(post("/api/v1/fits/why", why(shortestGasSpring())).statusCode(200));
    JsonNode rejection = tiny.at("/counts/0/rejection");
    assertEquals("too-short-open", rejection.get("code").textValue());
    assertEquals("mm", rejection.get("unit").textValue());
    assertTrue(rejection.get("has").doubleValue() < rejection.get("needed").doubleValue());
    post("/api/v1/fits/why", why("NO-SUCH"))
        .statusCode(422)
        .body("errors.pointer", is(List.of("#/partNumber")));
  }

  private String shortestGasSpring() {
    Range range = current.get();
    double[] extended = range.column(Column.EXTENDED_LENGTH);
    return range.number(
        IntStream.range(0, range.size())
            .filter(row -> range.family(row) == Family.GAS_SPRING)
            .boxed()
            .min(Comparator.comparingDouble(row -> extended[row]))
            .orElseThrow());
  }

  private static ObjectNode why(String partNumber) {
    ObjectNode body = request(partNumber, 1);
    body.remove("count");
    return body;
  }

  @Test
  void theCurveEndsInTheFiguresOfTheFit() throws Exception {
    JsonNode first = rank(Jobs.lid()).at("/fits/0");
    JsonNode curve =
        json(
            post(
                    "/api/v1/fits/curve",
                    request(first.get("partNumber").textValue(), first.get("count").intValue()))
                .statusCode(200)
                .body("travel", hasSize(61))
                .body("travelUnit", is("deg")));
    double most = Double.NEGATIVE_INFINITY;
    for (JsonNode force : curve.get("openN")) {
      most = Math.max(most, force.doubleValue());
    }
    assertEquals(first.at("/figures/handOpenMaxN").doubleValue(), most, 1e-6);
    assertEquals(80, curve.at("/travel/60").doubleValue(), 1e-9);
  }

  @Test
  void aCurveOfWhatCannotServeIsRefused() {
    post("/api/v1/fits/curve", request("NO-SUCH", 1))
        .statusCode(422)
        .body("errors.code", is(List.of("no-such-part")));
    String tiny = current.get().number(shortest());
    post("/api/v1/fits/curve", request(tiny, 1))
        .statusCode(422)
        .body("errors[0].pointer", is("#/partNumber"))
        .body("errors.code", is(List.of("part-rejected")));
    ObjectNode faulty = request("x", 0);
    faulty.withObject("/job/load").put("massKg", 0);
    faulty.withObject("/job/conditions").put("minC", 30);
    post("/api/v1/fits/curve", faulty)
        .statusCode(422)
        .body(
            "errors.pointer.sort()",
            is(List.of("#/count", "#/job/conditions/minC", "#/job/load/massKg", "#/partNumber")));
  }

  @Test
  void anEmptyRangeIsAnAnswer() {
    QuarkusMock.installMockForInstance(
        new CurrentRange(stock) {
          @Override
          public Range get() {
            return Range.of(1, List.of(), List.of());
          }
        },
        current);
    post("/api/v1/fits", Jobs.lid())
        .statusCode(200)
        .body("considered", is(0))
        .body("fits", empty())
        .body("near", empty());
    given().get("/api/v1/parts").then().statusCode(200).body("total", is(0));
  }

  private int shortest() {
    double[] stroke = current.get().column(org.staywright.part.Column.STROKE);
    int row = 0;
    for (int i = 0; i < stroke.length; i++) {
      row = stroke[i] < stroke[row] ? i : row;
    }
    return row;
  }

  private static ObjectNode request(String partNumber, int count) {
    ObjectNode request = JsonNodeFactory.instance.objectNode();
    request.set("job", Jobs.lid());
    return request.put("partNumber", partNumber).put("count", count);
  }

  private static JsonNode rank(ObjectNode job) throws Exception {
    return json(post("/api/v1/fits", job).statusCode(200));
  }

  private static ValidatableResponse post(String path, ObjectNode body) {
    return given().contentType(ContentType.JSON).body(body.toString()).post(path).then();
  }

  private static JsonNode json(ValidatableResponse answer) throws Exception {
    return new ObjectMapper().readTree(answer.extract().asString());
  }

  private static double sum(JsonNode numbers) {
    return StreamSupport.stream(numbers.spliterator(), false)
        .mapToDouble(JsonNode::doubleValue)
        .sum();
  }
}
