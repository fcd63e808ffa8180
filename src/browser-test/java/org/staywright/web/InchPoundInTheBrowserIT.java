package org.staywright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The way from a load to its papers in inches, pounds and degrees Fahrenheit. */
class InchPoundInTheBrowserIT extends InTheBrowser {

  /** A number with a metric unit behind it. Pressure law and vessels are told in bar and litres. */
  private static final Pattern METRIC =
      Pattern.compile(
          "[^\\n]{0,60}[0-9][ \\u00a0\\u202f](?:mm|kg|N|Nm|J|ml|cm³|°C|mm/s|m/s)(?![\\w-])");

  /** What a range calls its parts by, in its own words. */
  private static final Pattern OWN_WORDS =
      Pattern.compile(
          "(?:Gas spring|Ball (?:socket|stud)|Retaining clip|Eyelet|Fork|Angle joint|Stud)[^\\n]*");

  @ParameterizedTest
  @MethodSource("widths")
  void leadsFromTheLoadToThePapersWithoutAMetricFigure(int width, ColorScheme colours)
      throws IOException {
    try (BrowserContext context = context(width, true, colours)) {
      List<String> left = new ArrayList<>();
      Page page = page(context);
      page.navigate(start + "flap");
      button(page, "in · lb · °F");
      page.waitForLoadState();
      assertThat(page.getByLabel("Mass", new Page.GetByLabelOptions().setExact(true)))
          .hasValue("39.68");
      page.getByLabel("Mass", new Page.GetByLabelOptions().setExact(true)).fill("35 lb + 8 oz");
      page.locator("#f-load-handleMm-x").fill("30 1/2 in");
      page.locator("#f-load-handleMm-x").press("Tab");
      assertThat(page).hasURL(Pattern.compile("load\\.massKg=16\\.1"));
      assertThat(page.locator(".verdict").first()).containsText("lbf spring");
      look(page, width, "ranking", left);
      button(page, "Figures, curve, cautions");
      look(page, width, "fit", left);
      button(page, "See it move, and how sure it is");
      look(page, width, "in-time", left);
      page.goBack();
      button(page, "Choose this and list its parts");
      assertThat(page).hasURL(Pattern.compile("/jobs/\\d+$"));
      look(page, width, "job", left);
      for (String paper : List.of("job-sheet.pdf", "datasheet.pdf")) {
        String address = page.locator("a[href$='" + paper + "']").getAttribute("href");
        PdfReader pdf = new PdfReader(context.request().get(start + address.substring(1)).body());
        StringBuilder text = new StringBuilder();
        for (int i = 1; i <= pdf.getNumberOfPages(); i++) {
          text.append(new PdfTextExtractor(pdf).getTextFromPage(i)).append('\n');
        }
        assertTrue(text.indexOf("lbf") > 0, paper);
        note(text.toString(), paper, left);
      }
      for (String path :
          List.of("lift", "profile", "seat", "centre", "mounts", "replace?all=true", "parts")) {
        page.navigate(start + path);
        look(page, width, path.replaceAll("\\W+", "-"), left);
      }
      assertEquals(List.of(), left);
      assertEquals(List.of(), complaints);
    }
  }

  private static void button(Page page, String name) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name)).first().click();
  }

  private static void look(Page page, int width, String name, List<String> left) {
    page.waitForLoadState();
    String said = (String) page.evaluate("document.querySelector('main').innerText");
    assertTrue(said.length() > 200, name + " says hardly anything");
    note(said, name, left);
    picture(page, "inch-" + width + "-" + name);
  }

  private static void note(String said, String where, List<String> left) {
    METRIC
        .matcher(OWN_WORDS.matcher(said).replaceAll(""))
        .results()
        .forEach(found -> left.add(where + ": " + found.group()));
  }
}
