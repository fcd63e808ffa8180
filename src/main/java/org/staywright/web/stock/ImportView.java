package org.staywright.web.stock;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import org.staywright.form.part.PartColumn;
import org.staywright.form.stock.ColumnPlan;
import org.staywright.form.stock.StockColumn;
import org.staywright.job.task.Task;
import org.staywright.stock.intake.Checked;
import org.staywright.stock.intake.Imports;
import org.staywright.stock.intake.Inbox;
import org.staywright.web.shell.PageText;
import org.staywright.wording.Wording;

/**
 * A file of stock that came in, for its page.
 *
 * @param name that its sender gave it
 * @param waiting whether the page is to come again
 * @param done of the work, percent
 * @param verdict in one sentence
 * @param kind how it looks: fits, near or none
 * @param base revision it was held against, 0 where it cannot be taken in
 * @param columns of the file and what they mean
 * @param choices every name that a column may have
 * @param rows numbers of the first rows
 * @param preview those rows, a line for each of our columns
 * @param derived what was worked out, and how often
 * @param faults the first of them
 * @param faultsFile address of all of them
 */
record ImportView(
    String name,
    ImportPlan plan,
    boolean waiting,
    int done,
    String verdict,
    String kind,
    int base,
    List<Column> columns,
    List<String> choices,
    List<Integer> rows,
    List<Line> preview,
    List<String> derived,
    List<StockView.Row> faults,
    String faultsFile) {

  /**
   * @param place from 1
   * @param means name of our column, with its unit; "-" where it is left out
   */
  record Column(int place, String header, String means, boolean unknown) {}

  /** One of our columns in the first rows. */
  record Line(String column, List<Cell> cells) {}

  record Cell(String value, boolean derived) {}

  static ImportView of(Inbox.Kept file, ImportPlan plan, Task task) {
    if (!task.state().over()) {
      int percent = task.total() == 0 ? 0 : (int) (100L * task.done() / task.total());
      return bare(file, plan, true, percent, PageText.text("stock.reading", task.done()));
    }
    return task.result() instanceof Imports.Outcome outcome
        ? of(file, plan, outcome)
        : said(file, plan, "stock.failed");
  }

  static ImportView said(Inbox.Kept file, ImportPlan plan, String key) {
    return bare(file, plan, false, 0, PageText.text(key));
  }

  private static ImportView bare(
      Inbox.Kept file, ImportPlan plan, boolean waiting, int done, String verdict) {
    return new ImportView(
        file.name(),
        plan,
        waiting,
        done,
        verdict,
        "near",
        0,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        "");
  }

  private static ImportView of(Inbox.Kept file, ImportPlan plan, Imports.Outcome outcome) {
    Wording wording = PageText.wording();
    Checked checked = outcome.checked();
    boolean written = outcome.revision() > 0;
    return new ImportView(
        file.name(),
        plan,
        false,
        100,
        verdict(outcome, wording),
        checked.clean() ? "fits" : "none",
        checked.clean() && !written ? checked.base() : 0,
        written ? List.of() : columns(checked.columns()),
        ColumnPlan.choices(),
        checked.preview().stream().map(Checked.Understood::row).toList(),
        preview(checked.preview()),
        checked.derived().entrySet().stream()
            .map(each -> column(each.getKey()) + ": " + each.getValue())
            .toList(),
        checked.faults().stream().map(fault -> StockView.row(fault, wording)).toList(),
        "/api/v1/stock/imports/" + outcome.id() + "/faults.csv");
  }

  private static String verdict(Imports.Outcome outcome, Wording wording) {
    Checked checked = outcome.checked();
    if (!checked.clean()) {
      return wording.text("stock.faulty", checked.faultCount());
    }
    Checked.Change change = checked.change();
    return wording.text(
        outcome.revision() == 0 ? "stock.would" : "stock.done",
        checked.rows(),
        change.added(),
        change.changed(),
        change.same(),
        change.gone(),
        outcome.revision());
  }

  private static List<Column> columns(List<ColumnPlan.Matched> columns) {
    return IntStream.range(0, columns.size())
        .mapToObj(
            i ->
                new Column(
                    i + 1,
                    columns.get(i).header(),
                    ImportPlan.meaning(columns.get(i)),
                    columns.get(i).unknown()))
        .toList();
  }

  /** Our columns in their own order, as far as any of these rows has them. */
  private static List<Line> preview(List<Checked.Understood> rows) {
    Set<String> there = new LinkedHashSet<>();
    rows.forEach(row -> there.addAll(row.values().keySet()));
    return StockColumn.ALL.stream()
        .map(StockColumn::name)
        .filter(there::contains)
        .map(name -> new Line(name, rows.stream().map(row -> cell(row, name)).toList()))
        .toList();
  }

  private static Cell cell(Checked.Understood row, String column) {
    return new Cell(
        Objects.requireNonNullElse(row.values().get(column), "–"), row.derived().contains(column));
  }

  private static String column(String field) {
    return Arrays.stream(PartColumn.values())
        .filter(column -> column.field().equals(field))
        .map(PartColumn::column)
        .findFirst()
        .orElse(field);
  }
}
