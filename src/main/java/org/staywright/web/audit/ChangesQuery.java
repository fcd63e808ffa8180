package org.staywright.web.audit;

import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.withDefault;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.staywright.database.AuditSearch;
import org.staywright.database.Change.Action;
import org.staywright.database.Change.Subject;
import org.staywright.database.Recorded;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Text;
import org.staywright.form.schema.Kind.Whole;
import org.staywright.form.schema.Shape;

/** What is asked of the changes: by the page, by the interface and by their file alike. */
public final class ChangesQuery {

  private static final Kind DAY =
      new Text(10, Pattern.compile("\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])"), "YYYY-MM-DD");

  /** The last of February is meant where somebody asks for its 30th. */
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ISO_LOCAL_DATE.withResolverStyle(ResolverStyle.SMART);

  private static final String BEFORE = "before";

  /** Which changes. */
  public static final Shape SEARCH =
      Shape.of(
          "changes-search",
          optional("who", Text.upTo(100)),
          optional(
              "subject",
              Choice.of(Stream.of(Subject.values()).map(Subject::code).toArray(String[]::new))),
          optional("id", Text.upTo(64)),
          optional(
              "action",
              Choice.of(Stream.of(Action.values()).map(Action::code).toArray(String[]::new))),
          optional("from", DAY),
          optional("until", DAY));

  /** Which changes, and how many of them before one that was seen already. */
  public static final Shape PAGE =
      Shape.of(
          "changes-query",
          Stream.concat(
                  SEARCH.fields().values().stream(),
                  Stream.of(
                      optional(BEFORE, new Text(34, Recorded.Place.CODE, "…-…")),
                      withDefault("size", new Whole(1, 200), 50)))
              .toArray(org.staywright.form.schema.Field[]::new));

  private ChangesQuery() {}

  public static AuditSearch search(JsonNode query) {
    String subject = text(query, "subject");
    String action = text(query, "action");
    String from = text(query, "from");
    String until = text(query, "until");
    return new AuditSearch(
        text(query, "who"),
        subject == null ? null : Subject.of(subject),
        text(query, "id"),
        action == null ? null : Action.of(action),
        from == null ? null : start(from, 0),
        until == null ? null : start(until, 1));
  }

  /** The place before which is asked for. */
  public static Recorded.@Nullable Place before(JsonNode query) {
    String before = text(query, BEFORE);
    return before == null ? null : Recorded.Place.of(before).orElse(null);
  }

  private static Instant start(String day, int later) {
    return LocalDate.parse(day, DATE).plusDays(later).atStartOfDay(ZoneOffset.UTC).toInstant();
  }

  private static String text(JsonNode query, String name) {
    return query.hasNonNull(name) ? query.get(name).textValue() : null;
  }
}
