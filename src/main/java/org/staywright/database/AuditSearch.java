package org.staywright.database;

import java.time.Instant;
import java.time.OffsetDateTime;
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

  /** A question from its conditions on, with the values of their marks. */
  record Sql(String text, List<Object> values) {}

  /**
   * The newest first. What is the same in all rows stands first in the order, so that an index has
   * them in it: nothing is sorted, however many there are.
   *
   * @param place before which rows are asked for, null for the newest of all
   */
  Sql before(Recorded.@Nullable Place place) {
    List<String> wanted = new ArrayList<>(List.of("0 = 0"));
    List<Object> values = new ArrayList<>();
    StringBuilder order = new StringBuilder();
    if (subject != null) {
      wanted.add("subject = ?");
      values.add(subject.code());
      order.append("subject, ");
    }
    if (id != null) {
      wanted.add("subject_id = ?");
      values.add(id);
      order.append("subject_id, ");
    }
    if (who != null) {
      wanted.add("(lower(author) like ? escape '!' or address like ? escape '!')");
      String part = "%" + who.toLowerCase(Locale.ROOT).replaceAll("[!%_]", "!$0") + "%";
      values.addAll(List.of(part, part));
    }
    if (action != null) {
      wanted.add("action = ?");
      values.add(action.code());
    }
    if (from != null) {
      wanted.add("happened >= ?");
      values.add(from.atOffset(ZoneOffset.UTC));
    }
    if (until != null) {
      wanted.add("happened < ?");
      values.add(until.atOffset(ZoneOffset.UTC));
    }
    if (place != null) {
      OffsetDateTime moment = place.happened().atOffset(ZoneOffset.UTC);
      wanted.add("happened <= ? and (happened < ? or id < ?)");
      values.addAll(List.of(moment, moment, place.id()));
    }
    return new Sql(
        String.join(" and ", wanted) + " order by " + order + "happened desc, id desc", values);
  }
}
