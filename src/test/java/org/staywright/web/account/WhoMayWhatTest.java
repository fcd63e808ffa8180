package org.staywright.web.account;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.is;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.http.ContentType;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.account.Accounts;
import org.staywright.account.Role;
import org.staywright.web.account.Everybody.Asked;
import org.staywright.web.api.request.Problem;

/** Every address as everybody, held to the table of the manual. */
@QuarkusTest
@TestProfile(AccountsOn.class)
@Tag("server")
class WhoMayWhatTest {

  private static final Optional<Role> NOBODY = Optional.empty();

  @Inject Accounts accounts;

  private Everybody everybody;

  @BeforeEach
  void come() {
    everybody = new Everybody(accounts);
  }

  @Test
  void everyAddressByEverybodyAsTheManualHasIt() {
    RightsTable manual = new RightsTable();
    assertEquals(10, manual.size());
    List<Asked> all = Everybody.everything(everybody.as(Role.READER));
    List<String> wrong = new ArrayList<>();
    for (Asked asked : all) {
      for (Optional<Role> role : Everybody.roles().toList()) {
        boolean may = manual.allows(asked.method(), asked.path(), role);
        if (asked.refused(everybody.as(role)) == may) {
          wrong.add(asked + " by " + role + (may ? " is refused" : " is not refused"));
        }
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(all.size() > 120, () -> all.size() + " addresses");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/backup/",
        "//backup",
        "/./backup",
        "/jobs/../backup",
        "/%62ackup",
        "/backup;a=b",
        "/;a=b/backup",
        "/backup%2F",
        "/%2e/backup",
        "/css/../backup",
        "/css/%2e%2e/backup",
        "/q/health/../../backup",
        "/css;a=b/../backup",
        "/api/v1//backup.zip",
        "/api/v1;x/backup.zip",
        "/api/v1/backup.zip;x",
        "/api/v1/backup%2Ezip",
      })
  void anotherSpellingOpensNoDoor(String path) {
    for (Optional<Role> role : List.of(NOBODY, Optional.of(Role.READER))) {
      var answer = everybody.as(role).urlEncodingEnabled(false).get(path);
      assertTrue(answer.statusCode() >= 300, () -> role + " got " + answer.statusCode());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"TRACE", "CONNECT", "PROPFIND"})
  void aMethodThatNoRowNamesNobodyMay(String method) {
    assertTrue(everybody.as(Role.ADMINISTRATOR).request(method, "/jobs").statusCode() >= 400);
  }

  @ParameterizedTest
  @ValueSource(strings = {"sw_nobodys", "nobodys", "sw_", ""})
  void aTokenThatIsNoneIsRefusedAsAProblem(String token) {
    everybody
        .as(NOBODY)
        .header("Authorization", "Bearer " + token)
        .get("/api/v1/parts")
        .then()
        .statusCode(401)
        .contentType(Problem.TYPE)
        .header("WWW-Authenticate", "Bearer realm=\"Staywright\"")
        .body("status", is(401));
  }

  @Test
  void whoMayNotIsToldSoAsAProblemAndAsAPage() {
    everybody
        .as(Role.READER)
        .contentType(ContentType.JSON)
        .delete("/api/v1/jobs/1")
        .then()
        .statusCode(403)
        .contentType(Problem.TYPE);
    everybody
        .as(Role.READER)
        .get("/backup")
        .then()
        .statusCode(403)
        .contentType(ContentType.HTML)
        .body(containsString("Your role does not allow this"));
  }

  @Test
  void whoeverAsksForAPageComesBackToItOnceHeHasSignedIn() {
    everybody
        .as(NOBODY)
        .get("/jobs?page=1")
        .then()
        .statusCode(303)
        .header("Location", containsString("/sign-in?to=%2Fjobs%3Fpage%3D1"));
  }
}
