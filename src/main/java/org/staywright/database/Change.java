package org.staywright.database;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What was done to one thing.
 *
 * @param subject kind of the thing
 * @param id of the thing among its kind
 * @param action what was done
 * @param before how it was, JSON; null where it was not there
 * @param after how it is now, likewise
 */
public record Change(
    Subject subject, String id, Action action, @Nullable String before, @Nullable String after) {

  /** Kinds of things whose changes are recorded. */
  public enum Subject {
    JOB,
    /** By the number of the revision that was made. */
    RANGE,
    BATCH,
    /** Somebody who may sign in. */
    ACCOUNT,
    /** What a program signs in with. */
    TOKEN,
    /** All there is, replaced at once: by the number of the revision that was made. */
    EVERYTHING;

    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    public static Subject of(String code) {
      return valueOf(code.toUpperCase(Locale.ROOT));
    }
  }

  /** What can be done. */
  public enum Action {
    ADDED,
    CHANGED,
    REMOVED,
    CHOSEN,
    /** How many of what is chosen already. */
    ORDERED,
    UNCHOSEN,
    /** By the program, into an empty database. */
    LOADED,
    IMPORTED,
    /** As it was before. */
    RESTORED,
    BEGUN,
    STOPPED,
    /** A word was given with which a password is chosen. */
    INVITED,
    /** A password was chosen. */
    WELCOMED,
    /** For a while, after too many wrong passwords. */
    LOCKED;

    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    public static Action of(String code) {
      return valueOf(code.toUpperCase(Locale.ROOT));
    }
  }
}
