package org.staywright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The lid from its form to datasheet and parts list, in a real browser. */
class LidInTheBrowserIT extends InTheBrowser {

  @ParameterizedTest
  @MethodSource("looks")
  void goesFromFormToDatasheetAndPartsList(int width, boolean script, ColorScheme colours) {
    String name = width + (script ? "" : "-without-script") + "-" + colours;
    try (BrowserContext context = context(width, script, colours)) {
      Page page = page(context);
      page.navigate(start);
      picture(page, name + "-1-start");
      page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Hold or move a flap"))
          .click();
      // What is typed before there is a script follows no ranking.
      page.waitForLoadState();
      Locator verdict = page.locator(".verdict").first();
      assertThat(verdict).containsText("N spring");
      String before = verdict.textContent();

      page.getByLabel("Mass", new Page.GetByLabelOptions().setExact(true)).fill("26");
      if (!script) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Rank the stock"))
            .click();
      }
      assertThat(page.locator(".verdict").first()).not().hasText(before);
      assertThat(page).hasURL(Pattern.compile("load\\.massKg=26"));
      picture(page, name + "-2-ranking");

      page.locator("table.ranking a.part, table.ranking .part a").first().click();
      assertThat(page.getByText("Datasheet (PDF)")).isVisible();
      String sheet = page.getByText("Datasheet (PDF)").getAttribute("href");
      assertEquals(
          "application/pdf",
          context
              .request()
              .get(page.url().replaceFirst("/parts/.*", sheet))
              .headers()
              .get("content-type"));
      picture(page, name + "-3-part");
      page.goBack();

      page.getByRole(
              AriaRole.BUTTON, new Page.GetByRoleOptions().setName(Pattern.compile("^Choose")))
          .first()
          .click();
      assertThat(
              page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setName("Parts list")))
          .isVisible();
      assertThat(page.locator("tfoot")).containsText("EUR");
      picture(page, name + "-4-parts-list");
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void saysAFaultBesideItsFieldWhileTyping() {
    try (BrowserContext context = context(1280, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      page.navigate(start + "flap");
      Locator mass = page.getByLabel("Mass", new Page.GetByLabelOptions().setExact(true));
      mass.fill("-3");
      assertThat(page.locator("#f-load-massKg-fault")).containsText("give a number > 0");
      assertThat(mass).hasValue("-3");
      assertThat(mass).isFocused();
      mass.fill("18");
      assertThat(page.locator("#f-load-massKg-fault")).isEmpty();
      assertThat(page.locator(".verdict").first()).containsText("N spring");
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void opensTheDetailsOfARowInPlace() {
    try (BrowserContext context = context(390, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      page.navigate(start + "flap");
      page.locator(".alike summary").first().click();
      assertThat(page.locator(".alike li").first()).isVisible();
      page.locator(".detail summary")
          .filter(new Locator.FilterOptions().setHasText("Figures"))
          .first()
          .click();
      assertThat(page.locator(".load figure canvas").first()).isVisible();
      assertThat(page.locator(".load .cautions")).containsText("Never open");
      picture(page, "390-details");
      assertEquals(List.of(), complaints);
    }
  }
}
