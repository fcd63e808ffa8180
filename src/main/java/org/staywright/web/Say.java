package org.staywright.web;

import io.quarkus.qute.TemplateExtension;
import org.staywright.wording.Wording;

/** Sentences in the templates: {@code {say:text('page.skip')}}. */
@TemplateExtension(namespace = "say")
final class Say {

  private Say() {}

  static Wording wording() {
    return Wording.english();
  }

  static String language() {
    return wording().locale().toLanguageTag();
  }

  static String text(String key) {
    return wording().text(key);
  }

  static String text(String key, Object first) {
    return wording().text(key, first);
  }

  static String text(String key, Object first, Object second) {
    return wording().text(key, first, second);
  }

  /** A whole number. */
  static String number(int value) {
    return wording().number(value, 0);
  }
}
