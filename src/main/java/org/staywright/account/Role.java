package org.staywright.account;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What somebody may do; each may also do what those before may. */
public enum Role {
  /** Looks and computes. */
  READER,
  /** Keeps jobs, chooses parts, judges batches. */
  EDITOR,
  /** Takes in the range and goes back to earlier ones. */
  KEEPER,
  /** Has accounts, the audit and backups in hand. */
  ADMINISTRATOR;

  public boolean may(Role needed) {
    return compareTo(needed) >= 0;
  }

  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<Role> of(String code) {
    return Arrays.stream(values()).filter(each -> each.code().equals(code)).findFirst();
  }

  Role atMost(Role other) {
    return other.may(this) ? this : other;
  }
}
