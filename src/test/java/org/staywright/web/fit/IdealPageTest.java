package org.staywright.web.fit;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.web.shell.PagesTest;
import org.staywright.web.start.Way;

/** What would be made for a job, beside the best of stock, as a page and as a sheet. */
@QuarkusTest
@Tag("server")
class IdealPageTest {

  private static Response of(Way way, String page) {
    String address = way.bench().replaceFirst("\\?", "/" + page + "?");
    return given().urlEncodingEnabled(false).get(address);
  }

  @ParameterizedTest
  @EnumSource
  void everyWaySaysWhatStockCostsAtTheHandOrThatStockIsBetter(Way way) {
    String html = of(way, "ideal").then().statusCode(200).extract().asString();
    assertTrue(html.contains("From stock, "));
    assertTrue(html.contains("Made for this job, "));
    boolean proposed = !html.contains("Stock does as well: order it.");
    boolean costs = html.contains("The stock part costs ") || html.contains("would gain less than");
    assertEquals(proposed, costs);
    assertEquals(proposed, html.contains("/specification.pdf?"));
    assertEquals(!proposed, html.contains("Order the stock part"));
    assertTrue(html.contains("made opening") && html.contains("stock opening"));
    of(way, "specification.pdf").then().statusCode(proposed ? 200 : 404);
  }

  @Test
  void theSheetIsAPdf() {
    byte[] pdf =
        of(Way.LEVEL_LID, "specification.pdf")
            .then()
            .statusCode(200)
            .contentType("application/pdf")
            .extract()
            .asByteArray();
    assertTrue(new String(pdf, 0, 5).startsWith("%PDF-"));
  }

  @Test
  void theBenchLeadsThereButASeatDoesNot() {
    PagesTest.lid().get("/flap").then().body(containsString("formaction=\"/flap/ideal\""));
    given().get("/seat").then().body(not(containsString("/seat/ideal")));
    given().get("/seat/ideal").then().statusCode(404);
    given().get("/seat/specification.pdf").then().statusCode(404);
  }

  @Test
  void whereNothingInStockFitsTheSpringToBeMadeIsTheAnswer() {
    heavy().get("/flap/ideal").then().statusCode(200).body(containsString("Nothing in stock fits"));
    heavy().get("/flap/specification.pdf").then().statusCode(200);
  }

  private static RequestSpecification heavy() {
    return PagesTest.lid().queryParam("requirements.maxHandForceN", "14");
  }

  @Test
  void mountsWithoutRoomSayHowMuchIsMissing() {
    RequestSpecification near =
        given()
            .queryParam("load.type", "straight-lift")
            .queryParam("load.massKg", "20")
            .queryParam("load.travelMm", "300")
            .queryParam("load.directionDeg", "90")
            .queryParam("mounts.frameMm.x", "0")
            .queryParam("mounts.frameMm.y", "0")
            .queryParam("mounts.movingMm.x", "0")
            .queryParam("mounts.movingMm.y", "250");
    near.get("/lift/ideal")
        .then()
        .statusCode(200)
        .body(containsString("No gas spring has room at these mounts"))
        .body(not(containsString("/lift/specification.pdf")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/flap/ideal?load.massKg=-3", "/flap/specification.pdf?load.massKg=x"})
  void whatCannotBeReadIsRefused(String address) {
    given().get(address).then().statusCode(422);
  }
}
