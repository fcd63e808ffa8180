package org.staywright.web.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.staywright.web.InTheBrowser;

/** From a seat and its sitters to a column that rises, in a real browser. */
class SeatInTheBrowserIT extends InTheBrowser {

  @ParameterizedTest
  @MethodSource("looks")
  void findsAColumnComparesItAndSeesItRise(int width, boolean script, ColorScheme colours) {
    String name = width + (script ? "" : "-without-script") + "-seat";
    try (BrowserContext context = context(width, script, colours)) {
      Page page = page(context);
      page.navigate(start + "seat");
      page.getByLabel("Height to be set").fill("90");
      if (!script) {
        press(page, "Rank the stock");
      }
      assertThat(page).hasURL(Pattern.compile("load\\.heightTravelMm=90"));
      assertThat(page.locator(".verdict").first()).containsText("times the empty seat");
      picture(page, name + "-1");

      Locator ticks = page.locator("table.ranking").first().getByLabel("Compare");
      ticks.nth(0).check();
      ticks.nth(1).check();
      press(page, "Compare the ticked");
      assertThat(page.locator("h1")).containsText("side by side");
      picture(page, name + "-2-compare");
      page.goBack();

      press(page, "Figures, curve, cautions");
      assertThat(page.locator(".cautions").first()).isVisible();
      picture(page, name + "-3-fit");
      press(page, "See it rise");
      assertThat(page.locator("figure .d-ghost").first()).isVisible();
      picture(page, name + "-4-in-time");
      assertEquals(List.of(), complaints);
    }
  }

  private static void press(Page page, String button) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button)).first().click();
  }
}
