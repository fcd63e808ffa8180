package org.staywright.web.door;

import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.net.HostAndPort;
import io.vertx.ext.web.RoutingContext;
import java.util.Locale;
import java.util.Set;

/**
 * What a request tells of where it comes from and what it carries.
 *
 * @param path normalized
 * @param scheme http or https
 * @param host with its port where one is named, as it was asked for; null for none
 * @param origin of the page that sends it, null where the browser or program does not say
 * @param site how near that page is, in the words of Fetch Metadata, null likewise
 * @param type media type of the body without its parameters, "" for none
 */
record Visit(
    String method,
    String path,
    String scheme,
    HostAndPort host,
    String origin,
    String site,
    String type) {

  private static final Set<String> SAFE = Set.of("GET", "HEAD", "OPTIONS", "TRACE");
  private static final Set<String> WITH_BODY = Set.of("POST", "PUT", "PATCH");

  static Visit of(RoutingContext context) {
    HttpServerRequest request = context.request();
    String type = request.getHeader(HttpHeaders.CONTENT_TYPE);
    return new Visit(
        request.method().name(),
        context.normalizedPath(),
        request.scheme(),
        request.authority(),
        request.getHeader(HttpHeaders.ORIGIN),
        request.getHeader("Sec-Fetch-Site"),
        type == null ? "" : type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT));
  }

  boolean changes() {
    return !SAFE.contains(method);
  }

  boolean carries() {
    return WITH_BODY.contains(method);
  }

  boolean ofInterface() {
    return path.equals("/api") || path.startsWith("/api/");
  }

  /** Asked by what watches over the program, under whatever address it has there. */
  boolean ofWatch() {
    return path.startsWith("/q/health");
  }
}
