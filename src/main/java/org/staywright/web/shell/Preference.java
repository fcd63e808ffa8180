package org.staywright.web.shell;

import io.quarkus.arc.Arc;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.CookieSameSite;
import io.vertx.ext.web.RoutingContext;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.staywright.unit.Language;
import org.staywright.unit.Units;
import org.staywright.wording.Wording;

/**
 * Language and units that a reader wants: as the address says, else as chosen before, else the
 * browser's language and metric units.
 */
public record Preference(Locale language, Units units) {

  static final String LANGUAGE = "lang";
  static final String UNITS = "units";

  private static final long YEAR = 365L * 24 * 3600;

  private static final Preference USUAL = new Preference(Language.first().locale(), Units.METRIC);

  /** Of the request at hand; the first language and metric where there is none. */
  public static Preference now() {
    RoutingContext request = request();
    return request == null ? USUAL : of(request);
  }

  /** What is written for that reader. */
  public Wording wording() {
    return Wording.of(language, units);
  }

  /** Text in the reader's language for an interface whose units are fixed. */
  public Wording metric() {
    return Wording.of(language);
  }

  static Optional<Locale> language(String tag) {
    return Language.of(tag).map(Language::locale);
  }

  /** The answer to the request at hand tells the browser to remember. */
  public static void keep(String name, String value) {
    Cookie cookie = Cookie.cookie(name, value).setPath("/").setMaxAge(YEAR).setHttpOnly(true);
    cookie.setSameSite(CookieSameSite.LAX).setSecure(request().request().isSSL());
    request().response().addCookie(cookie);
  }

  /** The query of the request at hand, as it came; "" for none. */
  static String query() {
    String query = request() == null ? null : request().request().query();
    return query == null ? "" : query;
  }

  private static RoutingContext request() {
    if (Arc.container() == null || !Arc.container().requestContext().isActive()) {
      return null;
    }
    return Arc.container().instance(CurrentVertxRequest.class).get().getCurrent();
  }

  public static Preference of(RoutingContext request) {
    return new Preference(
        chosen(request, LANGUAGE, Preference::language).orElseGet(() -> accepted(request)),
        chosen(request, UNITS, Units::of).orElse(USUAL.units));
  }

  private static <T> Optional<T> chosen(
      RoutingContext request, String name, Function<String, Optional<T>> meaning) {
    Optional<T> asked = request.queryParam(name).stream().findFirst().flatMap(meaning);
    Cookie cookie = request.request().getCookie(name);
    return asked.isPresent() || cookie == null ? asked : meaning.apply(cookie.getValue());
  }

  private static Locale accepted(RoutingContext request) {
    String header = request.request().getHeader("Accept-Language");
    try {
      Locale best =
          header == null
              ? null
              : Locale.lookup(Locale.LanguageRange.parse(header), Language.locales());
      return best == null ? USUAL.language : best;
    } catch (IllegalArgumentException unreadable) {
      return USUAL.language;
    }
  }
}
