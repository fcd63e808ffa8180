package org.staywright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Straight lift and force profile in a real browser, with script and without. */
class MechanismsInTheBrowserIT extends InTheBrowser {

  private static final String MOST = "at most (\\d+)\u00a0N ";

  @ParameterizedTest
  @MethodSource("atADesk")
  void ranksForALift(int width, boolean script, ColorScheme colours) {
    String name = width + (script ? "" : "-without-script") + "-lift";
    try (BrowserContext context = context(width, script, colours)) {
      Page page = page(context);
      page.navigate(start + "flap");
      page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Straight lift")).click();
      page.waitForLoadState();
      Locator verdict = page.locator(".verdict").first();
      assertThat(verdict).containsText("to lower");
      PageCharts charts = PageCharts.of(page.content());
      charts.holdsMost(verdict.textContent(), MOST + "to lower", "lowering, most in any corner");
      charts.holdsMost(verdict.textContent(), MOST + "to lift", "lifting, most in any corner");
      page.getByLabel("Travel", new Page.GetByLabelOptions().setExact(true)).fill("180");
      rank(page, script);
      assertThat(page).hasURL(Pattern.compile("/lift\\?.*load\\.travelMm=180"));
      assertThat(page.locator("#view")).containsText("180");
      picture(page, name + "-1");
      page.locator(".detail summary")
          .filter(new Locator.FilterOptions().setHasText("Figures, curve, cautions"))
          .first()
          .click();
      if (!script) {
        page.getByText("Show them").first().click();
      }
      assertThat(page.locator("figure svg").last()).isVisible();
      assertThat(page.locator(".cautions").first()).containsText("Prop the load");
      picture(page, name + "-2-detail");
      assertEquals(0, complaints.size(), complaints.toString());
    }
  }

  @ParameterizedTest
  @MethodSource("inTheHand")
  void readsAProfileFromAFile(int width, boolean script, ColorScheme colours) {
    String name = width + (script ? "" : "-without-script") + "-profile";
    try (BrowserContext context = context(width, script, colours)) {
      Page page = page(context);
      page.navigate(start + "profile");
      Locator verdict = page.locator(".verdict").first();
      assertThat(verdict).containsText("too much");
      PageCharts charts = PageCharts.of(page.content());
      charts.holdsMost(verdict.textContent(), MOST + "too much", "too much, most in any corner");
      charts.holdsMost(
          verdict.textContent(), MOST + "too little", "too little, most in any corner");
      page.getByLabel("Most that may be off").fill("200");
      rank(page, script);
      assertThat(page).hasURL(Pattern.compile("maxHandForceN=200"));
      picture(page, name + "-1");

      upload(page, "lengthMm,forceN\n400,x\n390,12\n");
      assertThat(page.locator("#table-fault")).containsText("Row 2 forceN is “x”");
      assertThat(page.getByLabel("Points")).hasValue(Pattern.compile("^400,385"));
      picture(page, name + "-2-fault");

      upload(page, "lengthMm,forceN\n400,380\n480,335\n550,270\n");
      assertThat(page.getByLabel("Points")).hasValue("400,380\n480,335\n550,270");
      assertThat(page.getByLabel("Most that may be off")).hasValue("200");
      assertThat(page.locator(".verdict").first()).containsText("N spring");

      page.getByLabel("Points").fill("400 380\n400 300\n550 wrong");
      rank(page, script);
      assertThat(page.locator("#f-load-points-fault"))
          .containsText("Points, no. 3, force is “wrong”");
      picture(page, name + "-3-wrong");
      complaints.removeIf(text -> text.contains("422"));
      assertEquals(0, complaints.size(), complaints.toString());
    }
  }

  private static void rank(Page page, boolean script) {
    if (!script) {
      page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Rank the stock"))
          .click();
    }
  }

  private static void upload(Page page, String csv) {
    page.locator("#table")
        .setInputFiles(
            new FilePayload("forces.csv", "text/csv", csv.getBytes(StandardCharsets.UTF_8)));
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Read file")).click();
    page.waitForLoadState();
  }
}
