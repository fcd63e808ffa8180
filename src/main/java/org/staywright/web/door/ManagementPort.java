package org.staywright.web.door;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import io.quarkus.vertx.http.runtime.VertxHttpRecorder;
import io.vertx.core.Vertx;
import io.vertx.core.http.HttpServer;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;

/**
 * A second port for whoever watches over the program. Where it is set, what lies under {@code /q}
 * is answered there alone, and nothing else is. Quarkus' own is fixed when the program is built,
 * and would take {@code /q} from the first port for good.
 */
@ApplicationScoped
public class ManagementPort {

  private static final Logger LOG = Logger.getLogger(ManagementPort.class);

  /** After the headers and the request's name, before the door. */
  private static final int ORDER = -500;

  private final Optional<Integer> port;
  private final String host;
  private @Nullable HttpServer server;

  ManagementPort(
      @ConfigProperty(name = "staywright.management.port") Optional<Integer> port,
      @ConfigProperty(name = "staywright.management.host") String host) {
    this.port = port;
    this.host = host;
  }

  void open(@Observes StartupEvent started, Vertx vertx) {
    if (port.isPresent()) {
      server =
          vertx
              .createHttpServer()
              .requestHandler(VertxHttpRecorder.getRootHandler())
              .listen(port.get(), host)
              .toCompletionStage()
              .toCompletableFuture()
              .join();
      LOG.infof("Health and metrics on: http://%s:%d/q", host, server.actualPort());
    }
  }

  void close(@Observes ShutdownEvent stopped) {
    if (server != null) {
      server.close();
    }
  }

  void stand(@Observes Router router) {
    if (port.isPresent()) {
      router.route().order(ORDER).handler(this::sort);
    }
  }

  private void sort(RoutingContext context) {
    boolean ofWatch = (context.normalizedPath() + "/").startsWith("/q/");
    boolean here = server != null && context.request().localAddress().port() == server.actualPort();
    if (ofWatch == here) {
      context.next();
    } else {
      context.response().setStatusCode(404).end();
    }
  }
}
