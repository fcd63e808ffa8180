package org.staywright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.AxeResults;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The pages against the rules of axe-core, WCAG 2.2 AA among them. */
class AccessInTheBrowserIT extends InTheBrowser {

  private static final List<String> PAGES =
      List.of(
          "",
          "flap",
          "lift",
          "profile",
          "seat",
          "centre",
          "mounts",
          "replace",
          "replace?all=true",
          "replace?all=true&rodDiameterMm.value=10&tubeDiameterMm.value=22&strokeMm.value=150",
          "parts",
          "parts?family=seat-column",
          "jobs",
          "jobs/1",
          "parts-list?job=1&job=2",
          "stock",
          "batches",
          "replace/flap",
          "flap/ideal",
          "flap/rejected?reason=too-short-open",
          "flap/why?partNumber=99P-CM8",
          "jobs/1/removal",
          "stock/columns",
          "stock/revisions/1",
          "backup",
          "flap?load.massKg=x",
          "no-such-page");

  /** Buttons that lead on from the bench: one part in full, and as it moves. */
  private static final List<List<String>> WAYS =
      List.of(
          List.of("Figures, curve, cautions"),
          List.of("Figures, curve, cautions", "See it move, and how sure it is"),
          List.of("Choose"),
          List.of("Find the mounts", "Find"));

  /** With a column that is not known, one in inches, and a row at fault. */
  private static final FilePayload FILE =
      new FilePayload(
          "springs.csv",
          "text/csv",
          ("part_number,family,finish,rod_thread,tube_thread,mounting,rod_diameter_mm,"
                  + "tube_diameter_mm,stroke_in,extended_length_mm,force_class_n,progression,"
                  + "lead_time_days,shelf\n"
                  + "TRY-0002,gas-spring,zinc,M8,M8,rod-down,8,18,6.25,380,400,1.35,5,B12\n"
                  + "TRY-0003,gas-spring,zinc,M8,M8,rod-down,8,18,-1,380,400,1.35,5,B13\n")
              .getBytes(StandardCharsets.UTF_8));

  private static final List<String> ALL =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

  /** What depends on width and colours; all else was seen at the first look. */
  private static final List<String> LOOKS = List.of("color-contrast", "target-size");

  @Test
  void findsNothingWrongOnAnyPage() {
    look(1280, ColorScheme.LIGHT, axe -> axe.withTags(ALL));
  }

  @Test
  @Tag("full")
  void norOnANarrowAndDarkOne() {
    look(390, ColorScheme.DARK, axe -> axe.withRules(LOOKS));
  }

  private void look(int width, ColorScheme colours, UnaryOperator<AxeBuilder> rules) {
    List<String> wrong = new ArrayList<>();
    try (BrowserContext context = context(width, true, colours)) {
      // One after the other in one page: a new one would be a process more each time.
      Page page = page(context);
      for (String path : PAGES) {
        page.navigate(start + path);
        look(page, path, rules, wrong);
      }
      for (List<String> way : WAYS) {
        page.navigate(start + "flap");
        for (String button : way) {
          page.getByRole(
                  AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button).setExact(true))
              .first()
              .click();
        }
        look(page, String.join(", ", way), rules, wrong);
      }
      page.navigate(start + "flap");
      String job = page.locator("a[href*='/rejected?']").first().getAttribute("href");
      page.navigate(start + job.replaceFirst(".*\\?", "compare?pick=1x99P-CM8&pick=1xR8S-F54&"));
      look(page, "compare", rules, wrong);
      page.navigate(start + "stock");
      page.locator("input[type=file]").setInputFiles(FILE);
      page.getByText("Read it (changes nothing)").click();
      page.getByText("Its first rows as understood").waitFor();
      look(page, "a file as understood", rules, wrong);
      picture(page, "import-" + width);
      page.navigate(start + "parts");
      page.locator("main table a").first().click();
      look(page, "a part", rules, wrong);
    }
    assertEquals(List.of(), wrong);
  }

  private static void look(
      Page page, String what, UnaryOperator<AxeBuilder> rules, List<String> wrong) {
    page.waitForLoadState();
    // No page holds another's frame, so that one run sees it all, and sooner.
    AxeRunOptions wanted = new AxeRunOptions();
    // What is right need not be told element by element.
    wanted.setResultTypes(List.of("violations"));
    AxeBuilder axe = new AxeBuilder(page).options(wanted).setLegacyMode(true);
    AxeResults found = rules.apply(axe).analyze();
    assertFalse(found.getPasses().isEmpty(), what + ": no rule had anything to look at");
    found
        .getViolations()
        .forEach(
            rule -> wrong.add(what + ": " + rule.getId() + " " + rule.getNodes().get(0).getHtml()));
  }
}
