package org.staywright.web.account;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import org.staywright.account.Token;

/**
 * A token of one's own.
 *
 * @param ends from when on it is worth nothing
 * @param used when it was used last, "" for never
 */
record TokenRow(long id, String name, String role, String ends, String used) {

  /** So often it is written down that somebody is there. */
  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'").withZone(ZoneOffset.UTC);

  static TokenRow of(Token token) {
    String used = token.used == null ? "" : minute(token.used);
    return new TokenRow(
        token.id, token.name, RoleChoice.label(token.role), minute(token.ends), used);
  }

  static String minute(Instant at) {
    return MINUTE.format(at);
  }
}
