package org.staywright.web.time;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Clock;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.staywright.web.InTheBrowser;

/** A motion played, by mouse and by keyboard, with less motion and without script. */
class InTimeInTheBrowserIT extends InTheBrowser {

  private Page inTime(BrowserContext context) {
    Page page = page(context);
    page.navigate(start + "flap");
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Figures, curve, cautions"))
        .first()
        .click();
    page.getByRole(
            AriaRole.BUTTON, new Page.GetByRoleOptions().setName("See it move, and how sure it is"))
        .click();
    return page;
  }

  private static String pose(Page page) {
    return page.locator("g[data-track]").first().getAttribute("transform");
  }

  @Test
  void playsToTheEndAndFollowsItsSlider() {
    try (BrowserContext context = context(1280, true, ColorScheme.LIGHT)) {
      Page page = inTime(context);
      // Time goes by when it is told to: else a busy machine might see no Pause before the end.
      page.clock().install(new Clock.InstallOptions().setTime(0));
      page.clock().pauseAt(1000);
      String first = pose(page);
      Locator play = page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Play"));
      play.press("Enter");
      assertThat(page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Pause")))
          .isVisible();
      page.clock().runFor(60_000);
      Locator slider = page.locator(".player").getByRole(AriaRole.SLIDER);
      assertThat(slider).hasValue("1");
      assertThat(play).isVisible();
      String last = pose(page);
      assertNotEquals(first, last);
      slider.press("Home");
      assertEquals(first, pose(page));
      slider.press("ArrowRight");
      assertThat(slider).hasValue("0.005");
      picture(page, "1280-in-time");
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void stepsThroughStillsWhereLessMotionIsWanted() {
    try (BrowserContext context = context(390, true, ColorScheme.DARK)) {
      Page page = inTime(context);
      page.emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
      page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Play")).click();
      assertThat(page.locator(".player").getByRole(AriaRole.SLIDER)).hasValue("0.1");
      picture(page, "390-in-time");
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void isAStillWithATableWithoutScript() {
    try (BrowserContext context = context(390, false, ColorScheme.LIGHT)) {
      Page page = inTime(context);
      assertThat(page.locator(".player")).isHidden();
      assertThat(page.locator("figure .d-ghost").first()).isVisible();
      assertThat(page.getByText("The motion in figures").first()).isVisible();
      picture(page, "390-without-script-in-time");
      assertEquals(List.of(), complaints);
    }
  }
}
