package org.staywright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** From the first page to an answer of one's own, by keyboard alone. */
class FirstAnswerInTheBrowserIT extends InTheBrowser {

  @ParameterizedTest
  @ValueSource(ints = {1280, 390})
  void takesSixInputsAndLessThanAMinute(int width) {
    try (BrowserContext context = context(width, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      Instant began = Instant.now();
      page.navigate(start);
      tabTo(page, "a.way:has(use[href$='level-lid'])");
      page.keyboard().press("Enter");
      assertThat(page.locator(".verdict").first()).isVisible();
      String[][] inputs = {
        {"load.massKg", "17"},
        {"load.centreOfMassMm.x", "400"},
        {"load.centreOfMassMm.y", "10"},
        {"load.handleMm.x", "780"},
        {"load.openingAngleDeg", "78"}
      };
      for (String[] input : inputs) {
        tabTo(page, "[name='" + input[0] + "']");
        page.keyboard().press("Control+A");
        page.keyboard().type(input[1]);
      }
      page.keyboard().press("Tab");
      assertThat(page).hasURL(Pattern.compile("load\\.massKg=17.*load\\.openingAngleDeg=78"));
      Locator verdict = page.locator(".verdict").first();
      assertThat(verdict).containsText("N spring");
      Duration took = Duration.between(began, Instant.now());
      System.out.println("first answer after " + took.toMillis() + " ms");
      assertTrue(took.compareTo(Duration.ofSeconds(60)) < 0, took.toString());
      picture(page, width + "-first-answer");
      assertEquals(List.of(), complaints);
    }
  }
}
