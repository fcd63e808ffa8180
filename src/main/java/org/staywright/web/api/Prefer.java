package org.staywright.web.api;

import java.util.Locale;
import java.util.stream.Stream;

/** The header of RFC 7240. */
final class Prefer {

  static final String HEADER = "Prefer";
  static final String ASYNC = "respond-async";

  private Prefer() {}

  /** True where the caller would rather not wait. */
  static boolean async(String header) {
    return header != null
        && Stream.of(header.split("[,;]"))
            .anyMatch(token -> token.strip().toLowerCase(Locale.ROOT).equals(ASYNC));
  }
}
