package org.staywright.database;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Who changes something, as far as it is known.
 *
 * @param standing how we know
 * @param name of the account, or as somebody gave it; "" for none
 * @param address that the request came from, null where there is no request
 * @param request its name in the log, null likewise
 */
public record Author(
    Standing standing, String name, @Nullable String address, @Nullable String request) {

  /** What a name is worth. */
  public enum Standing {
    /** Somebody who has signed in. */
    SIGNED_IN,
    /** Anybody: the name is what was typed, and nobody has looked. */
    SAID,
    /** Somebody who gave no name. */
    NOBODY,
    /** The program by itself, which nobody has asked. */
    PROGRAM;

    public String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Standing of(String code) {
      return valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
  }

  /** What an empty database is filled with. */
  public static final Author PROGRAM = new Author(Standing.PROGRAM, "", null, null);
}
