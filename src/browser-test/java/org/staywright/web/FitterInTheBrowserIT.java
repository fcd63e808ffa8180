package org.staywright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A fitter's whole way: what was measured, what replaces it, what to order, what to take along. */
class FitterInTheBrowserIT extends InTheBrowser {

  /** WCAG 2.2, success criterion 2.5.5: 44 px; a hair less for rounding. */
  private static final double TARGET = 43.9;

  private final List<String> elsewhere = new ArrayList<>();

  private Page watched(BrowserContext context) {
    Page page = page(context);
    page.onRequest(
        request -> {
          if (!request.url().startsWith(start)) {
            elsewhere.add(request.url());
          }
        });
    return page;
  }

  @ParameterizedTest
  @MethodSource("inTheHand")
  void goesFromTheCalliperToTheOrderAndTheNote(int width, boolean script, ColorScheme colours) {
    try (BrowserContext context = context(width, script, colours)) {
      Page page = watched(context);
      page.navigate(start + "replace");
      question(page, "How thick are rod and tube?");
      page.locator("#f-rodDiameterMm-value").fill("8");
      page.locator("#f-tubeDiameterMm-value").fill("18");
      picture(page, width + "-replace-thickness");
      question(page, "How long is it?");
      page.locator("#f-extendedLengthMm-value").fill("440");
      page.locator("#f-strokeMm-value").fill("158");
      question(page, "What is at its ends?");
      page.locator("#f-rodEnd").selectOption("ball-socket");
      page.locator("#f-tubeEnd").selectOption("ball-socket");
      question(page, "Which force is printed on it?");
      page.locator("#f-printedForce-value").fill("350");
      question(page, "Anything else?");
      page.locator("#f-springCount").fill("2");
      large(page, width);
      button(page, "Find replacements").click();
      assertThat(page.locator("#result .verdict").first()).containsText("likely");
      picture(page, width + "-replace-answer");
      large(page, width);
      String note = page.locator("a[href^='/replace/note.pdf']").first().getAttribute("href");
      assertEquals(200, page.request().get(start + note.substring(1)).status());
      page.locator("a[href^='/replace/list']").first().click();
      assertThat(page.locator("table.order")).containsText("MT6-6YQ");
      picture(page, width + "-replace-order");
      assertEquals(List.of(), elsewhere);
      assertEquals(List.of(), complaints);
    }
  }

  @ParameterizedTest
  @MethodSource("atADesk")
  void findsTheForceAtTheFlapStepByStep(int width, boolean script, ColorScheme colours) {
    try (BrowserContext context = context(width, script, colours)) {
      Page page = watched(context);
      page.navigate(start + "replace");
      question(page, "How thick are rod and tube?");
      page.locator("#f-rodDiameterMm-value").fill("8");
      question(page, "Nobody knows the force?");
      button(page, "Step by step, with drawings").click();
      assertThat(page.getByRole(AriaRole.HEADING).first()).hasText("Find the force at the flap");
      page.locator("#f-flap-propped").check();
      page.locator("#f-springCount").fill("2");
      fill(page, "flap-frameMountMm", "100");
      fill(page, "flap-movingMountMm", "300");
      fill(page, "centresOpenMm", "265");
      fill(page, "flap-closedSlopeDeg", "0");
      fill(page, "flap-openSlopeDeg", "60");
      fill(page, "flap-handleMm", "800");
      fill(page, "flap-first-force", "80");
      fill(page, "flap-first-slopeDeg", "0");
      fill(page, "flap-second-force", "40");
      fill(page, "flap-second-slopeDeg", "60");
      picture(page, width + "-replace-flap");
      large(page, width);
      button(page, "Find replacements").click();
      assertThat(page.locator("#result")).containsText("The force was found at the flap");
      assertThat(page.locator("#f-rodDiameterMm-value")).hasValue("8");
      picture(page, width + "-replace-flap-answer");
      assertEquals(List.of(), elsewhere);
      assertEquals(List.of(), complaints);
    }
  }

  private static void fill(Page page, String id, String value) {
    page.locator("#f-" + id + "-value").fill(value);
  }

  private static void question(Page page, String title) {
    page.locator("summary", new Page.LocatorOptions().setHasText(title)).click();
  }

  private static Locator button(Page page, String name) {
    return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
  }

  /** Whatever a thumb must hit on a phone is large enough for it. */
  private static void large(Page page, int width) {
    if (width > 500) {
      return;
    }
    String targets =
        "main button:not(.hush), main .button, main summary, main select, main .tick,"
            + " main input:not([type=hidden]):not([type=checkbox])";
    for (Locator target : page.locator(targets).all()) {
      BoundingBox box = target.isVisible() ? target.boundingBox() : null;
      assertTrue(
          box == null || box.height >= TARGET && box.width >= TARGET,
          () -> target + " is " + box.width + " by " + box.height + " px");
    }
  }
}
