package org.staywright.web.account;

import org.staywright.account.Role;
import org.staywright.web.shell.PageText;

/**
 * A role that can be chosen.
 *
 * @param code that is sent
 * @param label that is shown
 * @param about what whoever has it may
 */
record RoleChoice(String code, String label, String about, boolean chosen) {

  static RoleChoice of(Role role, Role now) {
    return new RoleChoice(
        role.code(),
        label(role),
        PageText.text("account.role." + role.code() + ".about"),
        role == now);
  }

  static String label(Role role) {
    return PageText.text("account.role." + role.code());
  }
}
