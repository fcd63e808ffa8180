package org.staywright.web.audit;

import java.util.List;
import java.util.Objects;
import org.staywright.database.Recorded;
import org.staywright.wording.Wording;

/**
 * A change opened.
 *
 * @param request its name in the log, "" for none
 * @param entries that are otherwise than before
 * @param kind {@code added}, {@code removed} or {@code changed}: which of before and after there is
 */
record ChangeView(String request, List<Difference> entries, String kind) {

  static ChangeView of(Recorded row, Wording wording) {
    String kind =
        row.change().before() == null
            ? "added"
            : row.change().after() == null ? "removed" : "changed";
    return new ChangeView(
        Objects.requireNonNullElse(row.author().request(), ""),
        Difference.of(row.change(), wording),
        kind);
  }
}
