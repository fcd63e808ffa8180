package org.staywright.web.shell;

import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jboss.logging.MDC;

/** Gives every request a name that stands in each line of the log and in the answer. */
@ApplicationScoped
public class RequestId {

  static final String HEADER = "X-Request-Id";

  /** Its name in the log. */
  static final String KEY = "requestId";

  /** A name from outside is written into the log: nothing but plain signs. */
  private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9._-]{1,64}");

  /** Before all else, the limit of uploads included. */
  private static final int ORDER = -1000;

  void name(@Observes Router router) {
    router.route().order(ORDER).handler(RequestId::name);
  }

  private static void name(RoutingContext request) {
    String given = request.request().getHeader(HEADER);
    String id = given != null && PLAIN.matcher(given).matches() ? given : fresh();
    MDC.put(KEY, id);
    request.response().putHeader(HEADER, id);
    request.next();
  }

  /** That name. */
  public static String of(RoutingContext request) {
    return request.response().headers().get(HEADER);
  }

  private static String fresh() {
    return UUID.randomUUID().toString();
  }
}
