package org.staywright.web.door;

import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * What every answer tells a browser of how it may be used: pages, interface, files, health and what
 * is turned away alike (OWASP ASVS 5.0.0, V3.4 and V14.3.2).
 */
@ApplicationScoped
public class AnswerHeaders {

  /** Nothing but our own files, never inline, never framed, never in a window of another site. */
  static final Map<String, String> ALWAYS =
      Map.of(
          "Content-Security-Policy",
          "default-src 'self'; img-src 'self' data:; base-uri 'none'; form-action 'self';"
              + " frame-ancestors 'none'; object-src 'none'",
          "X-Content-Type-Options",
          "nosniff",
          "Referrer-Policy",
          "same-origin",
          "Permissions-Policy",
          "camera=(), geolocation=(), microphone=()",
          "Cross-Origin-Opener-Policy",
          "same-origin",
          "Cross-Origin-Resource-Policy",
          "same-origin");

  static final String NOT_AT_ALL = "no-store";
  static final String TO_GO_BACK = "private, no-cache";

  static final String STRICT_TRANSPORT = "Strict-Transport-Security";

  /** Before a request has its name. */
  private static final int ORDER = -2000;

  private final Optional<String> strictTransport;

  AnswerHeaders(
      @ConfigProperty(name = "staywright.strict-transport") Optional<String> strictTransport) {
    this.strictTransport = strictTransport;
  }

  void stand(@Observes Router router) {
    router.route().order(ORDER).handler(this::mark);
  }

  private void mark(RoutingContext context) {
    HttpServerResponse response = context.response();
    ALWAYS.forEach(response::putHeader);
    // Said in plain HTTP it would be anybody's word (RFC 6797, 7.2).
    if (context.request().isSSL()) {
      strictTransport.ifPresent(policy -> response.putHeader(STRICT_TRANSPORT, policy));
    }
    Visit visit = Visit.of(context);
    boolean form = visit.changes() && !visit.ofInterface();
    context.addHeadersEndHandler(sent -> mayBeKept(response, form));
    context.next();
  }

  /**
   * Whoever does not say how long it may be kept has jobs, prices or persons in it. What answers a
   * form holds what was typed: a browser may go back to it, since it cannot ask for it once more.
   */
  private static void mayBeKept(HttpServerResponse response, boolean form) {
    if (!response.headers().contains(HttpHeaders.CACHE_CONTROL)) {
      response.putHeader(HttpHeaders.CACHE_CONTROL, form ? TO_GO_BACK : NOT_AT_ALL);
    }
  }
}
