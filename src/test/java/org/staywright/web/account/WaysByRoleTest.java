package org.staywright.web.account;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.database.Somebody.ANNA;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.RestAssured;
import io.restassured.builder.RequestSpecBuilder;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.account.Accounts;
import org.staywright.account.Role;
import org.staywright.account.SigningIn;
import org.staywright.web.PageForm;
import org.staywright.web.door.KeyRing;
import org.staywright.web.job.JobPagesTest;

/** What each role meets on the pages, signed in at a browser. */
@QuarkusTest
@TestProfile(AccountsOn.class)
@Tag("server")
class WaysByRoleTest {

  private static final String PASSWORD = "a hatch, a lid and a guard";

  /** From where all other pages can be reached. */
  private static final List<String> STARTS =
      List.of(
          "/",
          "/batches",
          "/account",
          "/flap?load.massKg=18&limit=5",
          "/replace?rodDiameterMm.value=8&rodDiameterMm.plusMinus=0.1");

  private static final int MOST_PAGES = 70;

  private static final Pattern LINK = Pattern.compile("<a [^>]*href=\"(/[^\"#]*)");
  private static final Pattern FORM =
      Pattern.compile(
          "<form[^>]* action=\"([^\"#?]+)[^>]* method=\"post\"|formaction=\"([^\"]+)\"");

  @Inject Accounts accounts;
  @Inject SigningIn signingIn;

  private void signIn(Role role) {
    String name = "somebody " + UUID.randomUUID();
    assertTrue(signingIn.choosePassword(ANNA, name, accounts.add(ANNA, name, role), PASSWORD));
    String secret = signingIn.signIn(ANNA, name, PASSWORD).orElseThrow();
    // What is built takes over what is there.
    signOut();
    RestAssured.requestSpecification =
        new RequestSpecBuilder().addCookie(KeyRing.COOKIE, secret).build();
  }

  @AfterEach
  void signOut() {
    RestAssured.requestSpecification = null;
  }

  @Test
  void theBuyerComesFromAJobToItsPapersAsAnEditor() {
    signIn(Role.EDITOR);
    String id = JobPagesTest.chosen("Bought with an account");
    given().get("/jobs/" + id).then().statusCode(200).body(containsString("Count again"));
    for (String paper : List.of("parts-list.csv", "job-sheet.pdf", "quotation-request.pdf")) {
      given().get("/api/v1/jobs/" + id + "/" + paper).then().statusCode(200);
    }
    signIn(Role.READER);
    given()
        .get("/jobs/" + id)
        .then()
        .statusCode(200)
        .body(containsString("/api/v1/jobs/" + id + "/parts-list"))
        .body(not(containsString("Count again")))
        .body(not(containsString("/copy")))
        .body(not(containsString("/removal")));
    given().get("/api/v1/jobs/" + id + "/parts-list.csv").then().statusCode(200);
  }

  @Test
  void theFitterComesFromAnOldSpringToItsNoteAsAReader() {
    signIn(Role.READER);
    String found =
        given()
            .get("/replace?rodDiameterMm.value=8&rodDiameterMm.plusMinus=0.1&strokeMm.value=100")
            .then()
            .statusCode(200)
            .extract()
            .asString();
    String note = PageForm.first("href=\"(/replace/note.pdf\\?[^\"]+)\"", found);
    given()
        .urlEncodingEnabled(false)
        .get(note)
        .then()
        .statusCode(200)
        .contentType("application/pdf");
  }

  @Test
  void nobodyMeetsAFormOrALinkThatIsNotHis() {
    signIn(Role.EDITOR);
    String job = JobPagesTest.chosen("Looked at by everybody");
    RightsTable manual = new RightsTable();
    Map<Role, Integer> forms = new EnumMap<>(Role.class);
    for (Role role : Role.values()) {
      signIn(role);
      Set<String> sent = new HashSet<>();
      for (String[] page : pages("/jobs/" + job)) {
        Matcher form = FORM.matcher(page[1]);
        while (form.find()) {
          String action = form.group(1) == null ? form.group(2) : form.group(1);
          String method = form.group(1) == null ? methodOf(page[1], form) : "POST";
          assertTrue(
              manual.allows(method, bare(action), Optional.of(role)),
              () -> role + " meets " + method + " " + action + " at " + page[0]);
          sent.add(method + kind(action));
        }
        Matcher link = LINK.matcher(page[1]);
        while (link.find()) {
          String to = link.group(1);
          assertTrue(
              manual.allows("GET", bare(to), Optional.of(role)),
              () -> role + " meets a link to " + to + " at " + page[0]);
        }
      }
      forms.put(role, sent.size());
    }
    // He who may more meets more.
    List<Integer> rising = List.copyOf(forms.values());
    for (int i = 1; i < rising.size(); i++) {
      assertTrue(rising.get(i) > rising.get(i - 1), forms::toString);
    }
  }

  /** A button sends its form elsewhere by its own method, or else by GET, as all of ours do. */
  private static String methodOf(String html, Matcher button) {
    int from = html.lastIndexOf('<', button.start());
    return html.substring(from, button.end()).contains("formmethod=\"post\"") ? "POST" : "GET";
  }

  /** Address and text of a page of each kind that can be reached. */
  private static List<String[]> pages(String job) {
    Deque<String> open = new ArrayDeque<>(STARTS);
    open.add(job);
    Set<String> kinds = new HashSet<>();
    List<String[]> pages = new ArrayList<>();
    while (!open.isEmpty() && pages.size() < MOST_PAGES) {
      String path = open.poll();
      Response answer = given().urlEncodingEnabled(false).get(path);
      assertEquals(200, answer.statusCode(), path);
      if (!answer.contentType().startsWith("text/html")) {
        continue;
      }
      String html = answer.asString();
      pages.add(new String[] {path, html});
      Matcher link = LINK.matcher(html);
      while (link.find()) {
        String to = link.group(1).replace("&amp;", "&").replaceAll("\\?$", "");
        if (!to.startsWith("/api/") && !to.contains(".pdf") && kinds.add(kind(to))) {
          open.add(to);
        }
      }
    }
    assertTrue(pages.size() >= 15, () -> pages.size() + " pages");
    return pages;
  }

  /** Whatever is numbered is of one kind. */
  private static String kind(String path) {
    return bare(path).replaceAll("/[A-Z0-9-]*[0-9][A-Z0-9-]*", "/1");
  }

  private static String bare(String path) {
    return path.replaceAll("[?#].*", "");
  }

  @Test
  void theCookieIsSecureWhereAProxyTookTheRequestByHttps() {
    String name = "somebody " + UUID.randomUUID();
    String word = accounts.add(ANNA, name, Role.READER);
    Response in =
        PageForm.of(given().get("/welcome"), "action=\"/welcome\"")
            .with("name", name)
            .with("word", word)
            .with("password", PASSWORD)
            .post(
                "/welcome", Map.of("X-Forwarded-Proto", "https", "X-Forwarded-Host", "localhost"));
    assertEquals(303, in.statusCode());
    assertTrue(
        in.getHeaders().getValues("Set-Cookie").stream()
            .anyMatch(set -> set.startsWith(KeyRing.COOKIE) && set.contains("; Secure; HTTPOnly")),
        in.getHeaders()::toString);
    in.then().header("Location", startsWith("https://"));
  }
}
