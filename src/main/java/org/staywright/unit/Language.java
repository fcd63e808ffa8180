package org.staywright.unit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The languages that there are words in: a further one is its files in {@code wording} and a line
 * here. The first is spoken where nothing is known of the reader, and needs no mark on its files.
 */
public enum Language {
  ENGLISH("en"),
  GERMAN("de");

  private final String tag;

  Language(String tag) {
    this.tag = tag;
  }

  /** As browsers and addresses write it. */
  public String tag() {
    return tag;
  }

  public Locale locale() {
    return Locale.forLanguageTag(tag);
  }

  /** What tells its files apart from those of the first: {@code _de}. */
  public String mark() {
    return ordinal() == 0 ? "" : "_" + tag;
  }

  public static Optional<Language> of(@Nullable String tag) {
    return Stream.of(values()).filter(language -> language.tag.equals(tag)).findFirst();
  }

  public static Language first() {
    return values()[0];
  }

  public static List<String> tags() {
    return Stream.of(values()).map(Language::tag).toList();
  }

  public static List<Locale> locales() {
    return Stream.of(values()).map(Language::locale).toList();
  }
}
