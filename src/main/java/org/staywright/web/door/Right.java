package org.staywright.web.door;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.staywright.account.Role;

/**
 * One row of the table of who may do what: the first that fits a request holds, and what none fits
 * nobody may.
 *
 * @param methods that it is about
 * @param path the whole of it, as an expression
 * @param role that it takes; empty: anyone, without signing in
 */
record Right(Set<String> methods, Pattern path, Optional<Role> role) {

  private static final Set<String> READ = Set.of("GET", "HEAD", "OPTIONS");
  private static final Set<String> SEND = Set.of("POST", "PUT", "PATCH", "DELETE");

  /** Longer rows stand before those that would hold for them too. */
  static final List<Right> TABLE =
      List.of(
          anyone(READ, "/(css|img|js|lib|webjars)/.*"),
          anyone(READ, "/q/health(/.*)?"),
          anyone(READ, "/sign-in|/welcome"),
          anyone(SEND, "/sign-in|/welcome|/preferences"),
          atLeast(
              Role.ADMINISTRATOR,
              READ,
              "/accounts|/backup|/api/v1/backup\\.zip|(/api/v1)?/changes([/.].*)?"),
          atLeast(Role.ADMINISTRATOR, SEND, "/accounts(/.*)?|/backup(/.*)?|/api/v1/restore"),
          atLeast(Role.KEEPER, READ, "(/api/v1)?/stock/imports(/.*)?"),
          atLeast(Role.KEEPER, SEND, "(/api/v1)?/stock(/.*)?"),
          atLeast(Role.EDITOR, READ, "/jobs/[^/]+/removal"),
          atLeast(Role.EDITOR, SEND, "(/api/v1)?/(jobs|batches)(/.*)?|/api/v1/tasks/.*"),
          atLeast(Role.READER, SEND, "/account/.*|/changes/name|/mounts/stop|/profile/points"),
          atLeast(
              Role.READER,
              SEND,
              "/api/v1/(fits|mounts|replacements|centre-of-mass|parts-lists)([/.].*)?"),
          atLeast(Role.READER, READ, "/.*"));

  private static Right anyone(Set<String> methods, String path) {
    return new Right(methods, Pattern.compile(path), Optional.empty());
  }

  private static Right atLeast(Role role, Set<String> methods, String path) {
    return new Right(methods, Pattern.compile(path), Optional.of(role));
  }

  /** The row that a request falls under. */
  static Optional<Right> of(String method, String path) {
    String plain = plain(path);
    return TABLE.stream()
        .filter(right -> right.methods.contains(method) && right.path.matcher(plain).matches())
        .findFirst();
  }

  /** Whether somebody with those roles may; without any he has not signed in. */
  static boolean allows(String method, String path, Stream<Role> roles) {
    Optional<Right> right = of(method, path);
    return right.isPresent()
        && (right.get().role.isEmpty() || roles.anyMatch(role -> role.may(right.get().role.get())));
  }

  /** However it is spelled: what answers skips all after a semicolon in a step; "" for no path. */
  private static String plain(String path) {
    String bare = path.replaceAll(";[^/]*", "").replace("+", "%2B");
    try {
      String decoded = URLDecoder.decode(bare, StandardCharsets.UTF_8);
      return decoded.replaceAll("/+", "/").replaceAll("(?<=.)/$", "");
    } catch (IllegalArgumentException unreadable) {
      return "";
    }
  }
}
