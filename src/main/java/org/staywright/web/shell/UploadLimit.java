package org.staywright.web.shell;

import io.quarkus.vertx.http.runtime.VertxHttpRecorder;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;

/** Files of stock and backups may be long; whatever else is sent may not. */
@ApplicationScoped
public class UploadLimit {

  private static final List<String> LONG =
      List.of("/stock", "/api/v1/stock/imports", "/backup", "/api/v1/restore");

  private static final long MOST = 10L << 20;

  /** Ten thousand jobs with every field given. */
  private static final long MOST_JOBS = 50L << 20;

  /** After the limit of the server, which holds for these, and before all that reads. */
  private static final int ORDER = -1;

  void limit(@Observes Router router) {
    router.route().order(ORDER).handler(UploadLimit::limit);
  }

  private static void limit(RoutingContext request) {
    String path = request.normalizedPath();
    if (LONG.stream().anyMatch(path::startsWith)) {
      request.next();
      return;
    }
    boolean jobs = path.startsWith("/batches") || path.startsWith("/api/v1/batches");
    long most = jobs ? MOST_JOBS : MOST;
    String length = request.request().getHeader(HttpHeaders.CONTENT_LENGTH);
    if (length == null) {
      request.put(VertxHttpRecorder.MAX_REQUEST_SIZE_KEY, most);
    } else if (length.length() > 18 || Long.parseLong(length) > most) {
      request.response().putHeader(HttpHeaders.CONNECTION, "close").setStatusCode(413).end();
      return;
    }
    request.next();
  }
}
