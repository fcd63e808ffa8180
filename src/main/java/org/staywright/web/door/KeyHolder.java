package org.staywright.web.door;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import io.smallrye.mutiny.Uni;
import jakarta.inject.Singleton;
import org.staywright.account.SignedIn;
import org.staywright.account.SigningIn;

/** Finds who a key belongs to. */
@Singleton
public class KeyHolder implements IdentityProvider<Key> {

  /** Name of the attribute with who it is. */
  static final String WHO = "staywright.who";

  private final SigningIn signingIn;

  KeyHolder(SigningIn signingIn) {
    this.signingIn = signingIn;
  }

  @Override
  public Class<Key> getRequestType() {
    return Key.class;
  }

  @Override
  public Uni<SecurityIdentity> authenticate(Key key, AuthenticationRequestContext context) {
    return context.runBlocking(() -> identity(key));
  }

  private SecurityIdentity identity(Key key) {
    SignedIn who =
        (key.ofProgram() ? signingIn.token(key.secret()) : signingIn.session(key.secret()))
            .orElseThrow(AuthenticationFailedException::new);
    return QuarkusSecurityIdentity.builder()
        .setPrincipal(new QuarkusPrincipal(who.name()))
        .addRole(who.role().code())
        .addAttribute(WHO, who)
        .build();
  }
}
