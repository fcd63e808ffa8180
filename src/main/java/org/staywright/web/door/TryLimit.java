package org.staywright.web.door;

import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Singleton;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** How often a minute somebody may try a password or a word, by the address he comes from. */
@Singleton
public class TryLimit {

  private final PerAddress limit;

  TryLimit(@ConfigProperty(name = "staywright.tries-per-minute") int perMinute) {
    limit = new PerAddress(perMinute);
  }

  public void take(RoutingContext request) {
    limit.take(request);
  }
}
