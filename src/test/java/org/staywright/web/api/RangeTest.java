package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.gas.BeyondEquation;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.spring.ForceLaw;
import org.staywright.spring.GasSpring;
import org.staywright.stock.CurrentRange;

@QuarkusTest
@Tag("server")
class RangeTest {

  @Inject CurrentRange current;

  @Test
  void searchesByBoundsThatAreInclusive() {
    given()
        .get(
            "/api/v1/parts?rodDiameterMm=8&forceMinN=250&forceMaxN=400&strokeMinMm=100&strokeMaxMm=160")
        .then()
        .statusCode(200)
        .body("total", greaterThan(0))
        .body("items.rodDiameterMm", everyItem(is(8)))
        .body("items.forceClassN.min()", is(250))
        .body("items.forceClassN.max()", is(400))
        .body("items.strokeMm.min()", is(100))
        .body("items.strokeMm.max()", is(160));
  }

  @Test
  void pagesCoverTheRangeOnce() {
    int total = get("/api/v1/parts?finish=stainless&rodDiameterMm=10").getInt("total");
    int seen = 0;
    String last = "";
    for (int page = 0; ; page++) {
      JsonPath answer =
          get("/api/v1/parts?finish=stainless&rodDiameterMm=10&size=200&page=" + page);
      List<String> numbers = answer.getList("items.partNumber");
      if (numbers.isEmpty()) {
        break;
      }
      assertTrue(last.compareTo(numbers.get(0)) < 0);
      last = numbers.get(numbers.size() - 1);
      seen += numbers.size();
    }
    assertEquals(total, seen);
    assertTrue(total > 0);
  }

  @Test
  void sortsFallingByForceAndTakesTextInAnyCase() {
    JsonPath answer = get("/api/v1/parts?sort=-force&q=STAINLESS&size=200");
    List<Integer> forces = answer.getList("items.forceClassN");
    assertEquals(forces.stream().sorted(Comparator.reverseOrder()).toList(), forces);
    assertTrue(forces.size() > 1);
  }

  @Test
  void aPartIsWhatTheRangeSays() {
    Part part = part();
    given()
        .get("/api/v1/parts/" + part.number())
        .then()
        .statusCode(200)
        .body("partNumber", is(part.number()))
        .body("family", is("gas-spring"))
        .body("forceClassN", equalTo((int) part.spring().force()))
        .body("strokeMm", equalTo((int) Math.round(part.spring().stroke() * 1000)))
        .body("price.breaks", hasSize(part.offer().price().breaks().size()))
        .body("stock", is(part.offer().stock()))
        .body("derived", hasSize(part.derived().size()));
  }

  @Test
  void aCurveThatLeavesTheEquationOfStateSaysWhatDidAndLaysItToNoField() {
    Range range = current.get();
    String number =
        IntStream.range(0, range.size())
            .mapToObj(range::part)
            .filter(part -> part.spring() instanceof GasSpring && leavesTheEquation(part))
            .findFirst()
            .orElseThrow()
            .number();
    given()
        .get("/api/v1/parts/" + number + "/curve?forceFactor=2&temperatureC=150")
        .then()
        .statusCode(422)
        .contentType("application/problem+json")
        .body("detail", containsString("Lower forceFactor"))
        .body("beyond.quantity", is("pressure"))
        .body("beyond.bound", is("≥ 0 and ≤ 1000 bar"))
        .body("errors", nullValue());
  }

  /** Slammed from end to end, filled to twice its force and hot. */
  private static boolean leavesTheEquation(Part part) {
    try {
      part.spring().law(2, 1).fast(0, part.spring().stroke(), 423.15);
      return false;
    } catch (BeyondEquation beyond) {
      return beyond.quantity() == BeyondEquation.Quantity.PRESSURE;
    }
  }

  @Test
  void aCurveIsTheGasSpringsOwn() {
    Part part = part();
    JsonPath curve =
        get(
            "/api/v1/parts/"
                + part.number()
                + "/curve?temperatureC=-10&samples=5&forceFactor=1.1&gasFraction=0.9");
    ForceLaw spring = part.spring().law(1.1, 0.9);
    double stroke = part.spring().stroke();
    double[] x = {0, stroke / 4, stroke / 2, stroke * 3 / 4, stroke};
    assertArrayEquals(column(x, v -> v * 1000), doubles(curve, "compressionMm"), 1e-6);
    assertNear(column(x, v -> spring.force(v, 263.15)), doubles(curve, "gasForceN"));
    assertNear(column(x, v -> spring.extending(v, 263.15)), doubles(curve, "extendingN"));
    assertNear(column(x, v -> spring.compressing(v, 263.15)), doubles(curve, "compressingN"));
    assertNear(column(x, v -> spring.pressure(v, 263.15) / 1e5), doubles(curve, "pressureBar"));
    double friction = part.spring().friction(263.15);
    assertNear(
        column(x, v -> spring.fast(0, v, 263.15).force(v) + friction),
        doubles(curve, "fastCompressingN"));
    assertEquals(part.spring().progression(), curve.getDouble("progression"), 1e-7);
  }

  @Test
  void fittingsAreSearchedByTypeAndThread() {
    given()
        .get("/api/v1/fittings?type=ball-socket&thread=M8")
        .then()
        .statusCode(200)
        .body("total", greaterThan(0))
        .body("items.type", everyItem(is("ball-socket")))
        .body("items.thread", everyItem(is("M8")))
        .body("items.ballDiameterMm", everyItem(is(13)));
    String number = current.get().fittings().get(0).number();
    given().get("/api/v1/fittings/" + number).then().statusCode(200).body("partNumber", is(number));
  }

  @Test
  void aDatasheetIsAPdf() {
    byte[] pdf =
        given()
            .get("/api/v1/parts/" + part().number() + "/datasheet.pdf")
            .then()
            .statusCode(200)
            .contentType("application/pdf")
            .extract()
            .asByteArray();
    assertEquals("%PDF-", new String(pdf, 0, 5, java.nio.charset.StandardCharsets.US_ASCII));
  }

  private Part part() {
    Range range = current.get();
    return IntStream.range(range.size() / 2, range.size())
        .mapToObj(range::part)
        .filter(part -> part.family() == Family.GAS_SPRING)
        .findFirst()
        .orElseThrow();
  }

  private static JsonPath get(String address) {
    return given().get(address).then().statusCode(200).extract().jsonPath();
  }

  private static double[] column(double[] x, java.util.function.DoubleUnaryOperator of) {
    return java.util.Arrays.stream(x).map(of).toArray();
  }

  private static double[] doubles(JsonPath json, String name) {
    return json.<Number>getList(name).stream().mapToDouble(Number::doubleValue).toArray();
  }

  /** To seven significant figures. */
  private static void assertNear(double[] expected, double[] actual) {
    assertEquals(expected.length, actual.length);
    for (int i = 0; i < expected.length; i++) {
      assertEquals(expected[i], actual[i], 1e-7 * Math.abs(expected[i]));
    }
  }
}
