package org.staywright.web.account;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.staywright.account.Role;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
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

  /** The one that was chosen, however it was sent. */
  static Role sent(String code) {
    String known = Arrays.stream(Role.values()).map(Role::code).collect(Collectors.joining(", "));
    return Role.of(code)
        .orElseThrow(() -> new Refusal(new Fault("role", code, known, "not-a-choice")));
  }

  static String label(Role role) {
    return PageText.text("account.role." + role.code());
  }
}
