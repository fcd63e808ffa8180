package org.staywright.web.account;

import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.container.ResourceInfo;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.staywright.web.door.SignIn;

/** Where there are no accounts nobody makes one, by which he would come in once there are. */
final class OnlyWithAccounts {

  private final SignIn signIn;

  OnlyWithAccounts(SignIn signIn) {
    this.signIn = signIn;
  }

  /** Before the token of the form is asked for. */
  @ServerRequestFilter(priority = 1)
  void close(ResourceInfo asked) {
    Class<?> page = asked.getResourceClass();
    if (page.getPackage().equals(OnlyWithAccounts.class.getPackage()) && !signIn.byAccounts()) {
      throw new NotFoundException();
    }
  }
}
