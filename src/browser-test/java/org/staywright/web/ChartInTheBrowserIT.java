package org.staywright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Charts read off by pointer and by keyboard, and taken away, with script and without. */
class ChartInTheBrowserIT extends InTheBrowser {

  private static Locator fit(Page page, String start) {
    page.navigate(start + "flap");
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Figures, curve, cautions"))
        .first()
        .click();
    return page.locator("figure.chart").first();
  }

  private static String told(Locator chart) {
    return chart.getByRole(AriaRole.SLIDER).getAttribute("aria-valuetext");
  }

  @ParameterizedTest
  @CsvSource({"1280, LIGHT", "390, DARK"})
  void isReadOffByPointerAndByKeyboard(int width, ColorScheme colours) {
    try (BrowserContext context = context(width, true, colours)) {
      Page page = page(context);
      Locator chart = fit(page, start);
      assertThat(chart.locator("canvas")).isVisible();
      assertThat(chart.locator("svg")).isHidden();
      assertThat(chart.locator(".live p")).containsText(new String[] {"at worst", "at worst"});

      Locator slider = chart.getByRole(AriaRole.SLIDER);
      slider.press("Home");
      String closed = told(chart);
      assertTrue(closed.startsWith("opened, ° 0"), closed);
      assertTrue(closed.contains("opening") && closed.contains("least in any corner"), closed);
      slider.press("ArrowRight");
      assertNotEquals(closed, told(chart));
      assertThat(slider).hasValue("1");

      chart.scrollIntoViewIfNeeded();
      BoundingBox over = chart.locator(".u-over").boundingBox();
      page.mouse().move(over.x + over.width * 0.75, over.y + over.height / 2);
      assertThat(slider).not().hasValue("1");
      int last = Integer.parseInt(slider.getAttribute("max"));
      assertEquals(0.75 * last, Integer.parseInt(slider.inputValue()), 0.02 * last + 1);
      assertThat(chart.locator(".u-legend")).containsText("opening");
      assertThat(chart.locator("output")).containsText(Pattern.compile("opens|stays|shuts"));
      picture(page, width + "-chart-fit");
      assertEquals(List.of(), complaints);
    }
  }

  @Test
  void isDrawnAnewWithTheBench() {
    try (BrowserContext context = context(1280, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      page.navigate(start + "flap");
      Locator chart = page.locator("#held figure.chart");
      assertThat(chart.locator("canvas")).isVisible();
      String before = chart.getAttribute("data-chart");
      page.getByLabel("Mass", new Page.GetByLabelOptions().setExact(true)).fill("11");
      assertThat(chart).not().hasAttribute("data-chart", before);
      assertThat(chart.locator("canvas")).hasCount(1);
      assertEquals(List.of(), complaints);
    }
  }

  @ParameterizedTest
  @CsvSource({"1280, true", "390, false"})
  void leavesItsNumbersAndItsPicture(int width, boolean script) throws IOException {
    try (BrowserContext context = context(width, script, ColorScheme.LIGHT)) {
      Page page = page(context);
      Locator chart = fit(page, start);
      chart.getByText("Its numbers").click();
      assertThat(chart.getByRole(AriaRole.TABLE).last()).isVisible();
      assertThat(chart.locator("tbody tr").last()).containsText("by itself");
      if (!script) {
        assertThat(chart.locator("svg")).isVisible();
      }
      String csv = taken(page, chart, "Numbers (CSV)");
      assertTrue(
          csv.startsWith("\"opened, °\",\"opening, least in any corner: hand force, N\""), csv);
      String svg = taken(page, chart, "Picture (SVG)");
      assertTrue(svg.startsWith("<svg") && svg.contains("<style>"), svg);
      picture(page, width + (script ? "" : "-without-script") + "-chart-numbers");
      assertEquals(List.of(), complaints);
    }
  }

  private static String taken(Page page, Locator chart, String button) throws IOException {
    Download download = page.waitForDownload(() -> chart.getByText(button).click());
    return Files.readString(download.path());
  }

  @ParameterizedTest
  @CsvSource({"1280", "390"})
  void drawsWhatALockingStrutDoes(int width) throws IOException {
    try (BrowserContext context = context(width, true, ColorScheme.LIGHT)) {
      Page page = page(context);
      String strut = Files.readAllLines(Path.of("catalog-data/locking-struts.csv")).get(3);
      page.navigate(start + "parts/" + strut.split(",")[0]);
      Locator charts = page.locator("figure.chart");
      assertThat(charts.locator("canvas")).hasCount(3);
      charts.first().getByRole(AriaRole.SLIDER).press("End");
      assertTrue(told(charts.first()).contains("coming out"), told(charts.first()));
      charts.last().getByRole(AriaRole.SLIDER).press("Home");
      assertTrue(told(charts.last()).contains("locked"), told(charts.last()));
      picture(page, width + "-chart-part");
      assertEquals(List.of(), complaints);
    }
  }
}
