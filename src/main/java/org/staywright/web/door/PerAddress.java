package org.staywright.web.door;

import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.github.bucket4j.TimeMeter;
import io.netty.util.NetUtil;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.time.Duration;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How often a minute each address may do something. A bucket an address, filled evenly; beyond so
 * many addresses the one that was silent longest is forgotten.
 */
final class PerAddress {

  /** Addresses kept in mind: some megabytes. */
  static final int MOST = 10_000;

  private static final Duration MINUTE = Duration.ofMinutes(1);

  /** Bytes of an IPv6 address that say whose it is; the rest anyone there may choose (RFC 4291). */
  private static final int NETWORK = 8;

  private static final int IPV6 = 16;

  private final int perMinute;
  private final TimeMeter clock;
  private final Map<String, Bucket> left =
      new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
          return size() > MOST;
        }
      };

  PerAddress(int perMinute) {
    this(perMinute, TimeMeter.SYSTEM_NANOTIME);
  }

  PerAddress(int perMinute, TimeMeter clock) {
    this.perMinute = perMinute;
    this.clock = clock;
  }

  /**
   * Takes one for whoever sends that; behind a proxy that is trusted, for the address it names.
   *
   * @throws WebApplicationException 429, which says how many seconds to wait
   */
  void take(RoutingContext request) {
    long wait = wait(request.request().remoteAddress().host());
    if (wait > 0) {
      throw new WebApplicationException(
          Response.status(429).header(HttpHeaders.RETRY_AFTER, wait).build());
    }
  }

  /** Takes one for that address. Whole seconds until there is one; 0: taken. */
  synchronized long wait(String address) {
    ConsumptionProbe probe =
        left.computeIfAbsent(whose(address), any -> fresh()).tryConsumeAndReturnRemaining(1);
    return probe.isConsumed()
        ? 0
        : Duration.ofNanos(probe.getNanosToWaitForRefill()).toSeconds() + 1;
  }

  synchronized int known() {
    return left.size();
  }

  private static String whose(String address) {
    byte[] bytes = NetUtil.createByteArrayFromIpAddressString(address);
    return bytes == null || bytes.length < IPV6
        ? address
        : HexFormat.of().formatHex(Arrays.copyOf(bytes, NETWORK));
  }

  private Bucket fresh() {
    return Bucket.builder()
        .withCustomTimePrecision(clock)
        .addLimit(limit -> limit.capacity(perMinute).refillGreedy(perMinute, MINUTE))
        .build();
  }
}
