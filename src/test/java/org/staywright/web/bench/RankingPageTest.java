package org.staywright.web.bench;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.web.PageForm;
import org.staywright.web.job.JobPagesTest;
import org.staywright.web.shell.PagesTest;

/**
 * What stands on a ranking besides its rows: groups of like parts, and the lists of what is out.
 */
@QuarkusTest
@Tag("server")
class RankingPageTest {

  private static final Pattern TALLY =
      Pattern.compile("<a href=\"(/flap/rejected\\?[^\"]+)\"[^>]*>([0-9 ,.]+): ");

  @Test
  void aCountOfTheRejectedOpensItsListPageByPage() {
    String page = PagesTest.lid().get("/flap").asString();
    Matcher tally = TALLY.matcher(page);
    List<Integer> totals = new ArrayList<>();
    while (tally.find()) {
      int total = Integer.parseInt(tally.group(2).replaceAll("[^0-9]", ""));
      String list =
          RestAssured.given()
              .urlEncodingEnabled(false)
              .get(tally.group(1).replace("&amp;", "&"))
              .then()
              .statusCode(200)
              .body(containsString(">" + total + " are out"))
              .extract()
              .asString();
      assertEquals(Math.min(25, total), occurrences(list, "scope=\"row\""));
      totals.add(total);
    }
    assertTrue(totals.size() >= 2, "too few reasons: " + totals);
    PagesTest.lid()
        .queryParam("reason", "too-short-open")
        .queryParam("page", "2")
        .get("/flap/rejected")
        .then()
        .statusCode(200)
        .body(containsString("rel=\"prev\""))
        .body(containsString("; the limit is "));
  }

  @Test
  void noReasonOfThatNameIsNotFoundAndAPageBeyondIsTheLast() {
    PagesTest.lid().queryParam("reason", "dislike").get("/flap/rejected").then().statusCode(404);
    PagesTest.lid().get("/flap/rejected").then().statusCode(404);
    PagesTest.lid()
        .queryParam("reason", "too-short-open")
        .queryParam("page", "99999")
        .get("/flap/rejected")
        .then()
        .statusCode(200)
        .body(not(containsString("rel=\"next\"")));
  }

  @Test
  void likePartsShareARowAndNoPartStandsTwice() {
    String page = PagesTest.lid().queryParam("limit", "8").get("/flap").asString();
    String fits =
        page.substring(page.indexOf("id=\"fits\""), page.indexOf("<details class=\"list\""));
    assertTrue(occurrences(fits, "class=\"alike\"") > 0, "nothing is alike");
    assertEquals(8, occurrences(fits, "class=\"n rank\""));
    Matcher pick =
        Pattern.compile("form=\"choose\" name=\"pick\" value=\"([^\"]+)\"").matcher(fits);
    List<String> picks = new ArrayList<>();
    while (pick.find()) {
      picks.add(pick.group(1));
    }
    assertTrue(picks.size() > 8);
    assertEquals(picks.size(), new HashSet<>(picks).size());
  }

  @Test
  void theViewOfATableOfForcesIsAChartToTakeAway() {
    String page = RestAssured.given().get("/profile").asString();
    String pick = PageForm.first(JobPagesTest.PICK, page);
    String[] rows =
        RestAssured.given()
            .queryParam("pick", pick)
            .get("/profile/fit/asked-force.csv")
            .then()
            .statusCode(200)
            .extract()
            .asString()
            .split("\\R");
    assertTrue(rows[0].contains("asked") && rows[0].contains("coming out"), rows[0]);
    String last = rows[rows.length - 1];
    assertTrue(last.startsWith("550") && last.contains("275"), last);
  }

  private static int occurrences(String text, String part) {
    return text.split(Pattern.quote(part), -1).length - 1;
  }
}
