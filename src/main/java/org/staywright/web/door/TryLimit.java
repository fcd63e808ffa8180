package org.staywright.web.door;

import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Singleton;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** How often a minute somebody may try a password or a word, by the address he comes from. */
@Singleton
public class TryLimit {

  private static final Duration MINUTE = Duration.ofMinutes(1);

  /** Addresses kept in mind; the one that was silent longest is forgotten first. */
  private static final int MOST = 10_000;

  private final int perMinute;
  private final Map<String, Bucket> left =
      new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
          return size() > MOST;
        }
      };

  TryLimit(@ConfigProperty(name = "staywright.tries-per-minute") int perMinute) {
    this.perMinute = perMinute;
  }

  /**
   * @throws WebApplicationException 429 that says how many seconds to wait
   */
  public void take(RoutingContext request) {
    long wait = wait(request.request().remoteAddress().hostAddress());
    if (wait > 0) {
      throw new WebApplicationException(
          Response.status(429).header(HttpHeaders.RETRY_AFTER, wait).build());
    }
  }

  /** Seconds; 0: go on. */
  synchronized long wait(String address) {
    Bucket bucket = left.computeIfAbsent(address, any -> fresh());
    ConsumptionProbe probe = bucket.tryConsumeAndReturnRemaining(1);
    return probe.isConsumed()
        ? 0
        : Math.max(1, Duration.ofNanos(probe.getNanosToWaitForRefill()).toSeconds());
  }

  private Bucket fresh() {
    return Bucket.builder()
        .addLimit(limit -> limit.capacity(perMinute).refillGreedy(perMinute, MINUTE))
        .build();
  }
}
