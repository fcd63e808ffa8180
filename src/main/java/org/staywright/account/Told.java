package org.staywright.account;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;

/** What the audit is told of accounts and tokens, as JSON: no secret, not even its digest. */
final class Told {

  private Told() {}

  /** With how many are signed in by it. */
  static String of(Account account) {
    ObjectNode told = JsonNodeFactory.instance.objectNode();
    return told.put("name", account.name)
        .put("role", account.role.code())
        .put("active", account.active)
        .put("password", account.welcomed())
        .put("wordEnds", text(account.wordEnds))
        .put("lockedUntil", text(account.lockedUntil))
        .put("sessions", Session.count("account", account))
        .toString();
  }

  static String of(Token token) {
    ObjectNode told = JsonNodeFactory.instance.objectNode();
    return told.put("name", token.name)
        .put("account", token.account.name)
        .put("role", token.role.code())
        .put("ends", text(token.ends))
        .toString();
  }

  private static String text(Instant moment) {
    return moment == null ? null : moment.toString();
  }
}
