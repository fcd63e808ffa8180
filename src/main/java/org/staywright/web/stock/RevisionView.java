package org.staywright.web.stock;

import java.util.List;
import java.util.Map;
import org.staywright.stock.Revision;
import org.staywright.stock.RevisionDifference;
import org.staywright.web.audit.History;
import org.staywright.web.shell.Address;
import org.staywright.web.shell.PageText;

/**
 * Two revisions beside each other, a page of what differs.
 *
 * @param others revisions to compare with
 * @param sentence how many differ
 * @param before address of the page before, "" for none
 * @param after address of the page after, "" for none
 */
record RevisionView(
    StockView.RevisionRow revision,
    int since,
    List<StockView.RevisionRow> others,
    RevisionDifference differs,
    String sentence,
    int page,
    int pages,
    String before,
    String after) {

  static final int SIZE = 100;

  static RevisionView of(
      List<Revision> revisions, History history, RevisionDifference differs, int page) {
    List<StockView.RevisionRow> rows = StockView.revisions(revisions, history);
    int most =
        Math.max(
            differs.changed().count(), Math.max(differs.added().count(), differs.gone().count()));
    int pages = Math.max(1, (most + SIZE - 1) / SIZE);
    Address address =
        new Address(
            "/stock/revisions/" + differs.to(),
            Map.of("since", List.of(Integer.toString(differs.from()))));
    return new RevisionView(
        rows.stream().filter(row -> row.number() == differs.to()).findFirst().orElseThrow(),
        differs.from(),
        rows.stream().filter(row -> row.number() != differs.to()).toList(),
        differs,
        PageText.wording()
            .text(
                "stock.differs",
                differs.from(),
                differs.added().count(),
                differs.changed().count(),
                differs.gone().count()),
        page,
        pages,
        page > 1 ? address.with("page", page - 1).toString() : "",
        page < pages ? address.with("page", page + 1).toString() : "");
  }
}
