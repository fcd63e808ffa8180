package org.staywright.web.account;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.database.Somebody.ANNA;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.account.Accounts;
import org.staywright.account.Role;
import org.staywright.database.Audit;
import org.staywright.database.AuditSearch;
import org.staywright.database.Author.Standing;
import org.staywright.database.Change.Subject;
import org.staywright.database.Recorded;
import org.staywright.form.Jobs;
import org.staywright.web.PageForm;
import org.staywright.web.door.KeyRing;

/** With accounts the account is who did it, and what is done to accounts leaves rows too. */
@QuarkusTest
@TestProfile(AccountsOn.class)
@Tag("server")
class AuditedAccountsTest {

  private static final String PASSWORD = "a hatch, a lid and a guard";

  @Inject Accounts accounts;
  @Inject Audit audit;

  private final String keeper = somebody();
  private final String other = somebody();
  private String cookie;

  private static String somebody() {
    return "somebody " + UUID.randomUUID().toString().substring(0, 8);
  }

  @BeforeEach
  void anAdministratorIsIn() {
    cookie = welcomed(keeper, accounts.add(ANNA, keeper, Role.ADMINISTRATOR));
  }

  /** Others count who is left. */
  @AfterEach
  void heGoes() {
    accounts.change(ANNA, id(keeper), Role.READER, false);
  }

  private static String welcomed(String name, String word) {
    Response in =
        PageForm.of(given().get("/welcome"), "action=\"/welcome\"")
            .with("name", name)
            .with("word", word)
            .with("password", PASSWORD)
            .post("/welcome");
    in.then().statusCode(303);
    return in.cookie(KeyRing.COOKIE);
  }

  private Response page(String path) {
    return given().cookie(KeyRing.COOKIE, cookie).get(path);
  }

  private Response post(String path, String... fields) {
    Response page = page("/account");
    var form =
        given()
            .redirects()
            .follow(false)
            .cookie(KeyRing.COOKIE, cookie)
            .cookies(page.cookies())
            .formParams(PageForm.empty(page).values());
    for (int i = 0; i < fields.length; i += 2) {
      form.formParam(fields[i], fields[i + 1]);
    }
    Response answer = form.post(path);
    assertTrue(answer.statusCode() < 400, answer::asString);
    return answer;
  }

  /** The newest row, whose author must be the one that is in. */
  private Recorded row(String deed, String author) {
    Recorded row = audit.page(AuditSearch.ALL, null, 1).get(0);
    assertEquals(deed, row.change().subject().code() + "." + row.change().action().code());
    assertEquals(Standing.SIGNED_IN, row.author().standing());
    assertEquals(author, row.author().name());
    assertEquals("127.0.0.1", row.author().address());
    return row;
  }

  private long id(String name) {
    return accounts.all().stream()
        .filter(each -> each.name.equals(name))
        .findFirst()
        .orElseThrow()
        .id;
  }

  @Test
  void whatIsDoneToAnAccountIsNoted() {
    post("/accounts", "name", other, "role", "editor");
    Recorded added = row("account.added", keeper);
    assertEquals(Long.toString(id(other)), added.change().id());
    post("/accounts/" + id(other), "role", "keeper", "active", "yes");
    Recorded changed = row("account.changed", keeper);
    assertTrue(changed.change().before().contains("\"role\":\"editor\""));
    assertTrue(changed.change().after().contains("\"role\":\"keeper\""));
    post("/accounts/" + id(other), "role", "keeper");
    assertTrue(row("account.changed", keeper).change().after().contains("\"active\":false"));
    post("/accounts/" + id(other) + "/word");
    row("account.invited", keeper);
  }

  @Test
  void whatIsDoneToOnesOwnIsNotedAndNoSecretWithIt() {
    post("/account/tokens", "name", "nightly", "role", "editor", "days", "9");
    Recorded made = row("token.added", keeper);
    post("/account/tokens/" + made.change().id() + "/remove");
    row("token.removed", keeper);
    cookie =
        post("/account/password", "old", PASSWORD, "password", PASSWORD + " more")
            .cookie(KeyRing.COOKIE);
    row("account.welcomed", keeper);
    for (Recorded row : audit.page(AuditSearch.ALL, null, 200)) {
      String told = row.change().before() + row.change().after();
      assertFalse(told.matches("(?is).*(digest|hash|argon|sw_|secret|hatch, a lid).*"), told);
    }
  }

  @Test
  void whoChoosesAPasswordWithAWordOrGuessesOneIsNobodyWeKnow() {
    String word = accounts.add(ANNA, other, Role.READER);
    welcomed(other, word);
    Recorded welcomed = of(other).get(0);
    assertEquals("WELCOMED", welcomed.change().action().name());
    assertEquals(Standing.SAID, welcomed.author().standing());
    for (int i = 0; i < 6; i++) {
      PageForm.of(given().get("/sign-in"), "action=\"/sign-in\"")
          .with("name", other)
          .with("password", "wrong")
          .post("/sign-in");
    }
    Recorded locked = of(other).get(0);
    assertEquals("LOCKED", locked.change().action().name());
    assertEquals(Standing.SAID, locked.author().standing());
    assertTrue(locked.change().after().contains("\"lockedUntil\":\"2"), locked.change().after());
  }

  private List<Recorded> of(String name) {
    return audit.page(AuditSearch.of(Subject.ACCOUNT, Long.toString(id(name))), null, 10);
  }

  @Test
  void whoIsSignedInDidItWhateverElseIsSaid() {
    String token = accounts.addToken(ANNA, id(keeper), "test", Role.EDITOR, 1);
    given()
        .header("Authorization", "Bearer " + token)
        .header("From", "Somebody Else <else@example.com>")
        .contentType("application/json")
        .body(Jobs.LID)
        .post("/api/v1/jobs")
        .then()
        .statusCode(201);
    Recorded row = row("job.added", keeper);
    post("/jobs/" + row.change().id() + "/copy", "by", "Somebody Else");
    row("job.added", keeper);
    page("/changes")
        .then()
        .statusCode(200)
        .body(containsString("<td data-label=\"Who\">" + keeper));
    page("/jobs/" + row.change().id() + "/removal").then().body(not(containsString("name=\"by\"")));
  }
}
