package org.staywright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

/** Jobs saved, copied, changed in two tabs, ordered together and compared, in a real browser. */
class JobsInTheBrowserIT extends InTheBrowser {

  @ParameterizedTest
  @MethodSource("atADesk")
  void copiesAJobAndListsBothTogether(int width, boolean script, ColorScheme colours) {
    try (BrowserContext context = context(width, script, colours)) {
      Page page = page(context);
      choose(page, "Hatch at " + width);
      button(page, "Copy").click();
      assertThat(page.getByRole(AriaRole.HEADING).first()).hasText("Copy of Hatch at " + width);
      page.navigate(start + "jobs");
      picture(page, width + "-jobs");
      page.getByLabel("Tick Hatch at " + width).check();
      page.getByLabel("Tick Copy of Hatch at " + width).check();
      button(page, "One parts list for the ticked jobs").click();
      assertThat(page.locator("textarea")).hasValue(Pattern.compile("Copy of Hatch"));
      picture(page, width + "-common-list");
      String address = page.url();
      String before = page.locator("table.order").textContent();
      page.reload();
      assertThat(page.locator("table.order")).hasText(before);
      page.goBack();
      page.goForward();
      assertEquals(address, page.url());
      assertThat(page.locator("table.order")).hasText(before);
      assertEquals(List.of(), complaints);
    }
  }

  @ParameterizedTest
  @MethodSource("inTheHand")
  void aStaleEditInASecondTabLosesNothing(int width, boolean script, ColorScheme colours) {
    try (BrowserContext context = context(width, script, colours)) {
      Page one = page(context);
      choose(one, "Edited twice " + width);
      String job = one.url();
      one.getByText("Choose another").click();
      Page other = page(context);
      other.navigate(one.url());

      mass(one).fill("19");
      button(one, "Save changes").click();
      assertThat(one).hasURL(job);

      mass(other).fill("17.5");
      button(other, "Save changes").click();
      assertThat(other.getByRole(AriaRole.ALERT)).containsText("Nothing of yours is lost");
      assertThat(other.locator("table")).containsText("17.5");
      assertThat(other.locator("table")).containsText("19");
      picture(other, width + "-stale");
      other.getByText("Back to the form").click();
      assertThat(mass(other)).hasValue("17.5");
      other.goBack();
      button(other, "Overwrite with what is typed here").click();
      assertThat(other).hasURL(job);
      other.getByText("Choose another").click();
      assertThat(mass(other)).hasValue("17.5");
      complaints.removeIf(text -> text.contains("409"));
      assertEquals(List.of(), complaints);
    }
  }

  @ParameterizedTest
  @MethodSource("looks")
  void comparesFiveOfARanking(int width, boolean script, ColorScheme colours) {
    try (BrowserContext context = context(width, script, colours)) {
      Page page = page(context);
      page.navigate(start + "flap");
      Locator ticks = page.locator("table.ranking").first().locator(".took input");
      for (int i = 0; i < 5; i++) {
        ticks.nth(i).check();
      }
      button(page, "Compare the ticked").click();
      assertThat(page.locator(".rivals li")).hasCount(5);
      assertThat(page.locator(script ? "figure canvas" : "figure svg")).isVisible();
      assertTrue(page.locator("td.best").count() > 5);
      picture(page, width + "-compare-" + script);
      page.goBack();
      assertThat(page.locator("table.ranking").first()).isVisible();
      page.goForward();
      page.locator(".rivals button").nth(2).click();
      assertThat(page).hasURL(Pattern.compile("/jobs/\\d+$"));
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void asksBeforeItRemoves() {
    try (BrowserContext context = context(390, false, ColorScheme.LIGHT)) {
      Page page = page(context);
      choose(page, "To be removed");
      page.getByText("Remove this job").click();
      picture(page, "390-removal");
      page.getByText("Keep it").click();
      page.getByText("Remove this job").click();
      button(page, "Remove this job").click();
      assertThat(page).hasURL(Pattern.compile("/jobs$"));
      assertThat(page.getByText("To be removed")).hasCount(0);
    }
  }

  private void choose(Page page, String name) {
    page.navigate(start + "flap");
    page.getByLabel("Name of the job").fill(name);
    button(page, "Save").click();
    assertThat(page.getByRole(AriaRole.HEADING).first()).hasText(name);
    page.getByText("Rank the stock").click();
    page.locator("table.ranking button[name=pick][form=choose]").first().click();
    assertThat(page.locator("table.order")).isVisible();
  }

  private static Locator mass(Page page) {
    return page.getByLabel("Mass", new Page.GetByLabelOptions().setExact(true));
  }

  private static Locator button(Page page, String name) {
    return page.getByRole(
        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
  }
}
