package org.staywright.web;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.staywright.form.ColumnPlan;
import org.staywright.form.RowFault;
import org.staywright.stock.Checked;
import org.staywright.stock.Imports;
import org.staywright.stock.Revision;
import org.staywright.wording.Wording;

/**
 * What came of a file, for the page.
 *
 * @param verdict in one sentence
 * @param clean whether it had no fault
 * @param columns of the file and what they mean
 * @param preview first rows
 * @param derived what was worked out, and how often
 * @param faults the first of them
 * @param faultsFile address of all of them
 */
record StockView(
    String verdict,
    boolean clean,
    List<Column> columns,
    List<List<String>> preview,
    List<String> derived,
    List<Row> faults,
    String faultsFile) {

  static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'").withZone(ZoneOffset.UTC);

  record Column(String header, String meaning) {}

  record Row(int row, String sentence) {}

  record RevisionRow(int number, String created, String origin, boolean newest) {}

  /**
   * @param outcome null where nothing was sent
   */
  static StockView of(Imports.Outcome outcome) {
    if (outcome == null) {
      return null;
    }
    Wording wording = Say.wording();
    Checked checked = outcome.checked();
    return new StockView(
        verdict(outcome, wording),
        checked.clean(),
        checked.columns().stream().map(StockView::column).toList(),
        checked.preview(),
        checked.derived().entrySet().stream().map(e -> e.getKey() + ": " + e.getValue()).toList(),
        checked.faults().stream().map(fault -> row(fault, wording)).toList(),
        "/api/v1/stock/imports/" + outcome.id() + "/faults.csv");
  }

  private static String verdict(Imports.Outcome outcome, Wording wording) {
    Checked checked = outcome.checked();
    if (!checked.clean()) {
      return wording.text("stock.faulty", checked.faultCount());
    }
    Checked.Change change = checked.change();
    String key = outcome.revision() == 0 ? "stock.would" : "stock.done";
    return wording.text(
        key,
        checked.rows(),
        change.added(),
        change.changed(),
        change.same(),
        change.gone(),
        outcome.revision());
  }

  private static Column column(ColumnPlan.Matched matched) {
    return new Column(matched.header(), matched.meaning() == null ? "–" : matched.meaning().name());
  }

  static Row row(RowFault fault, Wording wording) {
    return new Row(fault.row(), wording.fault(fault.fault()));
  }

  static List<RevisionRow> revisions(List<Revision> revisions) {
    return revisions.stream()
        .map(
            revision ->
                new RevisionRow(
                    revision.number(),
                    TIME.format(revision.created()),
                    revision.origin(),
                    revision.number() == revisions.get(0).number()))
        .toList();
  }
}
