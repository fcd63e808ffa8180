package org.staywright.web.account;

import java.util.Arrays;
import java.util.List;
import org.staywright.account.Account;
import org.staywright.account.Role;

/**
 * An account in the list of all.
 *
 * @param signedIn when somebody signed in last, "" for never
 * @param welcomed whether its owner has chosen a password
 */
record AccountRow(
    long id,
    String name,
    List<RoleChoice> roles,
    boolean active,
    boolean welcomed,
    String signedIn) {

  static AccountRow of(Account account) {
    String signedIn = account.signedIn == null ? "" : TokenRow.minute(account.signedIn);
    return new AccountRow(
        account.id,
        account.name,
        roles(account.role),
        account.active,
        account.welcomed(),
        signedIn);
  }

  static List<RoleChoice> roles(Role now) {
    return Arrays.stream(Role.values()).map(role -> RoleChoice.of(role, now)).toList();
  }
}
