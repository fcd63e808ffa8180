package org.staywright.web;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ScreenshotCaret;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.provider.Arguments;
import org.staywright.Effort;

/**
 * A real browser in front of the program as it is packaged; one browser and one program serve all
 * tests of a process.
 */
public abstract class InTheBrowser {

  private static final Path PICTURES = Path.of("target/screenshots");

  private static Browser browser;

  private static Instance program;

  protected static String start;

  public final List<String> complaints = new ArrayList<>();

  @BeforeAll
  protected static void open() throws IOException, InterruptedException {
    if (program != null) {
      return;
    }
    program = Instance.onH2("browser-" + ProcessHandle.current().pid());
    // A machine that does other things besides may take longer than a person would wait.
    PlaywrightAssertions.setDefaultAssertionTimeout(15_000);
    // Ends with the process.
    Playwright playwright = Playwright.create();
    browser =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(browser())
                    .setArgs(List.of("--no-sandbox", "--disable-gpu")));
    program.awaitReady();
    start = program.url("/");
  }

  /** Width, script and colours in pairs; crossed with all checks. */
  protected static Stream<Arguments> looks() {
    return Stream.of(
            arguments(1280, true, ColorScheme.LIGHT),
            arguments(390, false, ColorScheme.DARK),
            arguments(390, true, ColorScheme.DARK),
            arguments(1280, false, ColorScheme.LIGHT))
        .limit(Effort.of(4, 2));
  }

  /** Where one look is enough: at a desk with script; the others with all checks. */
  protected static Stream<Arguments> atADesk() {
    return looks().limit(Effort.of(4, 1));
  }

  /** Where one look is enough: narrow and without script; the others with all checks. */
  protected static Stream<Arguments> inTheHand() {
    return looks().skip(Effort.of(0, 1));
  }

  /** Where room is scarce; where there is more of it, too, with all checks. */
  protected static Stream<Arguments> widths() {
    return Stream.of(arguments(390, ColorScheme.DARK), arguments(1280, ColorScheme.LIGHT))
        .limit(Effort.of(2, 1));
  }

  /** The one without a screen where it is: it takes a third less time. */
  private static Path browser() {
    Path plain = Path.of("/usr/bin/chromium");
    Path headless = Path.of("/usr/bin/chromium-headless-shell");
    return Files.exists(headless) ? headless : plain;
  }

  protected static BrowserContext context(int width, boolean script, ColorScheme colours) {
    return browser.newContext(
        new Browser.NewContextOptions()
            .setViewportSize(width, 900)
            .setHasTouch(width < 500)
            .setJavaScriptEnabled(script)
            .setColorScheme(colours));
  }

  /**
   * What htmx says when one question takes the place of another; a failure has a word of its own.
   */
  private static final Pattern REPLACED = Pattern.compile("htmx:(sendAbort|afterRequest)\\b.*");

  /** A page whose every complaint, of the content policy above all, is kept. */
  protected Page page(BrowserContext context) {
    Page page = context.newPage();
    page.onConsoleMessage(
        message -> {
          boolean complains = message.type().equals("error") || message.type().equals("warning");
          if (complains && !REPLACED.matcher(message.text()).matches()) {
            complaints.add(message.text() + " at " + message.location());
          }
        });
    page.onPageError(complaints::add);
    return page;
  }

  /** Sees that nothing must be scrolled sideways; a run of all checks takes a picture, too. */
  protected static void picture(Page page, String name) {
    Number beyond =
        (Number)
            page.evaluate(
                "document.documentElement.scrollWidth - document.documentElement.clientWidth");
    assertTrue(beyond.intValue() <= 0, name + " is " + beyond + " px too wide");
    if (!Effort.FULL) {
      return;
    }
    // Hiding the caret would leave an empty style at every input, which htmx copies and the content
    // policy then complains about.
    page.screenshot(
        new Page.ScreenshotOptions()
            .setPath(PICTURES.resolve(name + ".png"))
            .setFullPage(true)
            .setCaret(ScreenshotCaret.INITIAL));
  }

  /** By the tabulator key, as often as it takes. */
  protected static void tabTo(Page page, String selector) {
    for (int i = 0; i < 150; i++) {
      page.keyboard().press("Tab");
      if ((boolean) page.evaluate("s => document.activeElement.matches(s)", selector)) {
        return;
      }
    }
    throw new AssertionError("no way by keyboard to " + selector);
  }
}
