package org.staywright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The side view as input, in a real browser. */
class SideViewInTheBrowserIT extends InTheBrowser {

  private static final Pattern FLAP_MOUNT = Pattern.compile("^Flap mount: x");

  @ParameterizedTest
  @ValueSource(ints = {1280, 390})
  void dragsAMountWhileVerdictAndBarsFollowAndTheRankingWaits(int width) {
    try (BrowserContext context = context(width, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      page.navigate(start + "flap");
      Locator mount = grip(page, FLAP_MOUNT);
      Locator x = page.locator("#f-mounts-movingMm-x");
      String before = x.inputValue();
      String bars = page.locator("#held").textContent();
      String rows = page.locator("table.ranking").first().textContent();
      mount.scrollIntoViewIfNeeded();
      BoundingBox box = mount.boundingBox();
      assertTrue(box.width >= 44 && box.height >= 44);
      page.mouse().move(box.x + 22, box.y + 22);
      page.mouse().down();
      page.mouse().move(box.x + 30, box.y + 20);
      page.mouse().move(box.x + 34, box.y + 18);
      assertNotEquals(before, x.inputValue());
      assertThat(page.locator("#held")).not().hasText(bars);
      assertEquals(rows, page.locator("table.ranking").first().textContent());
      picture(page, "drag-" + width);
      page.mouse().up();
      assertThat(page.locator("table.ranking").first()).not().hasText(rows);
      assertThat(page).hasURL(Pattern.compile("mounts\\.movingMm\\.x="));
      assertEquals(List.of(), complaints);

      page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Undo")).click();
      assertThat(x).hasValue(before);
      assertThat(page.locator("#held")).hasText(bars);
    }
  }

  @Test
  void movesAPointByKeysAndSaysWhereItIs() {
    try (BrowserContext context = context(1280, true, ColorScheme.DARK)) {
      Page page = page(context);
      page.navigate(start + "flap");
      Locator x = page.locator("#f-mounts-movingMm-x");
      page.locator(".grip").first().focus();
      page.keyboard().press("PageDown");
      Locator mount = grip(page, FLAP_MOUNT);
      assertThat(mount).isFocused();
      String before = x.inputValue();
      String name = mount.getAttribute("aria-label");
      page.keyboard().press("ArrowRight");
      page.keyboard().press("Shift+ArrowRight");
      assertNotEquals(before, x.inputValue());
      assertThat(mount).not().hasAttribute("aria-label", name);
      assertThat(page).hasURL(Pattern.compile("mounts\\.movingMm\\.x=" + x.inputValue()));
      assertThat(mount).isFocused();
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void turnsTheFlapByItsEdgeAndBySlider() {
    try (BrowserContext context = context(1280, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      page.navigate(start + "flap");
      page.getByLabel("Turned open by").focus();
      page.keyboard().press("End");
      assertThat(page.locator("#turned")).hasText(Pattern.compile("\\d{2,3}°"));
      picture(page, "turned-open");
      grip(page, Pattern.compile("^Edge of the flap")).focus();
      page.keyboard().press("Shift+ArrowDown");
      assertThat(grip(page, Pattern.compile("^Edge of the flap: \\d+°"))).isFocused();
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void showsASpringThatCannotReach() {
    try (BrowserContext context = context(1280, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      page.navigate(start + "flap");
      Locator mount = grip(page, Pattern.compile("^Frame mount"));
      mount.scrollIntoViewIfNeeded();
      BoundingBox box = mount.boundingBox();
      page.mouse().move(box.x + 22, box.y + 22);
      page.mouse().down();
      page.mouse().move(box.x + 22, box.y + 90);
      page.mouse().move(box.x + 22, box.y + 120);
      assertThat(page.locator("#view path.d-limit").first()).isVisible();
      assertThat(page.locator("#verdict .verdict")).hasClass(Pattern.compile("none"));
      picture(page, "out-of-reach");
      page.mouse().up();
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void offersUnsavedWorkAgain() {
    try (BrowserContext context = context(390, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      page.navigate(start + "flap");
      page.getByLabel("Mass", new Page.GetByLabelOptions().setExact(true)).fill("23");
      page.close();
      Page later = page(context);
      later.navigate(start + "flap");
      later.getByText("Go on with it").click();
      assertThat(later.getByLabel("Mass", new Page.GetByLabelOptions().setExact(true)))
          .hasValue("23");
      assertEquals(List.of(), complaints);
    }
  }

  private static Locator grip(Page page, Pattern name) {
    return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
  }
}
