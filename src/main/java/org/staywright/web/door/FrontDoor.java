package org.staywright.web.door;

import io.quarkus.security.ForbiddenException;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.staywright.web.api.request.Problem;
import org.staywright.web.door.Admission.TurnedAway;
import org.staywright.web.shell.Preference;
import org.staywright.wording.Wording;

/** Turns away what {@link Admission} does not let in: pages, interface, files and health alike. */
@ApplicationScoped
public class FrontDoor {

  private static final Logger LOG = Logger.getLogger(FrontDoor.class);

  /** After a request has its name, before all that reads it or asks who sends it. */
  private static final int ORDER = -400;

  private final Admission admission;

  FrontDoor(@ConfigProperty(name = "staywright.hosts") Optional<List<String>> hosts) {
    admission = Admission.to(hosts.orElse(List.of()).stream());
  }

  void stand(@Observes Router router) {
    router.route().order(ORDER).handler(this::meet).failureHandler(FrontDoor::forbid);
  }

  /** Whoever is known and may not is told so, on a page where he asked for one. */
  private static void forbid(RoutingContext context) {
    if (!(context.failure() instanceof ForbiddenException)) {
      context.next();
      return;
    }
    Visit visit = Visit.of(context);
    if (visit.ofInterface()) {
      turnAway(context, visit, new TurnedAway(403, "problem.detail.403", ""));
    } else {
      context.put(NotAllowed.PATH, true).reroute(HttpMethod.GET, NotAllowed.PATH);
    }
  }

  private void meet(RoutingContext context) {
    Visit visit = Visit.of(context);
    admission
        .of(visit)
        .ifPresentOrElse(refused -> turnAway(context, visit, refused), context::next);
  }

  /** Only a sentence, in plain text or as a problem: whoever gets it did not come by our pages. */
  private static void turnAway(RoutingContext context, Visit visit, TurnedAway refused) {
    LOG.debugf(
        "%s %s turned away: %d, %s", visit.method(), visit.path(), refused.status(), refused);
    Wording wording = Preference.of(context).metric();
    HttpServerResponse response = context.response().setStatusCode(refused.status());
    // What follows in this connection was sent in the same belief.
    response.putHeader(HttpHeaders.CONNECTION, "close");
    if (visit.ofInterface()) {
      response
          .putHeader(HttpHeaders.CONTENT_TYPE, Problem.TYPE)
          .end(Problem.of(wording, refused.status(), refused.key(), refused.value()).json());
    } else {
      response
          .putHeader(HttpHeaders.CONTENT_TYPE, "text/plain; charset=UTF-8")
          .end(wording.text(refused.key(), refused.value()));
    }
  }
}
