package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.is;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.spring.LockedSpring;
import org.staywright.spring.Locking;
import org.staywright.spring.LockingSpring;
import org.staywright.stock.CurrentRange;

@QuarkusTest
@Tag("server")
class LockedCurveTest {

  @Inject CurrentRange current;

  @Test
  void isTheLockedSpringsOwn() {
    Part part = part(Family.SEAT_COLUMN, spring -> spring.stroke() > 0.1);
    JsonPath curve =
        asked(part, "atCompressionMm=40&temperatureC=-5&deflectionMm=8&samples=5")
            .statusCode(200)
            .extract()
            .jsonPath();
    LockedSpring locked = ((LockingSpring) part.spring()).locked(0.04, 268.15);
    List<Number> slow = curve.getList("slowN");
    List<Number> fast = curve.getList("fastN");
    List<Number> deflection = curve.getList("deflectionMm");
    for (int i = 0; i < 5; i++) {
      assertEquals(2 * i, deflection.get(i).doubleValue(), 1e-9);
      assertEquals(locked.slow(0.002 * i), slow.get(i).doubleValue(), 1e-4 + 1e-6 * 500);
      assertEquals(locked.fast(0.002 * i), fast.get(i).doubleValue(), 1e-3 + 1e-6 * 500);
    }
    double stiffness = curve.getDouble("stiffnessNPerMm");
    assertEquals(locked.stiffness() / 1000, stiffness, 1e-6 * stiffness);
  }

  @Test
  void takesTenMillimetresInTwentyOneSamplesWhereNothingIsSaid() {
    Part part = part(Family.SEAT_COLUMN, spring -> spring.stroke() > 0.1);
    JsonPath curve = asked(part, "atCompressionMm=0").statusCode(200).extract().jsonPath();
    assertEquals(21, curve.getList("slowN").size());
    assertEquals(10, curve.getDouble("deflectionMm[20]"), 0);
  }

  @Test
  void refusesAPlaceOrADeflectionOutsideTheStroke() {
    Part part = part(Family.SEAT_COLUMN, spring -> Math.abs(spring.stroke() - 0.1) < 1e-9);
    refused(part, "atCompressionMm=100.1", "atCompressionMm", "out-of-bounds")
        .body("errors[0].value", is(100.1f));
    refused(part, "atCompressionMm=95&deflectionMm=6", "deflectionMm", "locked-stroke")
        .body("errors[0].bound", containsString("≤ 5 mm"));
  }

  @Test
  void refusesWhatPassesEightHundredBarAndWhatTheLockDoesNotHold() {
    Part rigid =
        part(
            Family.LOCKING_STRUT,
            spring -> spring.locking() == Locking.RIGID_PUSH && spring.stroke() > 0.09);
    given()
        .get(address(rigid, "atCompressionMm=50&deflectionMm=20"))
        .then()
        .statusCode(422)
        .body("errors[0].parameter", is("deflectionMm"))
        .body("errors[0].code", is("locked-gas"));
    LockingSpring spring = (LockingSpring) rigid.spring();
    double mm = 1000 * 1.01 * spring.lockForce() / spring.locked(0.05, 293.15).stiffness();
    refused(rigid, "atCompressionMm=50&deflectionMm=" + mm, "deflectionMm", "locked-force");
  }

  @Test
  void refusesPartsThatDoNotLock() {
    Range range = current.get();
    Part plain =
        IntStream.range(0, range.size())
            .mapToObj(range::part)
            .filter(part -> part.family() == Family.GAS_SPRING)
            .findFirst()
            .orElseThrow();
    refused(plain, "atCompressionMm=10", "partNumber", "does-not-lock")
        .body("errors[0].detail", containsString("seat-column"));
  }

  @Test
  void namesParametersThatCannotBeRead() {
    Part part = part(Family.SEAT_COLUMN, spring -> true);
    for (String bad : List.of("", "atCompressionMm=-1", "atCompressionMm=x", "at=3")) {
      asked(part, bad).statusCode(400);
    }
    asked(part, "atCompressionMm=10&deflectionMm=0").statusCode(400);
    asked(part, "atCompressionMm=10&samples=1").statusCode(400);
    given().get("/api/v1/parts/NOT-THERE/locked-curve?atCompressionMm=1").then().statusCode(404);
  }

  private static ValidatableResponse refused(
      Part part, String query, String parameter, String code) {
    return asked(part, query)
        .statusCode(422)
        .body("errors[0].parameter", is(parameter))
        .body("errors[0].code", is(code));
  }

  private static ValidatableResponse asked(Part part, String query) {
    return given().get(address(part, query)).then();
  }

  private static String address(Part part, String query) {
    return "/api/v1/parts/"
        + part.number()
        + "/locked-curve"
        + (query.isEmpty() ? "" : "?" + query);
  }

  private Part part(Family family, Predicate<LockingSpring> wanted) {
    Range range = current.get();
    return IntStream.range(0, range.size())
        .filter(row -> range.family(row) == family)
        .mapToObj(range::part)
        .filter(part -> wanted.test((LockingSpring) part.spring()))
        .findFirst()
        .orElseThrow();
  }
}
