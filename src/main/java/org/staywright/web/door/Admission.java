package org.staywright.web.door;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Who is let in. A browser sends to us whatever a page of any other site wants, and to whatever
 * name leads here: so only our own names are answered to, nothing that changes is taken from a page
 * of another origin, and bodies only in types that pages of our own use, or that no page of another
 * site can send unasked (Fetch standard, "CORS-safelisted request-header").
 *
 * @param hosts names that we answer to, in lower case
 */
record Admission(Set<String> hosts) {

  private static final Set<String> OWN = Set.of("localhost", "127.0.0.1", "::1");
  private static final Set<String> OF_FORMS =
      Set.of("application/x-www-form-urlencoded", "multipart/form-data");
  private static final String PLAIN = "text/plain";

  /**
   * Why somebody is not let in.
   *
   * @param key of the sentence
   * @param value what it names
   */
  record TurnedAway(int status, String key, String value) {}

  /** This computer's own names, and those. */
  static Admission to(Stream<String> more) {
    return new Admission(
        Stream.concat(OWN.stream(), more.map(Admission::plain))
            .filter(name -> !name.isEmpty())
            .collect(Collectors.toUnmodifiableSet()));
  }

  /** Empty: let in. */
  Optional<TurnedAway> of(Visit visit) {
    if (visit.host() == null) {
      return turned(400, "door.no-host", "");
    }
    if (!visit.ofWatch() && !hosts.contains(plain(visit.host().host()))) {
      return turned(421, "door.host", visit.host().host());
    }
    if (visit.changes() && visit.origin() != null && !own(visit)) {
      return turned(403, "door.origin", visit.origin());
    }
    if (visit.changes() && "cross-site".equals(visit.site())) {
      return turned(403, "door.site", visit.site());
    }
    boolean form = OF_FORMS.contains(visit.type());
    if (visit.carries() && !visit.ofInterface() && !form) {
      return turned(415, "door.form", visit.type());
    }
    boolean unasked = form || visit.type().isEmpty() || visit.type().equals(PLAIN);
    if (visit.carries() && visit.ofInterface() && unasked) {
      String key = visit.type().isEmpty() ? "door.no-type" : "door.body";
      return turned(415, key, visit.type());
    }
    return Optional.empty();
  }

  /** Https is taken for our own too: what ends it before us does not always say so. */
  private static boolean own(Visit visit) {
    try {
      URI origin = new URI(visit.origin());
      String scheme = origin.getScheme();
      return origin.getHost() != null
          && ("https".equals(scheme) || visit.scheme().equals(scheme))
          && plain(origin.getHost()).equals(plain(visit.host().host()))
          && port(origin.getPort(), scheme) == port(visit.host().port(), scheme);
    } catch (URISyntaxException broken) {
      return false;
    }
  }

  private static int port(int port, String scheme) {
    return port > 0 ? port : "https".equals(scheme) ? 443 : 80;
  }

  /** Without brackets, without a dot at its end. */
  private static String plain(String host) {
    return host.strip().toLowerCase(Locale.ROOT).replaceAll("^\\[|]$|\\.$", "");
  }

  private static Optional<TurnedAway> turned(int status, String key, String value) {
    return Optional.of(new TurnedAway(status, key, value));
  }
}
