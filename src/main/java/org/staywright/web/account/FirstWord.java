package org.staywright.web.account;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.staywright.account.Accounts;
import org.staywright.web.door.SignIn;
import org.staywright.wording.Wording;

/** Tells whoever can read the log how to sign in for the first time, or again. */
@ApplicationScoped
public class FirstWord {

  private static final Logger LOG = Logger.getLogger(FirstWord.class);

  private final Optional<String> again;

  FirstWord(@ConfigProperty(name = "staywright.new-word-for") Optional<String> again) {
    this.again = again;
  }

  void tell(@Observes StartupEvent start, SignIn signIn, Accounts accounts) {
    if (!signIn.byAccounts()) {
      return;
    }
    first(accounts).ifPresent(word -> say("account.first", Accounts.FIRST, word));
    again.ifPresent(
        name ->
            accounts
                .wordFor(name)
                .ifPresentOrElse(
                    word -> say("account.again", name, word), () -> say("account.nobody", name)));
  }

  /** Another instance may have made the account in this moment. */
  private static Optional<String> first(Accounts accounts) {
    try {
      return accounts.firstWord();
    } catch (RuntimeException made) {
      LOG.debug("perhaps made elsewhere", made);
      return accounts.firstWord();
    }
  }

  private static void say(String key, Object... values) {
    LOG.info(Wording.english().text(key, values));
  }
}
