package org.staywright.web.door;

import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.vertx.http.runtime.security.HttpSecurityPolicy;
import io.smallrye.mutiny.Uni;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Singleton;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.staywright.account.Role;

/** Lets through what the table of {@link Right} allows, where there are accounts. */
@Singleton
public class Rights implements HttpSecurityPolicy {

  private final SignIn signIn;

  Rights(SignIn signIn) {
    this.signIn = signIn;
  }

  @Override
  public Uni<CheckResult> checkPermission(
      RoutingContext context, Uni<SecurityIdentity> identity, AuthorizationRequestContext how) {
    String method = context.request().method().name();
    String path = context.normalizedPath();
    if (!signIn.byAccounts() || Right.allows(method, path, Stream.empty())) {
      return CheckResult.permit();
    }
    return identity.map(
        who -> new CheckResult(Right.allows(method, path, roles(who.getRoles())), who));
  }

  static Stream<Role> roles(Set<String> codes) {
    return codes.stream().map(Role::of).flatMap(Optional::stream);
  }
}
