package org.staywright.web.door;

import jakarta.inject.Singleton;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Who asks who is there; {@code ListeningAddress} has refused whatever else was set. */
@Singleton
public class SignIn {

  private final String who;

  SignIn(@ConfigProperty(name = "staywright.sign-in") String who) {
    this.who = who;
  }

  /** Else whoever reaches the program may do everything. */
  public boolean byAccounts() {
    return "accounts".equalsIgnoreCase(who);
  }
}
