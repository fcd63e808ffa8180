package org.staywright.web.stock;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import org.staywright.form.table.RowFault;
import org.staywright.stock.Revision;
import org.staywright.web.audit.History;
import org.staywright.wording.Wording;

/** Rows of the pages about the stock itself. */
public final class StockView {

  public static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'").withZone(ZoneOffset.UTC);

  private StockView() {}

  /** A fault of a file in words. */
  public record Row(int row, String sentence) {}

  /**
   * @param before number of the revision it came from, 0 for the first
   * @param maker who made it, "" where nobody has noted it
   */
  record RevisionRow(
      int number, String created, String origin, boolean newest, int before, String maker) {}

  public static Row row(RowFault fault, Wording wording) {
    return new Row(fault.row(), wording.fault(fault.fault()));
  }

  static List<RevisionRow> revisions(List<Revision> revisions, History history) {
    Map<Integer, String> makers = history.makers(revisions);
    return revisions.stream()
        .map(
            revision ->
                new RevisionRow(
                    revision.number(),
                    TIME.format(revision.created()),
                    revision.origin(),
                    revision.number() == revisions.get(0).number(),
                    revision.number() - 1,
                    makers.getOrDefault(revision.number(), "")))
        .toList();
  }
}
