package org.staywright.web.door;

import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Singleton;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * How often a minute somebody may try a password, a word or a token, by the address he comes from.
 */
@Singleton
public class TryLimit {

  private final PerAddress limit;

  TryLimit(@ConfigProperty(name = "staywright.tries-per-minute") int perMinute) {
    limit = new PerAddress(perMinute);
  }

  /** One more that was wrong. Whole seconds until the next is looked at; 0: at once. */
  long wrong(RoutingContext request) {
    return limit.wait(request.request().remoteAddress().host());
  }

  public void take(RoutingContext request) {
    limit.take(request);
  }
}
