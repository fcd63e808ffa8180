package org.staywright.web.mounts;

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
import org.staywright.web.InTheBrowser;

/** The finder of mounts in a real browser: zones as input, and a search under way. */
class MountsInTheBrowserIT extends InTheBrowser {

  /**
   * By every number of springs and with what it must do in time, which is worked out at every step:
   * long enough to be stopped on a quick machine too.
   */
  private static final String LONG =
      "mounts?load.type=hinged-flap&load.massKg=18&load.centreOfMassMm.x=410"
          + "&load.centreOfMassMm.y=15&load.handleMm.x=800&load.handleMm.y=0"
          + "&load.opens=counterclockwise&load.openingAngleDeg=80&mounts.frameMm.x=15"
          + "&mounts.frameMm.y=-65&mounts.movingMm.x=360&mounts.movingMm.y=-11"
          + "&springCounts=1&springCounts=2&springCounts=3&springCounts=4&springCounts=5"
          + "&springCounts=6&springCounts=7&springCounts=8"
          + "&requirements.maxStopSpeedMmPerS=2000&requirements.maxOpeningTimeS=20";

  @ParameterizedTest
  @ValueSource(ints = {1280, 390})
  void dragsCornersAndWholeZonesWhileTheFieldsFollow(int width) {
    try (BrowserContext context = context(width, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      page.navigate(start + "mounts");
      String corner = "^Frame mount: upper right corner";
      drag(page, grip(page, corner), 30, 0);
      Locator right = page.locator("#f-zones-frameMm-x-to");
      assertNotEquals("240", right.inputValue());
      assertTrue(Double.parseDouble(right.inputValue()) > 240, right.inputValue());
      assertThat(page.locator("#f-zones-frameMm-x")).hasValue("-80");
      String before = page.locator("#view svg").innerHTML();
      drag(page, grip(page, "^Flap mount: its whole zone"), 20, 10);
      assertThat(page.locator("#f-zones-movingMm-x")).not().hasValue("95");
      int from = Integer.parseInt(page.locator("#f-zones-movingMm-x").inputValue());
      assertThat(page.locator("#f-zones-movingMm-x-to")).hasValue(Integer.toString(from + 345));
      page.waitForCondition(() -> !before.equals(page.locator("#view svg").innerHTML()));
      picture(page, "zones-" + width);
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void movesZonesByKeysMakesALineAndUndoesIt() {
    try (BrowserContext context = context(1280, true, ColorScheme.DARK)) {
      Page page = page(context);
      page.navigate(start + "mounts");
      Locator low = grip(page, "^Flap mount: lower left corner");
      low.focus();
      page.keyboard().press("ArrowUp");
      assertThat(page.locator("#f-zones-movingMm-y")).hasValue("-60");
      page.keyboard().press("Shift+ArrowUp");
      page.keyboard().press("Shift+ArrowUp");
      // A corner goes no farther than the other: what is left is a line.
      assertThat(page.locator("#f-zones-movingMm-y")).hasValue("0");
      assertThat(page.locator("#f-zones-movingMm-y-to")).hasValue("0");
      assertThat(low).isFocused();
      assertThat(grip(page, "^Flap mount: lower left corner.*y 0 mm")).isVisible();
      Locator undo = page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Undo"));
      undo.click();
      undo.click();
      assertThat(page.locator("#f-zones-movingMm-y")).hasValue("-60");
      assertThat(grip(page, "^Flap mount: lower left corner.*y -60 mm")).isVisible();
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void aFieldMovesTheDrawingAndAKeepOutIsAddedAndDragged() {
    try (BrowserContext context = context(1280, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      page.navigate(start + "mounts");
      page.locator("#f-zones-frameMm-x").fill("-3 in");
      assertThat(grip(page, "^Frame mount: lower left corner.*x -76.2,")).isVisible();
      page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Add a keep-out"))
          .click();
      Locator whole = grip(page, "^Keep-out 1: its whole zone");
      assertThat(whole).isVisible();
      Locator text = page.locator("#f-zones-keepOutMm");
      assertThat(text).isVisible();
      String first = text.inputValue();
      drag(page, whole, 0, 60);
      assertNotEquals(first, text.inputValue());
      assertThat(page.locator("#view .d-keep-out").first()).isVisible();
      picture(page, "zones-keep-out");
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void aZoneThatIsMendedIsDrawnAndCanBeGripped() {
    try (BrowserContext context = context(1280, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      page.navigate(
          start
              + LONG
              + "&zones.frameMm.x=150&zones.frameMm.x=-50&zones.frameMm.y=-250&zones.frameMm.y=-50"
              + "&zones.movingMm.x=200&zones.movingMm.x=400&zones.movingMm.y=-100"
              + "&zones.movingMm.y=100");
      assertThat(page.locator("#view svg")).hasCount(0);
      page.locator("#f-zones-frameMm-x").fill("-150");
      grip(page, "^Frame mount: its whole zone").focus();
      page.keyboard().press("ArrowRight");
      assertThat(page.locator("#view .d-zone").first()).isVisible();
      assertThat(page.locator("#f-zones-frameMm-x")).hasValue("-145");
      assertThat(page.locator("#f-zones-frameMm-x-to")).hasValue("-45");
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void writesInchesWithACommaWhereThePageDoes() {
    try (BrowserContext context = context(1280, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      page.navigate(start + "mounts?units=inch-pound&lang=de");
      page.locator(".grip").nth(2).focus();
      page.keyboard().press("ArrowRight");
      assertThat(page.locator("#f-zones-frameMm-x")).hasValue(Pattern.compile("-\\d,\\d+|-3"));
      double low = inches(page.locator("#f-zones-frameMm-x"));
      double high = inches(page.locator("#f-zones-frameMm-x-to"));
      // Onto a quarter of an inch; it was 320 mm wide and stays so.
      assertEquals(0, low * 4 - Math.rint(low * 4), 1e-9);
      assertEquals(320 / 25.4, high - low, 1e-3);
      assertThat(page.locator(".grip").nth(2)).hasAttribute("aria-label", Pattern.compile(" in$"));
      page.locator("button", new Page.LocatorOptions().setHasText("Suchen")).first().click();
      assertThat(page.locator(".arrangements > li").first()).isVisible();
      assertEquals(List.of(), complaints);
    }
  }

  private static double inches(Locator field) {
    return Double.parseDouble(field.inputValue().replace(',', '.'));
  }

  @Test
  void aSearchTellsHowFarItIsAndWhatItHadFoundWhenItWasStopped() {
    try (BrowserContext context = context(1280, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      page.navigate(start + LONG);
      page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Find").setExact(true))
          .click();
      assertThat(page.locator("#searched")).not().hasAttribute("value", "0");
      page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Stop")).click();
      assertThat(page.getByText("Stopped: this is what had been found until then")).isVisible();
      assertThat(page.locator(".arrangements > li").first()).isVisible();
      assertThat(page.locator("#view .d-reach").first()).isVisible();
      picture(page, "search-stopped");
      assertEquals(List.of(), complaints);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1280, 390})
  void whatIsFoundStandsInTheDrawingUntilTheZonesChange(int width) {
    try (BrowserContext context = context(width, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      page.navigate(start + "mounts");
      page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Find").setExact(true))
          .click();
      assertThat(page.locator(".arrangements > li").first()).isVisible();
      int cards = page.locator(".arrangements > li").count();
      assertEquals(cards, page.locator("#view path.d-reach").count());
      picture(page, "mounts-found-" + width);
      assertThat(page.locator("#zones-changed")).isHidden();
      grip(page, "^Frame mount: its whole zone").focus();
      page.keyboard().press("ArrowDown");
      assertThat(page.locator("#zones-changed")).isVisible();
      assertThat(page.locator("#view path.d-reach")).hasCount(0);
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void findsWithoutScriptThroughTheFields() {
    try (BrowserContext context = context(390, false, ColorScheme.LIGHT)) {
      Page page = page(context);
      page.navigate(start + "mounts");
      page.locator("#f-zones-frameMm-x-to").fill("200");
      page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Find").setExact(true))
          .click();
      assertThat(page.locator(".arrangements > li").first()).isVisible();
      assertThat(page.locator("#f-zones-frameMm-x-to")).hasValue("200");
      assertThat(page.locator("#view .d-zone").first()).isVisible();
    }
  }

  private static void drag(Page page, Locator knob, int right, int down) {
    knob.scrollIntoViewIfNeeded();
    BoundingBox box = knob.boundingBox();
    assertTrue(box.width >= 44 && box.height >= 44);
    page.mouse().move(box.x + 22, box.y + 22);
    page.mouse().down();
    page.mouse().move(box.x + 22 + right / 2.0, box.y + 22 + down / 2.0);
    page.mouse().move(box.x + 22 + right, box.y + 22 + down);
    page.mouse().up();
  }

  private static Locator grip(Page page, String name) {
    return page.getByRole(
        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(Pattern.compile(name)));
  }
}
