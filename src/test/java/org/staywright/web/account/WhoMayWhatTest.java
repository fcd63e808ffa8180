package org.staywright.web.account;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.is;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.database.Somebody.ANNA;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.staywright.account.Account;
import org.staywright.account.Accounts;
import org.staywright.account.Role;
import org.staywright.web.api.request.Problem;

/** Every address of the interface and some pages, as everybody. */
@QuarkusTest
@TestProfile(AccountsOn.class)
@Tag("server")
class WhoMayWhatTest {

  /** The least role for each operation that takes more than looking and computing. */
  private static final Map<String, Role> LEAST = new HashMap<>();

  static {
    for (String id :
        List.of("addJob", "changeJob", "removeJob", "choose", "unchoose", "addBatch", "stopTask")) {
      LEAST.put(id, Role.EDITOR);
    }
    for (String id : List.of("importStock", "importAgain", "importFaults", "restoreRevision")) {
      LEAST.put(id, Role.KEEPER);
    }
    for (String id : List.of("backup", "restoreBackup", "listChanges", "change", "changesCsv")) {
      LEAST.put(id, Role.ADMINISTRATOR);
    }
  }

  private static final Map<Role, String> TOKENS = new EnumMap<>(Role.class);

  @Inject Accounts accounts;

  @BeforeEach
  void makeAnAccountOfEachRole() {
    if (TOKENS.isEmpty()) {
      for (Role role : Role.values()) {
        accounts.add(ANNA, "a " + role.code(), role);
        Account account =
            accounts.all().stream()
                .filter(each -> each.name.equals("a " + role.code()))
                .findFirst()
                .orElseThrow();
        TOKENS.put(role, accounts.addToken(ANNA, account.id, "test", role, 1));
      }
    }
  }

  @Test
  void everyAddressOfTheInterfaceByEveryRole() throws Exception {
    JsonNode paths =
        new ObjectMapper()
            .readTree(as(Role.READER).get("/q/openapi?format=json").asString())
            .get("paths");
    List<String> wrong = new ArrayList<>();
    int tried = 0;
    for (var path : paths.properties()) {
      for (var operation : path.getValue().properties()) {
        String id = operation.getValue().get("operationId").textValue();
        String method = operation.getKey().toUpperCase();
        String address = path.getKey().replaceAll("\\{[^}]*}", "1");
        int unknown = given().contentType("application/json").request(method, address).statusCode();
        if (unknown != 401) {
          wrong.add(method + " " + address + " by nobody: " + unknown);
        }
        for (Role role : Role.values()) {
          boolean may = role.may(LEAST.getOrDefault(id, Role.READER));
          int status =
              as(role).contentType("application/json").request(method, address).statusCode();
          if (may ? status == 401 || status == 403 : status != 403) {
            wrong.add(method + " " + address + " by " + role + ": " + status);
          }
          tried++;
        }
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(tried > 150, "tried " + tried);
  }

  @ParameterizedTest
  @CsvSource({
    "/, READER",
    "/flap, READER",
    "/parts, READER",
    "/jobs, READER",
    "/stock, READER",
    "/account, READER",
    "/accounts, ADMINISTRATOR",
    "/backup, ADMINISTRATOR",
    "/changes, ADMINISTRATOR",
    "/q/metrics, READER",
    "/no-such-page, READER",
  })
  void pagesByRole(String path, Role least) {
    given()
        .redirects()
        .follow(false)
        .get(path)
        .then()
        .statusCode(303)
        .header("Location", containsString("/sign-in?to=%2F"));
    for (Role role : Role.values()) {
      int status = as(role).get(path).statusCode();
      assertEquals(role.may(least), status != 403 && status != 401, role + " gets " + status);
    }
  }

  @ParameterizedTest
  @CsvSource({"/sign-in", "/welcome", "/css/staywright.css", "/q/health/ready"})
  void whatEverybodyMay(String path) {
    given().get(path).then().statusCode(200);
  }

  @Test
  void aTokenThatIsNoneIsRefusedAsAProblem() {
    given()
        .header("Authorization", "Bearer sw_nobodys")
        .get("/api/v1/parts")
        .then()
        .statusCode(401)
        .contentType(Problem.TYPE)
        .header("WWW-Authenticate", "Bearer realm=\"Staywright\"")
        .body("status", is(401));
  }

  @Test
  void whoMayNotIsToldSoAsAProblemAndAsAPage() {
    as(Role.READER)
        .contentType("application/json")
        .delete("/api/v1/jobs/1")
        .then()
        .statusCode(403)
        .contentType(Problem.TYPE);
    String page = as(Role.READER).get("/backup").then().statusCode(403).extract().asString();
    assertNotNull(page);
    assertTrue(page.contains("role does not allow"), page);
  }

  private static RequestSpecification as(Role role) {
    return given().header("Authorization", "Bearer " + TOKENS.get(role));
  }
}
