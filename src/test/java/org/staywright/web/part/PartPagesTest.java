package org.staywright.web.part;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.part.Family;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;

/** Parts looked for and shown, as a browser without script gets them. */
@QuarkusTest
@Tag("server")
class PartPagesTest {

  @Inject CurrentRange stock;

  @Test
  void partPageShowsOutlineCurvesFiguresAndCautions() {
    Range range = stock.get();
    int gasSpring =
        IntStream.range(0, range.size())
            .filter(row -> range.family(row) == Family.GAS_SPRING)
            .findFirst()
            .orElseThrow();
    String number = range.number(gasSpring);
    given()
        .get("/parts/" + number)
        .then()
        .statusCode(200)
        .body(containsString("<h1>" + number + "</h1>"))
        .body(containsString("href=\"/api/v1/parts/" + number + "/datasheet.pdf\""))
        .body(containsString("Stroke"))
        .body(containsString("Never open"));
  }

  @Test
  void searchFindsWhatLiesWithinTheTolerance() {
    given()
        .get("/parts?rodDiameterMm=8&rodPlusMinusMm=0.2&strokeMm=161&strokePlusMinusMm=3")
        .then()
        .statusCode(200)
        .body(containsString("closest first"))
        .body(containsString("<span class=\"off\">−1</span> 160"));
    given()
        .get("/parts?rodDiameterMm=wide")
        .then()
        .statusCode(200)
        .body(containsString("value=\"wide\""))
        .body(containsString("Rod diameter is “wide”, which cannot be read as a number."));
    given().get("/parts?strokeMm=1").then().body(containsString("Widen one of them"));
    given().get("/parts?page=99999").then().statusCode(200).body(containsString("rel=\"prev\""));
  }
}
