package org.staywright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Clock;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.Effort;

/** Every key counts, however fast they come and however late the server answers. */
class QuickKeysInTheBrowserIT extends InTheBrowser {

  private static final String MOVING = "#f-mounts-movingMm-";
  private static final String ZONE = "#f-zones-movingMm-";

  /** Before a ranking is asked for, ms. */
  private static final int PAUSE = 500;

  private BrowserContext context;
  private Page page;

  @BeforeEach
  void openAPage() {
    context = context(1280, true, ColorScheme.LIGHT);
    page = page(context);
  }

  @AfterEach
  void complainsOfNothing() {
    context.close();
    assertEquals(List.of(), complaints);
  }

  private Locator grip(String name) {
    return page.getByRole(
        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(Pattern.compile(name)));
  }

  private void press(String... keys) {
    for (String key : keys) {
      page.keyboard().press(key);
    }
  }

  private void fields(String point, String x, String y) {
    assertThat(page.locator(point + "x")).hasValue(x);
    assertThat(page.locator(point + "y")).hasValue(y);
  }

  /** Sixty keys from (360, -10): 30 to the right, 20 upwards, 10 back. */
  private void pressSixty(HeldAnswers steps) {
    for (int i = 0; i < 10; i++) {
      press("ArrowRight", "ArrowUp", "ArrowRight", "ArrowRight", "ArrowUp", "ArrowLeft");
      // Some answers come between, of what was long ago.
      if (i % 2 == 1 && steps != null) {
        steps.letOneGo();
      }
    }
  }

  static Stream<Arguments> benches() {
    return Stream.of(
            arguments("flap", true),
            arguments("lift", false),
            arguments("lift", true),
            arguments("flap", false))
        .limit(Effort.of(4, 2));
  }

