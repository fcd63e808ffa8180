package org.staywright.web.audit;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.staywright.database.Audit;
import org.staywright.database.AuditSearch;
import org.staywright.database.Change.Action;
import org.staywright.database.Change.Subject;
import org.staywright.database.Recorded;
import org.staywright.job.SavedJob;
import org.staywright.stock.Revision;
import org.staywright.web.shell.PageText;
import org.staywright.wording.Wording;

/**
 * What the pages of a thing tell of who changed it. A number may come back with a backup and mean
 * another thing: only what also agrees with the moment that the thing was made is told of it.
 */
@ApplicationScoped
public class History {

  /** More stand on the page of changes. */
  private static final int SHOWN = 20;

  /** Revisions whose makers are looked up. */
  private static final int MOST_REVISIONS = 500;

  private final Audit audit;

  History(Audit audit) {
    this.audit = audit;
  }

  /**
   * Of a saved job.
   *
   * @param rows the last of its changes, the newest first, and when everything was replaced
   * @param choice who made the choice as it stands, in a sentence; "" where nobody has noted it
   */
  public record OfJob(List<ChangeRow> rows, String choice) {}

  public OfJob of(SavedJob job) {
    Wording wording = PageText.wording();
    List<Recorded> own =
        rows(AuditSearch.of(Subject.JOB, job.id.toString()), SHOWN)
            .filter(row -> moment(row, "created").filter(job.created::equals).isPresent())
            .toList();
    List<ChangeRow> shown =
        Stream.concat(own.stream(), rows(AuditSearch.of(Subject.EVERYTHING, null), SHOWN))
            .filter(row -> !row.happened().isBefore(job.created))
            .sorted(Comparator.comparing(Recorded::happened).thenComparing(Recorded::id).reversed())
            .limit(SHOWN)
            .map(row -> ChangeRow.of(row, wording))
            .toList();
    return new OfJob(
        shown,
        own.stream()
            .filter(row -> made(row, job))
            .findFirst()
            .map(row -> choice(row, wording))
            .orElse(""));
  }

  private static boolean made(Recorded row, SavedJob job) {
    boolean chosen =
        row.change().action() == Action.CHOSEN || row.change().action() == Action.ORDERED;
    return chosen
        && job.choice != null
        && moment(row, "choice", "made").filter(job.choice.made()::equals).isPresent();
  }

  private static String choice(Recorded row, Wording wording) {
    return wording.text(
        "audit.choice." + row.change().action().code(),
        ChangeRow.who(row.author(), wording),
        ChangeRow.time(row.happened()));
  }

  /** Who made each revision of the range, in words, by its number, as far as it was noted. */
  public Map<Integer, String> makers(List<Revision> revisions) {
    Wording wording = PageText.wording();
    Map<Integer, Instant> created =
        revisions.stream().collect(Collectors.toMap(Revision::number, Revision::created));
    Map<Integer, String> makers = new HashMap<>();
    Stream.concat(
            rows(AuditSearch.of(Subject.RANGE, null), MOST_REVISIONS),
            rows(AuditSearch.of(Subject.EVERYTHING, null), SHOWN))
        .forEach(
            row -> {
              int number = Integer.parseInt(row.change().id());
              if (moment(row, "created").equals(Optional.ofNullable(created.get(number)))) {
                makers.putIfAbsent(number, ChangeRow.who(row.author(), wording));
              }
            });
    return makers;
  }

  private Stream<Recorded> rows(AuditSearch search, int most) {
    return audit.page(search, null, most).stream();
  }

  /** A moment in what a change left, or took away. */
  private static Optional<Instant> moment(Recorded row, String... path) {
    String told = row.change().after() == null ? row.change().before() : row.change().after();
    String text = ChangeRow.tree(told).at("/" + String.join("/", path)).asText("");
    return text.isEmpty() ? Optional.empty() : Optional.of(Instant.parse(text));
  }
}
