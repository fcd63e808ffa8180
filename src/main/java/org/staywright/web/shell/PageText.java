package org.staywright.web.shell;

import io.quarkus.qute.TemplateExtension;
import java.util.List;
import java.util.Locale;
import org.staywright.unit.Language;
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

  /** The languages that the page could be in besides, by their tags. */
  static List<String> otherLanguages() {
    return Language.tags().stream().filter(tag -> !tag.equals(language())).toList();
  }

  /** A language in its own words. */
  static String languageName(String tag) {
    return Wording.of(Locale.forLanguageTag(tag)).text("preference.language");
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
