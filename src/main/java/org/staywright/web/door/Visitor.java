package org.staywright.web.door;

import io.quarkus.security.identity.CurrentIdentityAssociation;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.microprofile.jwt.JsonWebToken;
import org.staywright.account.Role;
import org.staywright.account.SignedIn;

/** Who asks for a page, for what it shows: {@code {inject:visitor.may('keeper')}}. */
@RequestScoped
@Named("visitor")
public class Visitor {

  private final SignIn signIn;
  private final CurrentIdentityAssociation association;

  Visitor(SignIn signIn, CurrentIdentityAssociation association) {
    this.signIn = signIn;
    this.association = association;
  }

  /** Whether it is known who asks: there are accounts, and he has shown a key. */
  public boolean known() {
    return signIn.byAccounts() && !identity().isAnonymous();
  }

  public String name() {
    return known() ? identity().getPrincipal().getName() : "";
  }

  /** As it is noted: one of another issuer's is not the account of the same name. */
  public String noted() {
    return known() && identity().getPrincipal() instanceof JsonWebToken token
        ? name() + " (" + token.getIssuer() + ")"
        : name();
  }

  public boolean may(String role) {
    Role needed = Role.of(role).orElseThrow();
    return !signIn.byAccounts() || roles().anyMatch(each -> each.may(needed));
  }

  /** Empty where it is not one of our accounts. */
  public Optional<SignedIn> account() {
    return known() ? Optional.ofNullable(identity().getAttribute(KeyHolder.WHO)) : Optional.empty();
  }

  private Stream<Role> roles() {
    return Rights.roles(identity().getRoles());
  }

  private SecurityIdentity identity() {
    return association.getIdentity();
  }
}
