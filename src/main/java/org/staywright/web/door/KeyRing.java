package org.staywright.web.door;

import io.quarkus.oidc.runtime.OidcAuthenticationMechanism;
import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.IdentityProviderManager;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.AuthenticationRequest;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import io.quarkus.vertx.http.runtime.security.ChallengeData;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticationMechanism;
import io.smallrye.mutiny.Uni;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Singleton;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.staywright.account.Token;
import org.staywright.web.api.request.Problem;
import org.staywright.web.shell.Preference;

/**
 * Takes the key of a request from its cookie, or a program's from its header, where another issuer
 * of tokens is asked for what is not ours.
 */
@Singleton
public class KeyRing implements HttpAuthenticationMechanism {

  public static final String COOKIE = "staywright-session";

  private static final SecurityIdentity NOBODY =
      QuarkusSecurityIdentity.builder().setAnonymous(true).build();

  private static final String BEARER = "Bearer ";
  private static final String CHALLENGE = "WWW-Authenticate";
  private static final String REALM = "Bearer realm=\"Staywright\"";

  /** Before the mechanisms that come with Quarkus, to which other tokens are left. */
  private static final int PRIORITY = 3000;

  /**
   * Under which a request keeps how many seconds whoever sent too many wrong tokens has to wait.
   */
  private static final String WAIT = "staywright.wait";

  /** Of tokens that are not ours. */
  private final OidcAuthenticationMechanism issuer;

  private final TryLimit tries;

  KeyRing(OidcAuthenticationMechanism issuer, TryLimit tries) {
    this.issuer = issuer;
    this.tries = tries;
  }

  @Override
  public int getPriority() {
    return PRIORITY;
  }

  @Override
  public Set<Class<? extends AuthenticationRequest>> getCredentialTypes() {
    return Set.of(Key.class);
  }

  @Override
  public Uni<SecurityIdentity> authenticate(
      RoutingContext context, IdentityProviderManager providers) {
    String shown = context.request().getHeader(HttpHeaders.AUTHORIZATION);
    if (shown != null && shown.startsWith(BEARER + Token.PREFIX)) {
      Key key = Key.ofProgram(shown.substring(BEARER.length()).strip());
      return orNobody(counted(providers.authenticate(key), context), context);
    }
    if (shown != null) {
      return orNobody(counted(issuer.authenticate(context, providers), context), context);
    }
    Cookie cookie = context.request().getCookie(COOKIE);
    return cookie == null
        ? Uni.createFrom().nullItem()
        : orNobody(providers.authenticate(Key.ofBrowser(cookie.getValue())), context);
  }

  /** What a browser kept too long is no try, but a program has its token from somebody. */
  private Uni<SecurityIdentity> counted(Uni<SecurityIdentity> holder, RoutingContext context) {
    return holder
        .onFailure(AuthenticationFailedException.class)
        .invoke(() -> context.put(WAIT, tries.wrong(context)));
  }

  /** A key that is spent is as good as none; what wants one then answers with our challenge. */
  private Uni<SecurityIdentity> orNobody(Uni<SecurityIdentity> holder, RoutingContext context) {
    return holder
        .onFailure(AuthenticationFailedException.class)
        .recoverWithItem(
            () -> {
              context.put(HttpAuthenticationMechanism.class.getName(), this);
              return NOBODY;
            });
  }

  @Override
  public Uni<ChallengeData> getChallenge(RoutingContext context) {
    return Uni.createFrom().item(new ChallengeData(401, CHALLENGE, REALM));
  }

  /** A page leads to where one signs in, and from there back. */
  @Override
  public Uni<Boolean> sendChallenge(RoutingContext context) {
    if (Visit.of(context).ofInterface()) {
      long wait = context.<Long>get(WAIT, 0L);
      int status = wait > 0 ? 429 : 401;
      context
          .response()
          .setStatusCode(status)
          .putHeader(wait > 0 ? "Retry-After" : CHALLENGE, wait > 0 ? Long.toString(wait) : REALM)
          .putHeader(HttpHeaders.CONTENT_TYPE, Problem.TYPE)
          .end(Problem.of(Preference.of(context).metric(), status).json());
    } else {
      String to = URLEncoder.encode(context.request().uri(), StandardCharsets.UTF_8);
      boolean reads = context.request().method().name().equals("GET");
      context
          .response()
          .setStatusCode(303)
          .putHeader(HttpHeaders.LOCATION, "/sign-in" + (reads ? "?to=" + to : ""))
          .end();
    }
    return Uni.createFrom().item(true);
  }
}
