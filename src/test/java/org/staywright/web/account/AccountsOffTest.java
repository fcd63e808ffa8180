package org.staywright.web.account;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.web.account.Everybody.Asked;

@QuarkusTest
@Tag("server")
class AccountsOffTest {

  /** Whoever could make accounts before they are switched on would be an administrator after it. */
  @Test
  void everythingIsOpenAndThereAreNoPagesOfAccounts() {
    List<Asked> all = Everybody.everything(given());
    List<String> wrong = new ArrayList<>();
    int ofAccounts = 0;
    for (Asked asked : all) {
      Response answer = asked.sent(given().redirects().follow(false));
      int status = answer.statusCode();
      boolean account = asked.path().matches("/(accounts?|sign-in|welcome)(/.*)?");
      ofAccounts += account ? 1 : 0;
      if (account ? status != 404 : status == 401 || status == 403) {
        wrong.add(asked + ": " + status);
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(ofAccounts >= 13, ofAccounts + " addresses of accounts");
  }

  @Test
  void noPageSpeaksOfAccountsAndATokenIsNotLookedAt() {
    given()
        .header("Authorization", "Bearer sw_nobodys")
        .get("/")
        .then()
        .statusCode(200)
        .body(not(containsString("/account")))
        .body(not(containsString(System.getProperty("user.name") + "<")));
  }
}
