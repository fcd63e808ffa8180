package org.staywright.web.batch;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.staywright.form.batch.BatchRow;
import org.staywright.job.batch.Batch;
import org.staywright.job.batch.Batches;
import org.staywright.web.shell.PageText;
import org.staywright.web.stock.StockView;
import org.staywright.wording.Wording;

/**
 * A batch, for the page.
 *
 * @param progress where it stands, in one sentence
 * @param tally what came of its jobs, in one sentence
 * @param over whether nothing more will come
 */
record BatchView(
    String id, String name, String created, String progress, String tally, boolean over) {

  /** More stand in the file. */
  private static final int SHOWN = 200;

  /**
   * A row of the table; what does not apply is empty.
   *
   * @param verdict as in the file
   * @param part number of the best, or nearest
   * @param blocked codes of what stands against it
   */
  record Row(
      String row,
      String name,
      String verdict,
      String part,
      String count,
      String price,
      String blocked) {}

  static BatchView of(Batch batch) {
    Wording wording = PageText.wording();
    Batch.Tally tally = batch.tally();
    String progress =
        switch (batch.state()) {
          case QUEUED -> wording.text("batch.queued", batch.total());
          case RUNNING -> wording.text("batch.running", tally.done(), batch.total());
          case DONE -> wording.text("batch.done", batch.total());
          case STOPPED -> wording.text("batch.stopped", tally.done(), batch.total());
          case FAILED -> wording.text("batch.failed", tally.done(), batch.total());
        };
    return new BatchView(
        batch.id(),
        batch.name(),
        StockView.TIME.format(batch.created()),
        progress,
        wording.text("batch.tally", tally.fits(), tally.near(), tally.none(), tally.refused()),
        batch.state().over());
  }

  static List<Row> rows(Batches batches, String id) {
    List<Row> rows = new ArrayList<>();
    batches.results(id, SHOWN, result -> rows.add(row(result)));
    return rows;
  }

  private static Row row(JsonNode result) {
    List<String> cells = BatchRow.cells(result);
    return new Row(
        cell(cells, "row"),
        cell(cells, "name"),
        cell(cells, "verdict"),
        cell(cells, "partNumber"),
        cell(cells, "count"),
        cell(cells, "setPrice"),
        cell(cells, "blockedBy"));
  }

  private static String cell(List<String> cells, String column) {
    return cells.get(BatchRow.COLUMNS.indexOf(column));
  }
}
