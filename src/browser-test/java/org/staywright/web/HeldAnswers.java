package org.staywright.web;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.util.ArrayDeque;
import java.util.Queue;
import java.util.regex.Pattern;

/** Questions of a page to the server, held back until they are let go: as slow as a test wants. */
final class HeldAnswers {

  private final Page page;
  private final Pattern address;
  private final Queue<Route> held = new ArrayDeque<>();

  HeldAnswers(Page page, String path) {
    this.page = page;
    this.address = Pattern.compile("/" + path + "\\?");
    page.route(address, held::add);
  }

  /** Until the page has asked. */
  void await() {
    page.waitForCondition(() -> !held.isEmpty());
  }

  /** The next question goes on its way, once it has been asked. */
  void letOneGo() {
    await();
    held.remove().resume();
  }

  /** A page asks again only when the answer has come, so that it is on the page by then. */
  void letOneGoAndAwaitTheNext() {
    letOneGo();
    await();
  }

  /** From now on nothing is held back. */
  void letAllGo() {
    page.unroute(address);
    while (!held.isEmpty()) {
      held.remove().resume();
    }
  }
}
