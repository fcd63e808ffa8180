package org.staywright.web.account;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.database.Somebody.ANNA;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.staywright.account.Account;
import org.staywright.account.Accounts;
import org.staywright.account.Role;
import org.staywright.web.PageForm;
import org.staywright.web.door.KeyRing;

@QuarkusTest
@TestProfile(AccountsOn.class)
@Tag("server")
class SignInPageTest {

  private static final String PASSWORD = "a hatch, a lid and a guard";

  @Inject Accounts accounts;

  @Test
  void inByAWordThenByThePasswordAndOutAgain() {
    String name = anybody();
    Response in = welcomed(name, Role.EDITOR);
    String cookie = in.cookie(KeyRing.COOKIE);
    assertTrue(
        in.getHeaders().getValues("Set-Cookie").stream()
            .anyMatch(
                set -> set.matches(KeyRing.COOKIE + "=[\\w-]{43}; Path=/; HTTPOnly; SameSite=Lax")),
        in.getHeaders()::toString);
    page(cookie, "/").then().statusCode(200).body(containsString(name));
    page(cookie, "/").then().body(not(containsString("href=\"/backup\"")));
    Response account = page(cookie, "/account");
    account.then().statusCode(200);
    post(cookie, account, "/account/sign-out", "", "");
    // The old cookie is dead.
    page(cookie, "/account").then().statusCode(303);
    assertEquals(303, signIn(name, PASSWORD).statusCode());
    assertEquals(303, signIn(" " + name.toUpperCase() + " ", PASSWORD).statusCode());
  }

  @Test
  void tellsNobodyWhatWasWrong() {
    String name = anybody();
    welcomed(name, Role.READER);
    String wrong = signIn(name, "not the password").then().statusCode(401).extract().asString();
    String nobody = signIn(anybody(), PASSWORD).then().statusCode(401).extract().asString();
    assertTrue(wrong.contains("The name or the password is not right"));
    assertTrue(nobody.contains("The name or the password is not right"));
    signIn(name, PASSWORD).then().statusCode(303);
  }

  @Test
  void locksAfterSixWrongOnesAlsoForTheRightOne() {
    String name = anybody();
    welcomed(name, Role.READER);
    for (int i = 0; i < 6; i++) {
      signIn(name, "wrong").then().statusCode(401);
    }
    Response locked = signIn(name, PASSWORD);
    assertEquals(401, locked.statusCode());
    assertNull(locked.cookie(KeyRing.COOKIE));
  }

  @Test
  void aWordServesOnce() {
    String name = anybody();
    String word = accounts.add(ANNA, name, Role.READER);
    assertEquals(303, welcome(name, word, PASSWORD).statusCode());
    welcome(name, word, PASSWORD).then().statusCode(401).body(containsString("the word is spent"));
    welcome(name, "AAAAA-AAAAA-AAAAA-AAAAA", PASSWORD).then().statusCode(401);
  }

  @ParameterizedTest
  @CsvSource({
    "short, 'has 5 characters. Choose one of 12–128'",
    "my name is %s, contains the name"
  })
  void refusesAPasswordThatIsTooPlain(String password, String said) {
    String name = anybody();
    String word = accounts.add(ANNA, name, Role.READER);
    welcome(name, word, password.formatted(name)).then().statusCode(422).body(containsString(said));
  }

  @ParameterizedTest
  @CsvSource({
    "/jobs?page=1, /jobs?page=1",
    "https://other.example/, /",
    "//other.example/, /",
    "/\\other.example, /",
    "javascript:alert(1), /",
  })
  void leadsBackToPagesOfOursOnly(String to, String there) {
    String name = anybody();
    welcomed(name, Role.READER);
    Response asked = given().queryParam("to", to).get("/sign-in");
    Response in =
        PageForm.of(asked, "action=\"/sign-in\"")
            .with("name", name)
            .with("password", PASSWORD)
            .post("/sign-in");
    assertEquals(there, in.header("Location").replaceFirst("^http://[^/]+", ""));
  }

  @ParameterizedTest
  @CsvSource({
    "/account, /account/tokens, days, 12.5, Give 1–366 whole days",
    "/account, /account/tokens, days, '', Give 1–366 whole days",
    "/account, /account/tokens, role, king, 'Choose one of: reader, editor'",
    "/accounts, /accounts, role, king, 'Choose one of: reader, editor'",
    "/accounts, /accounts, name, '', The name has 0 characters",
  })
  void saysWhatIsWrongOfWhatIsSent(
      String page, String path, String name, String value, String said) {
    String cookie = signedInAsAdministrator();
    Map<String, String> sent =
        new HashMap<>(Map.of("name", "lathe", "role", "reader", "days", "9"));
    sent.put(name, value);
    Response shown = page(cookie, page);
    given()
        .cookie(KeyRing.COOKIE, cookie)
        .cookies(shown.cookies())
        .formParams(PageForm.empty(shown).values())
        .formParams(sent)
        .post(path)
        .then()
        .statusCode(422)
        .body(containsString(said));
  }

  @Test
  void theLastAdministratorStays() {
    Account first =
        accounts.all().stream()
            .filter(each -> each.name.equals(Accounts.FIRST))
            .findFirst()
            .orElseThrow();
    String own = anybody();
    String cookie = welcomed(own, Role.ADMINISTRATOR).cookie(KeyRing.COOKIE);
    Response page = page(cookie, "/accounts");
    page.then().statusCode(200).body(containsString(first.name));
    // Himself last: then he may no more.
    accounts.all().stream()
        .filter(each -> each.role == Role.ADMINISTRATOR)
        .sorted(Comparator.comparing(each -> each.name.equals(own)))
        .forEach(each -> post(cookie, page, "/accounts/" + each.id, "role", "reader"));
    long left =
        accounts.all().stream().filter(a -> a.role == Role.ADMINISTRATOR && a.active).count();
    assertEquals(1, left);
  }

  private String signedInAsAdministrator() {
    return welcomed(anybody(), Role.ADMINISTRATOR).cookie(KeyRing.COOKIE);
  }

  private Response welcomed(String name, Role role) {
    Response in = welcome(name, accounts.add(ANNA, name, role), PASSWORD);
    assertEquals(303, in.statusCode());
    return in;
  }

  private static Response welcome(String name, String word, String password) {
    return PageForm.of(given().get("/welcome"), "action=\"/welcome\"")
        .with("name", name)
        .with("word", word)
        .with("password", password)
        .post("/welcome");
  }

  private static Response signIn(String name, String password) {
    return PageForm.of(given().get("/sign-in"), "action=\"/sign-in\"")
        .with("name", name)
        .with("password", password)
        .post("/sign-in");
  }

  private static Response page(String cookie, String path) {
    return given().redirects().follow(false).cookie(KeyRing.COOKIE, cookie).get(path);
  }

  private static void post(String cookie, Response page, String path, String name, String value) {
    given()
        .redirects()
        .follow(false)
        .cookie(KeyRing.COOKIE, cookie)
        .cookies(page.cookies())
        .formParams(PageForm.empty(page).values())
        .formParam(name, value)
        .formParam("active", "yes")
        .post(path);
  }

  private static String anybody() {
    return "somebody " + UUID.randomUUID().toString().substring(0, 8);
  }
}
