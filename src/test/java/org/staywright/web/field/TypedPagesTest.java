package org.staywright.web.field;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;

import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.web.shell.PagesTest;

/** Numbers in the forms of the pages as people type them. */
@QuarkusTest
@Tag("server")
class TypedPagesTest {

  @Test
  void aFieldShowsTheValueAndUnitUnderstood() {
    given()
        .spec(PagesTest.lid())
        .queryParam("load.lightestMassKg", "35 lb")
        .queryParam("mounts.lateralOffsetMm", "1/2 in")
        .get("/flap")
        .then()
        .statusCode(200)
        .body(containsString("35 lb = 15.87573295\u00a0kg"))
        .body(containsString("name=\"load.lightestMassKg\" value=\"15.87573295\""))
        .body(containsString("1/2 in = 12.7\u00a0mm"))
        .body(containsString("name=\"mounts.lateralOffsetMm\" value=\"12.7\""));
  }

  @Test
  void saysWhileTypingHowItIsUnderstood() {
    given()
        .spec(PagesTest.lid())
        .queryParam("requirements.extendedReserveMm", "0,5 cm")
        .queryParam("requirements.maxHandForceN", "5 kgf + 1 N")
        .get("/flap/live")
        .then()
        .statusCode(200)
        .body(
            containsString(
                "id=\"f-requirements-extendedReserveMm-read\" hx-swap-oob=\"true\">0,5 cm = 5\u00a0mm<"))
        .body(containsString("5 kgf + 1 N = 50.03325\u00a0N"));
  }

  @Test
  void refusesAnotherKindOfQuantityBesideItsField() {
    given()
        .spec(PagesTest.lid())
        .queryParam("mounts.lateralOffsetMm", "35 lb")
        .get("/flap")
        .then()
        .statusCode(200)
        .body(containsString("name=\"mounts.lateralOffsetMm\" value=\"35 lb\""))
        .body(containsString("“35 lb”, which is another kind of quantity. Give it in one of: mm"));
  }

  @Test
  void asksWhatACommaMeans() {
    given()
        .spec(PagesTest.lid())
        .queryParam("mounts.lateralOffsetMm", "1,234")
        .get("/flap")
        .then()
        .body(containsString("can be read in two ways. Write one of: 1234 | 1.234"));
  }

  @Test
  void sizesOnASpringMayBeTypedInInches() {
    given()
        .queryParam("rodDiameterMm", "5/16 in")
        .queryParam("forceN", "90 lbf")
        .get("/parts")
        .then()
        .statusCode(200)
        .body(containsString("value=\"7.9375\""))
        .body(containsString("value=\"400.339945373445\""));
    given()
        .queryParam("extendedLengthMm.value", "15 in")
        .queryParam("printedForce.value", "90 lb")
        .get("/replace")
        .then()
        .statusCode(200)
        .body(containsString("value=\"381\""))
        .body(not(containsString("another kind of quantity")));
  }

  @Test
  void theInterfaceTakesPlainNumbersOnly() {
    given().queryParam("rodDiameterMm", "5/16 in").get("/api/v1/parts").then().statusCode(400);
  }
}
