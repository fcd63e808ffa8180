package org.staywright.web.door;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
@Tag("server")
class AnswerHeadersTest {

  private static final List<String> BESIDE_ROUTES =
      List.of(
          "/q/health/ready",
          "/q/health/live",
          "/q/metrics",
          "/q/openapi",
          "/no-such-page",
          "/flap?massKg=a",
          "/%2e%2e/etc");

  static Stream<String> told() {
    return Stream.concat(ChangingRoute.told(), BESIDE_ROUTES.stream());
  }

  @ParameterizedTest
  @MethodSource("told")
  void everyAnswerSaysHowItMayBeUsedAndThatItMayNotBeKept(String path) {
    marked(path, given().redirects().follow(false).get(path), "no-store");
  }

  static Stream<ChangingRoute> changes() {
    return ChangingRoute.all();
  }

  @ParameterizedTest
  @MethodSource("changes")
  void soDoesWhatIsTurnedAway(ChangingRoute route) {
    Response answer =
        given().header("Origin", "http://a.example").request(route.method(), route.filled());
    assertEquals(403, answer.statusCode());
    marked(route.toString(), answer, route.ofInterface() ? "no-store" : "private, no-cache");
  }

  private static void marked(String what, Response answer, String kept) {
    AnswerHeaders.ALWAYS.forEach(
        (name, value) -> assertEquals(value, answer.header(name), () -> name + " of " + what));
    assertEquals(kept, answer.header("Cache-Control"), what);
    String type = answer.contentType();
    boolean empty = answer.asByteArray().length == 0;
    assertTrue(empty || !type.isEmpty(), () -> "no type of " + what);
    assertTrue(
        !type.startsWith("text/") || type.toLowerCase(Locale.ROOT).contains("charset=utf-8"),
        () -> type + " of " + what);
    // Over plain HTTP nobody would believe it.
    assertNull(answer.header(AnswerHeaders.STRICT_TRANSPORT), what);
    Set<String> once = new HashSet<>();
    answer.headers().asList().stream()
        .filter(each -> AnswerHeaders.ALWAYS.containsKey(each.getName()))
        .forEach(each -> assertTrue(once.add(each.getName()), () -> each + " twice in " + what));
    for (String forbidden : List.of("Server", "X-Powered-By", "Access-Control-Allow-Origin")) {
      assertNull(answer.header(forbidden), what);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/css/staywright.css",
        "/js/chart.js",
        "/img/mark.svg",
        "/lib/uplot-1.6.32/uPlot.iife.min.js",
        "/webjars/htmx.org/dist/htmx.min.js"
      })
  void filesOfTheProgramMayBeKept(String file) {
    given()
        .get(file)
        .then()
        .statusCode(200)
        .header("Cache-Control", startsWith("public"))
        .header("Cross-Origin-Resource-Policy", is("same-origin"))
        .header("Set-Cookie", nullValue());
  }

  /** What a browser opens beside the page it opens still, though it does not keep it. */
  @Test
  void papersAreStillShown() {
    String part = given().get("/api/v1/parts?size=1").path("items[0].partNumber");
    given()
        .get("/api/v1/parts/" + part + "/datasheet.pdf")
        .then()
        .statusCode(200)
        .contentType("application/pdf")
        .header("Content-Disposition", startsWith("inline"))
        .header("Cache-Control", is("no-store"));
    given()
        .get("/api/v1/stock/sample.csv")
        .then()
        .statusCode(200)
        .header("Content-Disposition", startsWith("attachment"))
        .header("Cache-Control", is("no-store"));
  }

  @Test
  void noCookieGoesWithAFormOfAnotherSiteOrToAScript() {
    List<String> cookies = given().get("/flap").headers().getValues("Set-Cookie");
    assertEquals(1, cookies.size());
    String cookie = cookies.get(0).toLowerCase(Locale.ROOT);
    assertTrue(cookie.startsWith("csrf-token="), cookie);
    assertTrue(cookie.contains("samesite=lax") && cookie.contains("httponly"), cookie);
  }

  /** Whoever is no proxy that is trusted may say so much. */
  @Test
  void nobodysWordForHttpsIsTaken() {
    Response answer =
        given()
            .header("X-Forwarded-Proto", "https")
            .header("Forwarded", "proto=https")
            .get("/flap");
    assertNull(answer.header(AnswerHeaders.STRICT_TRANSPORT));
    assertFalse(answer.header("Set-Cookie").toLowerCase(Locale.ROOT).contains("secure"));
  }

  @Test
  void thePolicyLetsNothingInline() {
    given()
        .get("/")
        .then()
        .header("Content-Security-Policy", containsString("default-src 'self';"))
        .header("Content-Security-Policy", not(containsString("unsafe")));
  }
}
