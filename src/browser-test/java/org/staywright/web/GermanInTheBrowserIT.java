package org.staywright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The three people's ways in German, in a real browser, and no English left on them. */
class GermanInTheBrowserIT extends InTheBrowser {

  /** Words that hardly any English sentence does without and no German one has. */
  private static final Pattern ENGLISH =
      Pattern.compile(
          "\\b(?:[Tt]he|[Aa]nd|[Oo]f|[Ww]ith|[Ff]rom|[Bb]y|[Tt]o|[Ff]or|[Ii]s|[Aa]re|[Nn]ot|[Nn]o"
              + "|[Oo]r|[Aa]t|[Ii]t|[Tt]his|[Ee]ach|[Ff]lap|[Ss]prings?|[Ff]orce|[Mm]ounts?|[Hh]andle"
              + "|[Oo]pen|[Oo]pening|[Cc]losed?|[Cc]losing|[Ss]troke|[Ll]ength|[Pp]rice|[Ss]tock"
              + "|[Pp]arts|[Jj]obs?|[Ss]eat|[Cc]hoose|[Cc]ompare|[Ss]how|[Yy]es)\\b");

  /** Parts as the range describes them; codes, bounds and examples of a file's cells. */
  private static final Pattern OWN_WORDS =
      Pattern.compile(
          "(?:Gas spring|Coil spring|Locking strut|Traction spring|Seat column|Damper) \\d.*?"
              + "(?=\\. |$)|[a-z-]+(?: \\| [a-z-]+)+|[>≥] \\S+ and [<≤] \\S+"
              + "|zum Beispiel \\S+");

  private static final Pattern NAMES = Pattern.compile("\"name\" ?: ?\"([^\"]*)\"");

  /** Jobs are called what their people called them. */
  private final Set<String> names = new HashSet<>();

  /** What is seen and what a screen reader says, but for what is marked as another language. */
  private static final String SAID =
      """
      () => {
        const said = [document.title];
        const walk = node => {
          if (node.nodeType === Node.TEXT_NODE) { said.push(node.textContent.trim()); return; }
          if (node.nodeType !== Node.ELEMENT_NODE) return;
          if (['SCRIPT', 'STYLE', 'TEMPLATE', 'CODE'].includes(node.tagName.toUpperCase())) return;
          if (node.lang && node.lang !== 'de') return;
          for (const name of ['aria-label', 'title', 'placeholder', 'alt']) {
            const value = node.getAttribute(name);
            if (value) said.push(value);
          }
          node.childNodes.forEach(walk);
        };
        walk(document.body);
        return said.filter(text => text);
      }
      """;

  @ParameterizedTest
  @MethodSource("widths")
  void leadsTheDesignerFromTheLoadToTheJobSheet(int width, ColorScheme colours) {
    try (BrowserContext context = context(width, true, colours)) {
      List<String> left = new ArrayList<>();
      Page page = german(context);
      look(page, width, "start", left);
      for (String path : List.of("lift", "profile", "seat", "centre", "mounts", "flap")) {
        page.navigate(start + path);
        look(page, width, path, left);
      }
      page.getByLabel("Masse", new Page.GetByLabelOptions().setExact(true)).fill("18,5");
      assertThat(page).hasURL(Pattern.compile("load\\.massKg=18"));
      assertThat(page.locator(".verdict").first()).containsText("Feder");
      look(page, width, "ranking", left);
      button(page, "Kennwerte, Kurve, Warnungen");
      look(page, width, "fit", left);
      button(page, "In Bewegung sehen, und wie sicher es ist");
      look(page, width, "in-time", left);
      page.goBack();
      button(page, "Dieses wählen und Stückliste zeigen");
      assertThat(page).hasURL(Pattern.compile("/jobs/\\d+$"));
      look(page, width, "job", left);
      assertEquals(List.of(), left);
      assertEquals(List.of(), complaints);
    }
  }

  @ParameterizedTest
  @MethodSource("widths")
  void leadsTheBuyerFromTheJobsToTheOrder(int width, ColorScheme colours) {
    try (BrowserContext context = context(width, true, colours)) {
      List<String> left = new ArrayList<>();
      Page page = german(context);
      for (String path : List.of("jobs", "jobs/1", "parts-list?job=1&job=2", "stock")) {
        page.navigate(start + path);
        look(page, width, path.replaceAll("\\W+", "-"), left);
      }
      assertEquals(List.of(), left);
      assertEquals(List.of(), complaints);
    }
  }

  @ParameterizedTest
  @MethodSource("widths")
  void leadsTheFitterFromTheMeasuresToTheSwap(int width, ColorScheme colours) {
    try (BrowserContext context = context(width, true, colours)) {
      List<String> left = new ArrayList<>();
      Page page = german(context);
      page.navigate(start + "replace?all=true");
      look(page, width, "replace", left);
      page.navigate(
          start
              + "replace?rodDiameterMm.value=8&rodDiameterMm.plusMinus=0.1&tubeDiameterMm.value=18"
              + "&tubeDiameterMm.plusMinus=0.3&strokeMm.value=160&strokeMm.plusMinus=3");
      assertThat(page.locator("main")).containsText("Passt ohne Änderung");
      look(page, width, "replacements", left);
      page.navigate(start + "parts");
      look(page, width, "parts", left);
      page.locator("main table a").first().click();
      assertThat(page.getByText("Datenblatt (PDF)")).isVisible();
      look(page, width, "part", left);
      assertEquals(List.of(), left);
      assertEquals(List.of(), complaints);
    }
  }

  private Page german(BrowserContext context) {
    Page page = page(context);
    String jobs = context.request().get(start + "api/v1/jobs?size=100").text();
    NAMES.matcher(jobs).results().map(name -> name.group(1)).forEach(names::add);
    assertTrue(names.size() > 1, jobs);
    page.navigate(start + "?lang=de");
    assertEquals("de", page.locator("html").getAttribute("lang"));
    return page;
  }

  private static void button(Page page, String name) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name)).first().click();
  }

  private void look(Page page, int width, String name, List<String> left) {
    page.waitForLoadState();
    assertEquals("de", page.locator("html").getAttribute("lang"), name);
    List<?> said = (List<?>) page.evaluate(SAID);
    assertTrue(said.size() > 10, name + " says hardly anything");
    for (Object text : said) {
      String rest = (String) text;
      for (String own : names) {
        rest = rest.replace(own, "");
      }
      rest = OWN_WORDS.matcher(rest).replaceAll("");
      List<String> words = ENGLISH.matcher(rest).results().map(MatchResult::group).toList();
      if (!words.isEmpty()) {
        left.add(name + ": " + text + " " + words);
      }
    }
    picture(page, "de-" + width + "-" + name);
  }
}
