package org.staywright.database;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.staywright.database.Change.Action;
import org.staywright.database.Change.Subject;

/**
 * Which rows of the audit are wanted; what is null is not asked for.
 *
 * @param who a part of the name or of the address
 * @param subject kind of the thing
 * @param id of the thing
 * @param action what was done
 * @param from the first moment
 * @param until the first moment that is too late
 */
public record AuditSearch(
    @Nullable String who,
    @Nullable Subject subject,
    @Nullable String id,
    @Nullable Action action,
    @Nullable Instant from,
    @Nullable Instant until) {

  public static final AuditSearch ALL = new AuditSearch(null, null, null, null, null, null);

  /** Of one thing. */
  public static AuditSearch of(Subject subject, @Nullable String id) {
    return new AuditSearch(null, subject, id, null, null, null);
  }

  /** Conditions of a question with the values of their marks. */
  record Sql(String text, List<Object> values) {}

  /** Rows from one to before another. */
  Sql between(long first, long end) {
    StringBuilder text = new StringBuilder("id >= ? and id < ?");
    List<Object> values = new ArrayList<>(List.of(first, end));
    if (who != null) {
      text.append(" and (lower(author) like ? escape '!' or address like ? escape '!')");
      String part = "%" + who.toLowerCase(Locale.ROOT).replaceAll("[!%_]", "!$0") + "%";
      values.add(part);
      values.add(part);
    }
    and(text, values, " and subject = ?", subject == null ? null : subject.code());
    and(text, values, " and subject_id = ?", id);
    and(text, values, " and action = ?", action == null ? null : action.code());
    and(text, values, " and happened >= ?", from == null ? null : from.atOffset(ZoneOffset.UTC));
    and(text, values, " and happened < ?", until == null ? null : until.atOffset(ZoneOffset.UTC));
    return new Sql(text.toString(), values);
  }

  private static void and(
      StringBuilder text, List<Object> values, String condition, @Nullable Object value) {
    if (value != null) {
      text.append(condition);
      values.add(value);
    }
  }
}
