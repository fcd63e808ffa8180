package org.staywright.web.account;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.is;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.quarkus.test.oidc.server.OidcWiremockTestResource;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import io.smallrye.jwt.build.Jwt;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.staywright.web.api.request.Problem;

@QuarkusTest
@TestProfile(AnotherIssuer.class)
@Tag("server")
class AnotherIssuerTest {

  private static RequestSpecification with(String token) {
    return given().header("Authorization", "Bearer " + token).contentType("application/json");
  }

  private static RequestSpecification as(String... groups) {
    return with(OidcWiremockTestResource.getAccessToken("alice", Set.of(groups)));
  }

  /** By the groups of the claim, whose names are ours or mapped to ours. */
  @ParameterizedTest
  @CsvSource({
    "reader, 200, 403, 403",
    "design office, 200, 428, 403",
    "editor, 200, 428, 403",
    "keeper, 200, 428, 404",
    "gardener, 403, 403, 403",
  })
  void aTokenOfAnotherIssuerHasTheRoleOfItsClaim(String group, int read, int write, int keep) {
    as(group).get("/api/v1/parts").then().statusCode(read);
    as(group).delete("/api/v1/jobs/1").then().statusCode(write);
    as(group).post("/api/v1/stock/revisions/999999/restore").then().statusCode(keep);
  }

  @Test
  void ofSeveralGroupsTheOneThatMayMostCounts() {
    as("gardener", "reader", "design office").delete("/api/v1/jobs/1").then().statusCode(428);
  }

  @Test
  void aTokenThatHasEndedOrIsSignedByAnotherIsRefusedAsAProblem() {
    String ended =
        Jwt.preferredUserName("alice")
            .groups("keeper")
            .issuer("https://server.example.com")
            .audience("https://service.example.com")
            .issuedAt(Instant.now().minus(Duration.ofHours(2)))
            .expiresAt(Instant.now().minus(Duration.ofHours(1)))
            .jws()
            .keyId("1")
            .sign("privateKey.jwk");
    String good = OidcWiremockTestResource.getAccessToken("alice", Set.of("keeper"));
    String forged = good.substring(0, good.lastIndexOf('.') + 1) + ended.replaceAll(".*\\.", "");
    for (String token : new String[] {ended, forged, "nobodys", "a.b.c"}) {
      with(token)
          .get("/api/v1/parts")
          .then()
          .statusCode(401)
          .contentType(Problem.TYPE)
          .body("status", is(401));
    }
    with(good).get("/api/v1/parts").then().statusCode(200);
  }

  @Test
  void ourOwnTokensAndPagesAreAsTheyWere() {
    with("sw_nobodys").get("/api/v1/parts").then().statusCode(401);
    given().redirects().follow(false).get("/jobs").then().statusCode(303);
    given().get("/sign-in").then().statusCode(200);
  }

  @Test
  void whatSomebodyOfAnotherIssuerDoesIsNotNotedAsDoneByTheAccountOfHisName() {
    Map<String, Object> job = as("reader").get("/api/v1/jobs/1").jsonPath().getMap("");
    job.keySet().removeAll(List.of("id", "created", "changed", "choice"));
    as("editor").body(job).post("/api/v1/jobs").then().statusCode(201);
    as("administrator")
        .get("/api/v1/changes?size=1")
        .then()
        .statusCode(200)
        .body("items[0].author", is("alice (https://server.example.com)"))
        .body("items[0].standing", is("signed-in"));
  }

  /** 1000 a minute here, as {@link AccountsOn} sets; each address for itself. */
  @Test
  void whoeverSendsWrongTokensWithoutEndHasToWait() {
    Response answer = guess("203.0.113.7", "sw_guessed");
    for (int i = 0; answer.statusCode() == 401 && i < 2000; i++) {
      answer = guess("203.0.113.7", "sw_guessed");
    }
    answer.then().statusCode(429).contentType(Problem.TYPE).body("status", is(429));
    assertTrue(Integer.parseInt(answer.header("Retry-After")) > 0);
    guess("203.0.113.8", "sw_guessed").then().statusCode(401);
  }

  private static Response guess(String address, String token) {
    return with(token).header("X-Forwarded-For", address).get("/api/v1/parts");
  }
}
