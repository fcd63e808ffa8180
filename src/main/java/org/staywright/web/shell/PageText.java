package org.staywright.web.shell;

import io.quarkus.qute.TemplateExtension;
import org.staywright.wording.Wording;

/** Sentences in the templates: {@code {say:text('page.skip')}}. */
@TemplateExtension(namespace = "say")
public final class PageText {

  private PageText() {}

  public static Wording wording() {
    return Preference.now().wording();
  }

  static String language() {
    return wording().locale().toLanguageTag();
  }

  public static String text(String key) {
    return wording().text(key);
  }

  public static String text(String key, Object first) {
    return wording().text(key, first);
  }

  public static String text(String key, Object first, Object second) {
    return wording().text(key, first, second);
  }

  /** The units that are shown, by their code. */
  static String units() {
    return wording().units().code();
  }

  /** The query that the page answers, for an address beside it. */
  static String query() {
    return Preference.query();
  }

  /** A whole number. */
  static String number(int value) {
    return wording().number(value, 0);
  }
}
