package org.staywright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.RequestOptions;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A buyer with forty jobs, from the list of jobs to the files of one order. */
class BuyerInTheBrowserIT extends InTheBrowser {

  private static final int JOBS = 40;
  private static final ObjectMapper JSON = new ObjectMapper();

  @ParameterizedTest
  @MethodSource("atADesk")
  void ordersFortyJobsAtOnce(int width, boolean script, ColorScheme colours) {
    try (BrowserContext context = context(width, script, colours)) {
      String name = "Order %d %s no. ".formatted(width, script);
      List<String> ids = jobs(context, name);
      Page page = page(context);
      page.navigate(start);
      page.locator(".doors a[href='/jobs']").click();
      int pages = 0;
      while (true) {
        pages++;
        for (Locator tick : page.getByLabel(Pattern.compile("^Tick " + name)).all()) {
          tick.check();
        }
        Locator more = page.locator("nav.pages button").filter(text("More"));
        if (more.count() == 0) {
          break;
        }
        more.click();
        assertThat(page.locator("nav.pages span")).containsText("Page " + (pages + 1));
      }
      assertTrue(pages > 1, "all on one page");
      assertThat(page.locator("main")).containsText("ticked on other pages");
      picture(page, "buyer-" + width + "-1-jobs");

      page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("One parts list for"))
          .click();
      assertThat(page.locator(".lead a")).hasCount(JOBS);
      assertThat(page.locator("table.order tfoot")).containsText("EUR");
      assertThat(page.locator(".cautions").first()).isVisible();
      picture(page, "buyer-" + width + "-2-list");
      for (String file : List.of("parts-list.csv", "parts-list.xlsx", "quotation-request.pdf")) {
        String address = page.locator("a[href*='" + file + "']").getAttribute("href");
        APIResponse answer = context.request().get(start + address.substring(1));
        assertEquals(200, answer.status(), file);
        assertTrue(answer.body().length > 500, file);
      }
      assertEquals(List.of(), complaints);
      ids.forEach(id -> remove(context, id));
    }
  }

  /** Jobs with a part chosen, as others in the house have left them. */
  private List<String> jobs(BrowserContext context, String name) {
    Page page = page(context);
    page.navigate(start + "flap");
    page.getByLabel("Name of the job").fill(name + "0");
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Save").setExact(true))
        .click();
    assertThat(page.getByRole(AriaRole.HEADING).first()).hasText(name + "0");
    page.getByText("Rank the stock").click();
    page.locator("button[name=pick][form=choose]").first().click();
    assertThat(page.locator("table.order")).isVisible();
    String first = page.url().replaceFirst(".*/", "");
    page.close();
    JsonNode job = json(context.request().get(start + "api/v1/jobs/" + first));
    String choice =
        JSON.createObjectNode()
            .put("partNumber", job.at("/choice/partNumber").asText())
            .put("count", job.at("/choice/count").asInt())
            .toString();
    ObjectNode plain = job.deepCopy();
    plain.remove(List.of("id", "created", "changed", "choice"));
    List<String> ids = new ArrayList<>(List.of(first));
    for (int i = 1; i < JOBS; i++) {
      String next = plain.put("name", name + i).toString();
      APIResponse made = context.request().post(start + "api/v1/jobs", json(next));
      assertEquals(201, made.status(), made.text());
      String id = made.headers().get("location").replaceFirst(".*/", "");
      RequestOptions part = json(choice).setHeader("If-Match", made.headers().get("etag"));
      APIResponse chosen = context.request().put(start + "api/v1/jobs/" + id + "/choice", part);
      assertEquals(200, chosen.status(), chosen.text());
      ids.add(id);
    }
    return ids;
  }

  private static JsonNode json(APIResponse answer) {
    try {
      return JSON.readTree(answer.body());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Locator.FilterOptions text(String text) {
    return new Locator.FilterOptions().setHasText(text);
  }

  private static RequestOptions json(String body) {
    return RequestOptions.create().setHeader("Content-Type", "application/json").setData(body);
  }

  private void remove(BrowserContext context, String id) {
    String job = start + "api/v1/jobs/" + id;
    String tag = context.request().get(job).headers().get("etag");
    APIResponse gone =
        context.request().delete(job, RequestOptions.create().setHeader("If-Match", tag));
    assertEquals(204, gone.status(), gone.text());
  }
}
