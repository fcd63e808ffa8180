package org.staywright.stock;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.staywright.web.Instance;

class EmptyStockIT {

  @Test
  void theProgramStartsWithNothingInStock() throws Exception {
    try (Instance program = Instance.onH2("empty", Map.of("STAYWRIGHT_SAMPLES", "false"))) {
      program.beAsked();
      given().get("/api/v1/parts").then().statusCode(200).body("total", equalTo(0));
    }
  }
}
