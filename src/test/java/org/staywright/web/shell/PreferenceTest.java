package org.staywright.web.shell;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.staywright.web.PageForm;

/** Language and units of a page: by address, by choice, by browser. */
@QuarkusTest
@Tag("server")
class PreferenceTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '/',
      value = {"de / de", "de-AT,en;q=0.5 / de", "fr,de;q=0.3,en;q=0.2 / de", "fr / en", "* / en"})
  void theBrowserTellsItsLanguage(String accepted, String language) {
    given()
        .header("Accept-Language", accepted)
        .get("/parts")
        .then()
        .statusCode(200)
        .header("Content-Language", language)
        .body(containsString("<html lang=\"" + language + "\">"));
  }

  @Test
  void aChoiceWinsOverTheBrowserAndAnAddressOverAChoice() {
    given()
        .header("Accept-Language", "de")
        .cookie("lang", "en")
        .get("/parts")
        .then()
        .body(containsString("<html lang=\"en\">"));
    given()
        .cookie("lang", "en")
        .get("/parts?lang=de")
        .then()
        .cookie("lang", "de")
        .body(containsString("<html lang=\"de\">"));
    given()
        .get("/parts?lang=tlh")
        .then()
        .header("Set-Cookie", not(containsString("lang=")))
        .body(containsString("<html lang=\"en\">"));
  }

  @Test
  void theFormInTheHeadKeepsAChoiceAndGoesBack() {
    Response page = given().get("/parts?rodDiameterMm=8&units=metric");
    Response answer =
        PageForm.of(page, "action=\"/preferences\"")
            .with("units", "inch-pound")
            .post("/preferences");
    answer.then().statusCode(303).cookie("units", "inch-pound");
  }

  @ParameterizedTest
  @CsvSource({
    "http://localhost/parts?rodDiameterMm=8&units=metric&lang=en, /parts?rodDiameterMm=8",
    "http://localhost//elsewhere.example/x, /elsewhere.example/x",
    "javascript:alert(1), /",
    "not a page, /",
    "'', /"
  })
  void goesBackToAPageOfOursOnly(String from, String to) {
    Response page = given().get("/parts");
    String token = PageForm.first("name=\"csrf-token\" value=\"([^\"]+)\"", page.asString());
    given()
        .redirects()
        .follow(false)
        .cookies(page.cookies())
        .header("Referer", from)
        .formParam("csrf-token", token)
        .formParam("lang", "de")
        .post("/preferences")
        .then()
        .statusCode(303)
        .header("Location", endsWith(to));
  }

  @Test
  void documentsTakeThemByQueryAndNothingElse() {
    given()
        .get("/api/v1/parts/S-NONE/datasheet.pdf?units=inch-pound&lang=de")
        .then()
        .statusCode(404);
    given()
        .get("/api/v1/parts/S-NONE/datasheet.pdf?units=cubits")
        .then()
        .statusCode(400)
        .body("errors[0].parameter", equalTo("units"));
  }
}