  @ParameterizedTest
  @MethodSource("benches")
  void sixtyKeysMoveAMountSixtySteps(String bench, boolean slow) {
    page.navigate(start + bench);
    HeldAnswers steps = slow ? new HeldAnswers(page, bench + "/step") : null;
    page.locator(MOVING + "x").fill("360");
    page.locator(MOVING + "y").fill("-10");
    Locator mount = grip("^(Flap|Load) mount: x");
    mount.focus();
    pressSixty(steps);
    if (slow) {
      steps.letAllGo();
    }
    fields(MOVING, "460", "90");
    assertThat(mount).hasAttribute("aria-label", Pattern.compile("x 460, y 90 mm$"));
    assertThat(mount).isFocused();
    // The ranking is of the last of them.
    assertThat(page).hasURL(Pattern.compile("movingMm\\.x=460&.*movingMm\\.y=90&"));
    assertThat(page.locator("#result")).not().hasAttribute("aria-busy", "true");
    fields(MOVING, "460", "90");
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void sixtyKeysMoveAZoneSixtySteps(boolean slow) {
    page.navigate(start + "mounts");
    HeldAnswers steps = slow ? new HeldAnswers(page, "mounts/step") : null;
    Locator whole = grip("^Flap mount: its whole zone");
    fields(ZONE, "95", "-65");
    whole.focus();
    pressSixty(steps);
    if (slow) {
      steps.letAllGo();
    }
    fields(ZONE, "195", "35");
    fields(ZONE, "195", "35");
    assertThat(page.locator(ZONE + "x-to")).hasValue("540");
    assertThat(grip("^Flap mount: lower left corner of its zone, x 195, y 35 mm$")).isVisible();
    assertThat(whole).isFocused();
    press("ArrowDown");
    fields(ZONE, "195", "30");
  }

  /** The answer to the first key comes between the second and the third. */
  @Test
  void anAnswerToAnEarlierKeyTakesNoneBack() {
    page.navigate(start + "mounts");
    HeldAnswers steps = new HeldAnswers(page, "mounts/step");
    grip("^Flap mount: lower left corner").focus();
    press("ArrowUp", "Shift+ArrowUp");
    fields(ZONE, "95", "-10");
    steps.letOneGoAndAwaitTheNext();
    press("ArrowDown");
    fields(ZONE, "95", "-15");
    steps.letAllGo();
    assertThat(grip("^Flap mount: lower left corner of its zone, x 95, y -15 mm$")).isVisible();
  }

  /** A ranking that was asked for before the last key comes after it. */
  @ParameterizedTest
  @ValueSource(strings = {"flap", "lift"})
  void aRankingOfEarlierKeysTakesNoneBack(String bench) {
    page.navigate(start + bench);
    // The pause before a ranking is asked for ends when it is told to.
    page.clock().install(new Clock.InstallOptions().setTime(0));
    page.clock().pauseAt(1000);
    HeldAnswers rankings = new HeldAnswers(page, bench + "/live");
    Locator mount = grip("^(Flap|Load) mount: x");
    mount.focus();
    press("ArrowRight");
    int x = Integer.parseInt(page.locator(MOVING + "x").inputValue());
    assertThat(mount).hasAttribute("aria-label", Pattern.compile("x " + x + ","));
    page.clock().runFor(PAUSE);
    rankings.await();
    press("ArrowRight", "ArrowRight");
    assertThat(page.locator(MOVING + "x")).hasValue("" + (x + 10));
    rankings.letOneGo();
    assertThat(page).hasURL(Pattern.compile("movingMm\\.x=" + x + "&"));
    page.clock().runFor(PAUSE / 5);
    assertThat(page.locator(".htmx-settling")).hasCount(0);
    press("ArrowRight");
    assertThat(page.locator(MOVING + "x")).hasValue("" + (x + 15));
    assertThat(page.locator("#result")).hasAttribute("aria-busy", "true");
    rankings.letAllGo();
    page.clock().runFor(PAUSE);
    assertThat(page).hasURL(Pattern.compile("movingMm\\.x=" + (x + 15) + "&"));
    page.clock().runFor(PAUSE);
    assertThat(page.locator("#result")).not().hasAttribute("aria-busy", "true");
    assertThat(page.locator(MOVING + "x")).hasValue("" + (x + 15));
  }

  /** Only the server reads inches and feet: keys wait for it. */
  @ParameterizedTest
  @CsvSource({
    "mounts, mounts/step, #f-zones-frameMm-x, '^Frame mount: lower left corner'",
    "flap, flap/(step|live), #f-mounts-frameMm-x, ^Frame mount: x",
    "lift, lift/(step|live), #f-mounts-frameMm-x, ^Frame mount: x"
  })
  void keysGoOnFromWhatWasTyped(String path, String step, String field, String name) {
    page.navigate(start + path);
    HeldAnswers steps = new HeldAnswers(page, step);
    Locator x = page.locator(field);
    x.fill("-3 in");
    grip(name).focus();
    press("ArrowRight", "ArrowRight", "Shift+ArrowLeft");
    assertThat(x).hasValue("-3 in");
    steps.letAllGo();
    // -76.2 mm, onto the grid of 5 mm: -70, -65, -115.
    assertThat(x).hasValue("-115");
    assertThat(grip(name)).hasAttribute("aria-label", Pattern.compile("x -115,"));
    press("ArrowRight");
    assertThat(x).hasValue("-110");
  }

  @ParameterizedTest
  @CsvSource({
    "mounts, mounts/step, #f-zones-frameMm-x, '^Frame mount: lower left corner'",
    "flap, flap/step, #f-mounts-frameMm-x, ^Frame mount: x"
  })
  void keysGoOnFromWhatWasTakenBack(String path, String step, String field, String name) {
    page.navigate(start + path);
    Locator x = page.locator(field);
    HeldAnswers steps = new HeldAnswers(page, step);
    grip(name).focus();
    press("ArrowRight");
    int first = Integer.parseInt(x.inputValue());
    press("ArrowRight", "ArrowRight", "Control+z", "Control+z", "Shift+ArrowRight");
    steps.letAllGo();
    assertThat(x).hasValue("" + (first + 50));
    assertThat(grip(name)).hasAttribute("aria-label", Pattern.compile("x " + (first + 50) + ","));
  }

  /** What cannot be ranked leaves the drawing as it was, and the mount where it was moved to. */
  @Test
  void keysCountBesideAFieldThatIsWrong() {
    page.navigate(start + "flap");
    page.locator("#f-load-massKg").fill("heavy");
    assertThat(page.locator("#f-load-massKg-fault")).containsText("heavy");
    grip("^Frame mount: x").focus();
    press("ArrowRight");
    assertThat(page).hasURL(Pattern.compile("frameMm\\.x=20&"));
    press("ArrowRight", "ArrowRight");
    assertThat(page.locator("#f-mounts-frameMm-x")).hasValue("30");
    assertThat(page).hasURL(Pattern.compile("frameMm\\.x=30&"));
    assertThat(grip("^Frame mount: x 30, ")).isFocused();
  }

  /** Up and down change no x: the ranking follows all the same. */
  @Test
  void theRankingFollowsEveryKey() {
    page.navigate(start + "flap");
    grip("^Frame mount: x").focus();
    for (String y : List.of("-60", "-55", "-50")) {
      press("ArrowUp");
      assertThat(page).hasURL(Pattern.compile("frameMm\\.y=" + y + "&"));
    }
    press("Control+z");
    assertThat(page).hasURL(Pattern.compile("frameMm\\.y=-55&"));
    press("ArrowUp");
    assertThat(page).hasURL(Pattern.compile("frameMm\\.y=-50&"));
  }

  /** A grip keeps the focus while a keep-out comes in beside it. */
  @Test
  void aNewKeepOutTakesNoKeys() {
    page.navigate(start + "mounts");
    HeldAnswers steps = new HeldAnswers(page, "mounts/step");
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Add a keep-out")).click();
    Locator whole = grip("^Flap mount: its whole zone");
    whole.focus();
    press("ArrowRight", "ArrowRight");
    steps.letAllGo();
    assertThat(grip("^Keep-out 1: its whole zone")).isVisible();
    press("ArrowRight");
    fields(ZONE, "110", "-65");
    assertThat(whole).isFocused();
  }

  @Test
  void theEdgeOfTheFlapTurnsByEveryKey() {
    page.navigate(start + "flap");
    HeldAnswers steps = new HeldAnswers(page, "flap/step");
    grip("^Edge of the flap").focus();
    for (int i = 0; i < 20; i++) {
      press("ArrowUp", "ArrowUp", "ArrowDown");
      if (i % 5 == 4) {
        steps.letOneGo();
      }
    }
    steps.letAllGo();
    assertThat(grip("^Edge of the flap: 20°$")).isFocused();
  }
}
