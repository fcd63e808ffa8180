package org.staywright.document.order;

import java.util.List;
import org.staywright.document.sheet.Grid;
import org.staywright.document.sheet.Paper;
import org.staywright.document.sheet.Sheet;
import org.staywright.job.order.OrderLine;
import org.staywright.job.order.PartsList;
import org.staywright.wording.Wording;

/** A request for quotation: the lines of a parts list with room for a supplier's answer. */
public final class QuotationRequest {

  private static final float LINE = 20;

  private final PartsList list;
  private final Wording wording;

  private QuotationRequest(PartsList list, Wording wording) {
    this.list = list;
    this.wording = wording;
  }

  public static byte[] pdf(PartsList list, Wording wording) {
    QuotationRequest request = new QuotationRequest(list, wording);
    return Sheet.print(new OrderTitle(list, wording).cover("quotation"), request::fill);
  }

  private void fill(Sheet sheet) {
    sheet.title(
        wording.text("document.quotation"),
        new OrderTitle(list, wording).name(),
        wording.text("document.quotation.sentence"));
    sheet.grid(parties());
    sheet.heading(wording.text("document.order-lines"));
    sheet.grid(lines());
    sheet.heading(wording.text("document.quotation.terms"));
    sheet.grid(terms());
    sheet.heading(wording.text("document.quotation.declare"));
    for (String what : List.of("batch", "transport", "equal")) {
      sheet.note("– " + wording.text("document.quotation.declare." + what));
    }
    sheet.heading(text("signed"));
    sheet.grid(signature());
  }

  private Grid parties() {
    Grid grid =
        new Grid(
            List.of(
                new Grid.Head(text("sender"), 14, false),
                new Grid.Head("", 36, false),
                new Grid.Head(text("receiver"), 14, false),
                new Grid.Head("", 36, false)));
    for (String name : List.of("name", "address", "contact", "mail")) {
      grid.blanks(List.of(text(name), "", text(name), ""), LINE);
    }
    grid.blanks(List.of(text("number"), "", text("answer-by"), ""), LINE);
    return grid;
  }

  private Grid lines() {
    OrderText words = new OrderText(wording);
    Grid grid =
        new Grid(
            List.of(
                column("position", 4, false),
                column("part-number", 12, false),
                column("description", 46, false),
                column("quantity", 8, true),
                new Grid.Head(text("your-price"), 15, true),
                new Grid.Head(text("your-days"), 15, true)));
    int position = 1;
    for (OrderLine line : list.lines()) {
      String batch = wording.text("document.note.batch", line.matched());
      grid.row(
          List.of(
              Integer.toString(position++),
              line.item().number(),
              words.describe(line.item()),
              wording.number(line.quantity(), 0),
              "",
              ""),
          2,
          line.matched() > 1 ? List.of(batch) : List.of(),
          Paper.SOFT);
    }
    return grid;
  }

  private Grid terms() {
    Grid grid = new Grid(List.of(blank(24), blank(26), blank(24), blank(26)));
    grid.blanks(List.of(text("valid-until"), "", text("currency"), ""), LINE);
    grid.blanks(List.of(text("delivery"), "", text("payment"), ""), LINE);
    return grid;
  }

  private Grid signature() {
    Grid grid = new Grid(List.of(blank(24), blank(76)));
    grid.blanks(List.of(text("place"), ""), 2 * LINE);
    return grid;
  }

  private static Grid.Head blank(float width) {
    return new Grid.Head("", width, false);
  }

  private Grid.Head column(String name, float width, boolean number) {
    return new Grid.Head(wording.text("document.column." + name), width, number);
  }

  private String text(String name) {
    return wording.text("document.quotation." + name);
  }
}
