package org.staywright.web.door;

import io.vertx.core.http.Cookie;
import io.vertx.core.http.CookieSameSite;
import io.vertx.ext.web.RoutingContext;
import java.util.Optional;

/** The cookie that holds the secret of a session: gone with the browser, read by no script. */
public final class SessionCookie {

  private SessionCookie() {}

  public static void give(RoutingContext request, String secret) {
    request.response().addCookie(cookie(request, secret));
  }

  public static void take(RoutingContext request) {
    request.response().addCookie(cookie(request, "").setMaxAge(0));
  }

  public static Optional<String> shown(RoutingContext request) {
    return Optional.ofNullable(request.request().getCookie(KeyRing.COOKIE)).map(Cookie::getValue);
  }

  private static Cookie cookie(RoutingContext request, String secret) {
    return Cookie.cookie(KeyRing.COOKIE, secret)
        .setPath("/")
        .setHttpOnly(true)
        .setSecure("https".equals(request.request().scheme()))
        .setSameSite(CookieSameSite.LAX);
  }
}
