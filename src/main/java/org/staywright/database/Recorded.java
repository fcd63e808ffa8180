package org.staywright.database;

import java.time.Instant;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A row of the audit: who did what, and when.
 *
 * @param id rising; where one is missing, something was begun and taken back
 */
public record Recorded(long id, Instant happened, Author author, Change change) {

  /** Where a row stands among all, the newest first. */
  public record Place(Instant happened, long id) {

    public static final Pattern CODE = Pattern.compile("([0-9]{1,15})-([0-9]{1,18})");

    /** As a word by which to ask for those that follow. */
    public String code() {
      return happened.toEpochMilli() + "-" + id;
    }

    /** Empty for what is no such word. */
    public static Optional<Place> of(String code) {
      Matcher parts = CODE.matcher(code);
      return parts.matches()
          ? Optional.of(
              new Place(
                  Instant.ofEpochMilli(Long.parseLong(parts.group(1))),
                  Long.parseLong(parts.group(2))))
          : Optional.empty();
    }
  }

  public Place place() {
    return new Place(happened, id);
  }
}
