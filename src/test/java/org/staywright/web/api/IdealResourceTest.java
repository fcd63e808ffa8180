package org.staywright.web.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.notNullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.web.start.Way;

@QuarkusTest
@Tag("server")
class IdealResourceTest {

  @Test
  void saysWhatTheStockPartCostsAtTheHand() {
    JsonNode answer =
        given()
            .contentType(ContentType.JSON)
            .body(Way.LEVEL_LID.job().toString())
            .post("/api/v1/fits/ideal")
            .then()
            .statusCode(200)
            .body("made.forceN", notNullValue())
            .body("made.fit.verdict", equalTo("fits"))
            .body("stock.verdict", equalTo("fits"))
            .extract()
            .as(JsonNode.class);
    double stock = answer.at("/stock/figures/handRmsN").doubleValue();
    double made = answer.at("/made/fit/figures/handRmsN").doubleValue();
    assertEquals(stock - made, answer.at("/costs/handRmsN").doubleValue(), 1e-6);
  }

  @Test
  void nothingIsMadeForASeat() {
    given()
        .contentType(ContentType.JSON)
        .body(
            "{\"load\": {\"type\": \"seat-column\", \"seatMassKg\": 9, \"sitterMassKg\": {\"min\": 45,"
                + " \"max\": 120}, \"seatShare\": 0.8, \"heightTravelMm\": 100}}")
        .post("/api/v1/fits/ideal")
        .then()
        .statusCode(422)
        .body("errors[0].code", equalTo("none-to-make"));
  }
}
