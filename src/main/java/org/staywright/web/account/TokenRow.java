package org.staywright.web.account;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.staywright.account.Token;

/**
 * A token of one's own.
 *
 * @param ends its last day
 * @param used the day it was used last, "" for never
 */
record TokenRow(long id, String name, String role, String ends, String used) {

  static TokenRow of(Token token) {
    String used = token.used == null ? "" : day(token.used);
    return new TokenRow(token.id, token.name, RoleChoice.label(token.role), day(token.ends), used);
  }

  static String day(Instant at) {
    return LocalDate.ofInstant(at, ZoneId.systemDefault()).toString();
  }
}
