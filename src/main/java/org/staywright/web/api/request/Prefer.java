package org.staywright.web.api.request;

import java.util.Locale;
import java.util.stream.Stream;

/** The header of RFC 7240. */
public final class Prefer {

  public static final String HEADER = "Prefer";
  public static final String ASYNC = "respond-async";

  private Prefer() {}

  /** True where the caller would rather not wait. */
  public static boolean async(String header) {
    return header != null
        && Stream.of(header.split("[,;]"))
            .anyMatch(token -> token.strip().toLowerCase(Locale.ROOT).equals(ASYNC));
  }
}
