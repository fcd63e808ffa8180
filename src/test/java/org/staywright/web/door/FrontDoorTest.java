package org.staywright.web.door;

import static io.restassured.RestAssured.given;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.oneOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.config.EncoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.web.api.request.Problem;

@QuarkusTest
@Tag("server")
class FrontDoorTest {

  /** What a form of another site can send without asking, and nothing at all. */
  private static final List<String> UNASKED =
      List.of("text/plain", "application/x-www-form-urlencoded", "multipart/form-data; boundary=x");

  @ParameterizedTest
  @ValueSource(
      strings = {"/", "/api/v1/parts", "/css/staywright.css", "/q/openapi", "/no-such-page"})
  void doesNotAnswerUnderAnotherName(String path) {
    given()
        .header("Host", "rebound.example")
        .get(path)
        .then()
        .statusCode(421)
        .body(containsString("rebound.example. If it is yours, put it into STAYWRIGHT_HOSTS"));
  }

  @Test
  void tellsItInTheLanguageOfTheReaderAndUnderApiAsAProblem() {
    RequestSpecification german =
        given().header("Host", "rebound.example").header("Accept-Language", "de");
    german.get("/").then().contentType("text/plain").body(containsString("antwortet dieses"));
    given()
        .header("Host", "rebound.example")
        .get("/api/v1/parts")
        .then()
        .contentType(Problem.TYPE)
        .body("status", is(421))
        .body("title", is("Misdirected Request"));
  }

  @Test
  void answersWhoeverWatchesOverItUnderAnyName() {
    given().header("Host", "10.1.2.3:8080").get("/q/health/ready").then().statusCode(200);
  }

  static Stream<ChangingRoute> changes() {
    return ChangingRoute.all().filter(ChangingRoute::ofInterface);
  }

  @ParameterizedTest
  @MethodSource("changes")
  void takesNoChangeOfTheInterfaceFromAnotherOrigin(ChangingRoute route) {
    for (String origin : List.of("http://other.example", "null", "http://localhost:1")) {
      sent(route, given().header("Origin", origin).contentType("application/json"))
          .statusCode(403)
          .contentType(Problem.TYPE);
    }
    sent(route, given().header("Sec-Fetch-Site", "cross-site")).statusCode(403);
  }

  @ParameterizedTest
  @MethodSource("changes")
  void takesNoTypeOfAFormUnderApiAlsoWithoutABody(ChangingRoute route) {
    if (route.method().equals("DELETE")) {
      return;
    }
    for (String type : UNASKED) {
      ValidatableResponse answer = sent(route, as(type));
      answer.statusCode(415).contentType(Problem.TYPE);
      String plain = type.split(";")[0];
      assertTrue(answer.extract().<String>path("detail").contains(plain), () -> route + type);
    }
    sent(route, given()).statusCode(415).body("detail", containsString("Content-Type"));
    sent(route, as("application/vnd.nobody")).statusCode(415);
  }

  static Stream<String> pages() {
    return ChangingRoute.all()
        .filter(route -> !route.ofInterface() && route.method().equals("POST"))
        .map(ChangingRoute::filled);
  }

  @ParameterizedTest
  @MethodSource("pages")
  void takesNothingButFormsOfItsOwnOnRoutesOfPages(String path) {
    for (String type : List.of("text/plain", "application/json", "application/octet-stream")) {
      as(type).body("csrf-token=1".getBytes(UTF_8)).post(path).then().statusCode(415);
    }
    given().noContentType().post(path).then().statusCode(415);
    RequestSpecification form = given().formParam("revision", "1");
    form.header("Origin", "http://other.example").post(path).then().statusCode(403);
    // Without its token; nobody is there, or it takes the other kind of form.
    given().formParam("revision", "1").post(path).then().statusCode(oneOf(400, 404, 415));
  }

  private static RequestSpecification as(String type) {
    EncoderConfig bare =
        EncoderConfig.encoderConfig().appendDefaultContentCharsetToContentTypeIfUndefined(false);
    return given()
        .config(RestAssuredConfig.config().encoderConfig(bare))
        .header("Content-Type", type);
  }

  private static ValidatableResponse sent(ChangingRoute route, RequestSpecification request) {
    return request.request(route.method(), route.filled()).then();
  }
}
