package org.staywright.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;

import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Test;

@QuarkusTest
class InTimePageTest {

  @Test
  void aFitTellsWhatItDoesInTime() {
    String pick = PageForm.first(JobPagesTest.PICK, PagesTest.lid().get("/flap").asString());
    PagesTest.lid()
        .queryParam("pick", pick)
        .get("/flap/fit")
        .then()
        .statusCode(200)
        .body(containsString("When one spring fails"))
        .body(containsString("Hand slamming shut in 0.5 s"))
        .body(containsString("Motion over time"))
        .body(containsString("Matters most to holding"));
  }

  @Test
  void aTableOfForcesSaysNothingOfMotion() {
    String pick = PageForm.first(JobPagesTest.PICK, given().get("/profile").asString());
    given()
        .queryParam("pick", pick)
        .get("/profile/fit")
        .then()
        .statusCode(200)
        .body(not(containsString("When one spring fails")));
  }

  @Test
  void aPartTellsItsFreeSpeeds() {
    String number =
        given().get("/api/v1/parts?family=gas-spring&size=1").path("items[0].partNumber");
    given()
        .get("/parts/" + number)
        .then()
        .statusCode(200)
        .body(containsString("Comes out unloaded, through gas"))
        .body(containsString("mm/s"));
  }
}
