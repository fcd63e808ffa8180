package org.staywright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Three people's ways with hands on the keys only; a link passed on; paper. */
class KeyboardInTheBrowserIT extends InTheBrowser {

  @ParameterizedTest
  @ValueSource(ints = {1280, 390})
  void leadsTheDesignerFromTheDrawingToTheOrder(int width) {
    try (BrowserContext context = context(width, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      page.navigate(start);
      press(page, ".doors a[href='/flap']");
      String before = page.locator("#f-load-handleMm-x").inputValue();
      page.waitForLoadState();
      tabTo(page, ".grip");
      while (!(boolean) page.evaluate("document.activeElement.ariaLabel.startsWith('Handle')")) {
        page.keyboard().press("PageDown");
      }
      page.keyboard().press("ArrowLeft");
      assertThat(page.locator("#f-load-handleMm-x")).not().hasValue(before);
      assertThat(page).hasURL(Pattern.compile("handleMm\\.x=795"));
      tabTo(page, "#job input[name='load.opens']");
      page.keyboard().press("ArrowRight");
      assertThat(page).hasURL(Pattern.compile("load\\.opens=clockwise"));
      page.keyboard().press("ArrowLeft");
      assertThat(page).hasURL(Pattern.compile("load\\.opens=counterclockwise"));
      assertThat(page.locator(".verdict").first()).containsText("N spring");
      press(page, ".alike summary");
      assertThat(page.locator(".alike li").first()).isVisible();
      press(page, "button[name=pick][form=choose]");
      assertThat(page.locator("table.order tfoot")).containsText("EUR");
      tabTo(page, "a[href$='parts-list.pdf']");
      picture(page, "keys-" + width + "-order");
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void leadsTheFitterFromTheCalliperToTheReplacement() {
    try (BrowserContext context = context(1280, true, ColorScheme.DARK)) {
      Page page = page(context);
      page.navigate(start + "replace?all=true");
      String[][] measures = {
        {"rodDiameterMm", "10"}, {"tubeDiameterMm", "22"}, {"strokeMm", "150"}
      };
      for (String[] each : measures) {
        tabTo(page, "input[name^='" + each[0] + "']");
        page.keyboard().press("Control+A");
        page.keyboard().type(each[1]);
      }
      page.keyboard().press("Enter");
      assertThat(page).hasURL(Pattern.compile("strokeMm.*=150"));
      press(page, "#result a[href*='part']");
      assertThat(page.locator("main")).containsText("10/22");
      picture(page, "keys-1280-replacement");
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void aLinkPassedOnShowsTheSameToSomebodyElse() {
    try (BrowserContext one = context(1280, true, ColorScheme.LIGHT);
        BrowserContext other = context(390, false, ColorScheme.LIGHT)) {
      Page page = page(one);
      page.navigate(start + "flap");
      page.locator("#f-load-massKg").fill("21");
      assertThat(page).hasURL(Pattern.compile("load\\.massKg=21"));
      String verdict = page.locator(".verdict").first().textContent();
      Page shared = page(other);
      shared.navigate(page.url());
      assertThat(shared.locator(".verdict").first()).hasText(verdict);
      assertEquals("21", shared.locator("#f-load-massKg").inputValue());
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void paperShowsVerdictDrawingAndRowsButNoControls() {
    try (BrowserContext context = context(1280, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      page.navigate(start + "flap");
      assertThat(page.locator("figure.chart canvas").first()).isVisible();
      page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
      assertThat(page.locator(".verdict").first()).isVisible();
      assertThat(page.locator("#view svg")).isVisible();
      assertThat(page.locator("figure.chart > svg").first()).isVisible();
      assertThat(page.locator("figure.chart canvas").first()).isHidden();
      assertThat(page.locator("table.ranking").first()).isVisible();
      assertThat(page.locator("#job")).isHidden();
      assertThat(page.locator("button:visible")).hasCount(0);
      picture(page, "paper-flap");
    }
  }

  private static void press(Page page, String selector) {
    tabTo(page, selector);
    page.keyboard().press("Enter");
  }
}
