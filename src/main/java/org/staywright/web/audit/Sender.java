package org.staywright.web.audit;

import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.core.http.Cookie;
import io.vertx.core.net.SocketAddress;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import org.staywright.database.Author;
import org.staywright.database.Author.Standing;
import org.staywright.web.door.SignIn;
import org.staywright.web.door.Visitor;
import org.staywright.web.shell.Preference;
import org.staywright.web.shell.RequestId;

/**
 * Who acts in a request: the one place that says it. Where nobody has to sign in, a name is what
 * somebody typed.
 */
@ApplicationScoped
@Named("sender")
public class Sender {

  /** The field of forms, and the cookie that fills it in. */
  public static final String BY = "by";

  /** The header of RFC 9110, 10.1.2: the person for whom a program asks. */
  public static final String FROM = "From";

  private static final int LONGEST = 100;

  private final CurrentVertxRequest request;
  private final SignIn signIn;
  private final Visitor visitor;

  Sender(CurrentVertxRequest request, SignIn signIn, Visitor visitor) {
    this.request = request;
    this.signIn = signIn;
    this.visitor = visitor;
  }

  /**
   * Of a form.
   *
   * @param by its field, which the browser remembers; null where it has none: as remembered
   */
  public Author typed(String by) {
    if (by == null || !isAsked()) {
      return author(getRemembered());
    }
    String name = plain(by);
    Preference.keep(BY, URLEncoder.encode(name, StandardCharsets.UTF_8));
    return author(name);
  }

  /**
   * Of the interface.
   *
   * @param from its header, null for none
   */
  public Author sent(String from) {
    return author(from == null ? "" : plain(utf8(from)));
  }

  /** Of one who is about to sign in: he says who he is, and that is not known yet. */
  public Author named(String name) {
    return author(plain(name));
  }

  /** The name that was typed last in this browser, "" for none. */
  public String getRemembered() {
    Cookie cookie = request.getCurrent().request().getCookie(BY);
    try {
      return cookie == null
          ? ""
          : plain(URLDecoder.decode(cookie.getValue(), StandardCharsets.UTF_8));
    } catch (IllegalArgumentException unreadable) {
      return "";
    }
  }

  /** Whether forms are to ask for a name. */
  public boolean isAsked() {
    return !signIn.byAccounts();
  }

  /**
   * @param given as somebody gave it, which counts for nothing where it is known who asks
   */
  private Author author(String given) {
    RoutingContext current = request.getCurrent();
    SocketAddress address = current.request().remoteAddress();
    boolean known = visitor.known();
    Standing standing = given.isEmpty() ? Standing.NOBODY : Standing.SAID;
    return new Author(
        known ? Standing.SIGNED_IN : standing,
        known ? plain(visitor.noted()) : given,
        address == null ? null : address.hostAddress(),
        RequestId.of(current));
  }

  /** In one line, without signs that are not seen or turn others about; cut where it is seen. */
  private static String plain(String name) {
    String line = name.replaceAll("[\\p{C}\\p{Z}]+", " ").strip();
    if (line.codePointCount(0, line.length()) <= LONGEST) {
      return line;
    }
    return line.substring(0, line.offsetByCodePoints(0, LONGEST - 1)) + "…";
  }

  /** Headers come a byte a character; most programs mean UTF-8. */
  private static String utf8(String header) {
    try {
      byte[] bytes = header.getBytes(StandardCharsets.ISO_8859_1);
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException other) {
      return header;
    }
  }
}
