package org.staywright.web.door;

import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Singleton;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/**
 * How many pages and answers of the interface one address gets a minute, where that is set. Files
 * and health are not counted.
 */
@Singleton
public class RequestLimit {

  private final Optional<PerAddress> limit;

  RequestLimit(@ConfigProperty(name = "staywright.requests-per-minute") int most) {
    limit = most > 0 ? Optional.of(new PerAddress(most)) : Optional.empty();
  }

  @ServerRequestFilter(preMatching = true)
  public void count(RoutingContext request) {
    limit.ifPresent(each -> each.take(request));
  }
}
