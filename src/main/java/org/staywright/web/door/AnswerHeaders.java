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
    context.addHeadersEndHandler(sent -> mayBeKept(response));
    context.next();
  }

  /** Whoever does not say how long it may be kept has jobs, prices or persons in it. */
  private static void mayBeKept(HttpServerResponse response) {
    if (!response.headers().contains(HttpHeaders.CACHE_CONTROL)) {
      response.putHeader(HttpHeaders.CACHE_CONTROL, "no-store");
    }
  }
}
