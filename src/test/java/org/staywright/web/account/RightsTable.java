package org.staywright.web.account;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.staywright.account.Role;

/** Who may do what, as the manual tells it: the other side of every check of rights. */
final class RightsTable {

  private static final Path MANUAL = Path.of("src/site/markdown/operation.md");
  private static final String NOBODY = "nobody signed in";

  private static final Set<String> READ = Set.of("GET", "HEAD");
  private static final Set<String> SEND = Set.of("POST", "PUT", "PATCH", "DELETE");

  /** One cell: its addresses, and the role that they take. */
  private record Cell(Set<String> methods, List<Pattern> addresses, Optional<Role> role) {

    boolean names(String method, String path) {
      return methods.contains(method)
          && addresses.stream().anyMatch(address -> address.matcher(path).matches());
    }
  }

  private final List<Cell> cells;

  RightsTable() {
    try {
      cells =
          Files.readAllLines(MANUAL).stream()
              .dropWhile(line -> !line.startsWith("| least role |"))
              .skip(2)
              .takeWhile(line -> line.startsWith("|"))
              .flatMap(line -> cells(line.split("\\|")).stream())
              .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Cell> cells(String[] columns) {
    String who = columns[1].strip();
    Optional<Role> role =
        who.equals(NOBODY) ? Optional.empty() : Optional.of(Role.of(who).orElseThrow());
    return List.of(
        new Cell(READ, addresses(columns[2]), role), new Cell(SEND, addresses(columns[3]), role));
  }

  private static List<Pattern> addresses(String cell) {
    return Arrays.stream(cell.split("`"))
        .map(String::strip)
        .filter(text -> text.startsWith("/"))
        .map(text -> Pattern.compile(Pattern.quote(text).replace("…", "\\E.*\\Q")))
        .toList();
  }

  int size() {
    return cells.size();
  }

  /** Whether somebody may; without a role he has not signed in. */
  boolean allows(String method, String path, Optional<Role> has) {
    Optional<Cell> cell = cells.stream().filter(each -> each.names(method, path)).findFirst();
    return cell.isPresent()
        && (cell.get().role.isEmpty()
            || has.filter(role -> role.may(cell.get().role.get())).isPresent());
  }
}
