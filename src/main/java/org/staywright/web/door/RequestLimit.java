package org.staywright.web.door;

import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Singleton;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/**
 * How many pages and answers of the interface one address gets a minute, where that is set. Files
 * and health are not counted. Behind a proxy that is trusted it is the address that the proxy
 * names.
 */
@Singleton
public class RequestLimit {

  private final Optional<PerAddress> limit;

  RequestLimit(@ConfigProperty(name = "staywright.requests-per-minute") int most) {
    limit = most > 0 ? Optional.of(new PerAddress(most)) : Optional.empty();
  }

  /**
   * @throws WebApplicationException 429, which says how many seconds to wait
   */
  @ServerRequestFilter(preMatching = true)
  public void count(RoutingContext context) {
    String address = context.request().remoteAddress().host();
    long wait = limit.map(each -> each.wait(address)).orElse(0L);
    if (wait > 0) {
      throw new WebApplicationException(
          Response.status(429).header(HttpHeaders.RETRY_AFTER, wait).build());
    }
  }
}
