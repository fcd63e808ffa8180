package org.staywright.web.door;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.vertx.core.net.HostAndPort;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.web.door.Admission.TurnedAway;

class AdmissionTest {

  private static final int IN = 0;

  private final Admission admission = Admission.to(Stream.of("Springs.example", " ", "10.0.0.7"));

  @ParameterizedTest
  @CsvSource({
    "localhost, 0",
    "LOCALHOST:8080, 0",
    "127.0.0.1:8080, 0",
    "[::1]:8080, 0",
    "springs.example, 0",
    "springs.example.:443, 0",
    "10.0.0.7:8080, 0",
    "rebound.example:8080, 421",
    "localhost.rebound.example, 421",
    "127.0.0.1.rebound.example, 421",
    "127.0.0.2, 421",
    "springs.example.rebound.example, 421",
  })
  void answersToItsOwnNamesOnly(String host, int status) {
    assertEquals(status, status(visit("GET", "/parts", host, null, null, "")));
    assertEquals(IN, status(visit("GET", "/q/health/ready", host, null, null, "")));
    assertEquals(status, status(visit("GET", "/q/metrics", host, null, null, "")));
  }

  @Test
  void wantsToKnowTheHost() {
    assertEquals(400, status(new Visit("GET", "/", "http", null, null, null, "")));
  }

  @ParameterizedTest
  @CsvSource({
    "http://localhost:8080, 0",
    "https://localhost:8080, 0",
    "HTTP://LOCALHOST:8080, 403",
    "http://localhost, 403",
    "http://localhost:3000, 403",
    "http://127.0.0.1:8080, 403",
    "http://other.example, 403",
    "https://localhost.other.example:8080, 403",
    "null, 403",
    "file://, 403",
    "not an origin, 403",
    "'', 403",
  })
  void takesChangesOfItsOwnOriginOnly(String origin, int status) {
    for (String method : new String[] {"POST", "PUT", "DELETE", "PATCH"}) {
      String json = "application/json";
      Visit visit = visit(method, "/api/v1/jobs/1", "localhost:8080", origin, null, json);
      assertEquals(status, status(visit), visit::toString);
    }
    assertEquals(IN, status(visit("GET", "/", "localhost:8080", origin, null, "")));
  }

  @ParameterizedTest
  @CsvSource({
    "https://springs.example, springs.example, 0",
    "https://springs.example:443, springs.example, 0",
    "https://springs.example, springs.example:443, 0",
    "https://springs.example:8443, springs.example, 403",
    "http://springs.example, springs.example, 0",
    "http://springs.example, springs.example:443, 403",
  })
  void knowsThePortsThatNobodyWrites(String origin, String host, int status) {
    String form = "multipart/form-data";
    assertEquals(status, status(visit("POST", "/stock", host, origin, null, form)));
  }

  @ParameterizedTest
  @CsvSource({"cross-site, 403", "same-site, 0", "same-origin, 0", "none, 0"})
  void takesNoChangeFromAnotherSite(String site, int status) {
    String form = "application/x-www-form-urlencoded";
    assertEquals(status, status(visit("POST", "/jobs", "localhost", null, site, form)));
    assertEquals(status, status(visit("DELETE", "/api/v1/jobs/1", "localhost", null, site, "")));
    assertEquals(IN, status(visit("GET", "/jobs", "localhost", null, site, "")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"application/x-www-form-urlencoded", "multipart/form-data"})
  void takesFormsOnRoutesOfPagesOnly(String form) {
    assertEquals(IN, status(visit("POST", "/jobs", "localhost", null, null, form)));
    assertEquals(415, status(visit("POST", "/api/v1/jobs", "localhost", null, null, form)));
    assertEquals(415, status(visit("PUT", "/api", "localhost", null, null, form)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "text/plain"})
  void takesNothingThatAFormOfAnotherSiteCanSendUnderApi(String type) {
    for (String method : new String[] {"POST", "PUT", "PATCH"}) {
      assertEquals(415, status(visit(method, "/api/v1/restore", "localhost", null, null, type)));
      assertEquals(415, status(visit(method, "/jobs", "localhost", null, null, type)));
    }
    assertEquals(IN, status(visit("DELETE", "/api/v1/jobs/1", "localhost", null, null, type)));
    assertEquals(
        IN, status(visit("POST", "/api/v1/fits", "localhost", null, null, "application/json")));
    assertEquals(415, status(visit("POST", "/jobs", "localhost", null, null, "application/json")));
  }

  private int status(Visit visit) {
    return admission.of(visit).map(TurnedAway::status).orElse(IN);
  }

  private static Visit visit(
      String method, String path, String host, String origin, String site, String type) {
    String scheme = host.endsWith(":443") ? "https" : "http";
    return new Visit(
        method, path, scheme, HostAndPort.parseAuthority(host, -1), origin, site, type);
  }
}
