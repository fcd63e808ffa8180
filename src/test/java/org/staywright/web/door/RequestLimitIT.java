package org.staywright.web.door;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.is;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.staywright.web.Instance;

/**
 * So many requests a minute, behind a proxy that is trusted, over TLS by PKCS12 and no plain HTTP.
 */
class RequestLimitIT {

  private static final int MOST = 5;

  private static Instance program;

  @BeforeAll
  static void start() throws Exception {
    Path folder = Files.createTempDirectory(Path.of("target"), "limit-");
    Certified certified = Certified.in(folder.resolve("key.p12"));
    program =
        Instance.onH2(
            "limit",
            Map.of(
                "QUARKUS_TLS_KEY_STORE_P12_PATH",
                certified.file().toString(),
                "QUARKUS_TLS_KEY_STORE_P12_PASSWORD",
                Certified.PASSWORD,
                "QUARKUS_HTTP_SSL_PORT",
                "0",
                "QUARKUS_HTTP_INSECURE_REQUESTS",
                "disabled",
                "QUARKUS_HTTP_PROXY_PROXY_ADDRESS_FORWARDING",
                "true",
                "QUARKUS_HTTP_PROXY_TRUSTED_PROXIES",
                "127.0.0.1",
                "STAYWRIGHT_REQUESTS_PER_MINUTE",
                Integer.toString(MOST)));
    RestAssured.baseURI =
        "https://localhost:" + program.told(Pattern.compile("Listening on: https://\\S+:(\\d+)"));
    RestAssured.trustStore(certified.store());
  }

  @AfterAll
  static void end() {
    program.close();
  }

  /** As the proxy hands on what somebody at that address sends. */
  private static RequestSpecification from(String address) {
    return given().header("X-Forwarded-For", address);
  }

  private static void useUp(String address) {
    for (int each = 0; each < MOST; each++) {
      from(address).get("/api/v1/parts?size=1").then().statusCode(200);
    }
  }

  @Test
  void oneWhoAsksTooMuchIsToldWhenToComeAgain() {
    useUp("192.0.2.1");
    Response refused = from("192.0.2.1").get("/api/v1/parts?size=1");
    refused
        .then()
        .statusCode(429)
        .contentType("application/problem+json")
        .body("title", is("Too Many Requests"))
        .body("detail", containsString("Retry-After"));
    int wait = Integer.parseInt(refused.header("Retry-After"));
    assertTrue(wait >= 1 && wait <= 60 / MOST + 1, () -> "wait " + wait);
    from("192.0.2.1")
        .get("/jobs")
        .then()
        .statusCode(429)
        .contentType("text/html")
        .body(containsString("Too much was asked from your address"));
    from("192.0.2.1").get("/no-such-page").then().statusCode(429);
  }

  @Test
  void othersAreNotKeptWaitingNorAreFilesAndHealthCounted() {
    useUp("192.0.2.2");
    from("192.0.2.3").get("/jobs").then().statusCode(200);
    for (int each = 0; each < 2 * MOST; each++) {
      from("192.0.2.2").get("/css/staywright.css").then().statusCode(200);
      from("192.0.2.2").get("/q/health/ready").then().statusCode(200);
    }
    assertEquals(429, from("192.0.2.2").get("/").statusCode());
  }

  @Test
  void plainHttpIsNotSpokenAtAll() throws InterruptedException {
    String listens = program.told(Pattern.compile("Listening on: (.*)"));
    assertFalse(listens.contains("http://"), listens);
    String plain = RestAssured.baseURI.replace("https://", "http://");
    assertThrows(Exception.class, () -> given().baseUri(plain).get("/").statusCode());
  }
}
