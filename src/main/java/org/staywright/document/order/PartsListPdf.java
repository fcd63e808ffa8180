package org.staywright.document.order;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.staywright.document.sheet.Grid;
import org.staywright.document.sheet.Paper;
import org.staywright.document.sheet.Sheet;
import org.staywright.job.order.ListedJob;
import org.staywright.job.order.OrderLine;
import org.staywright.job.order.PartsList;
import org.staywright.part.Price;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/** A parts list on paper, to order from. */
public final class PartsListPdf {

  private final PartsList list;
  private final Wording wording;
  private final OrderText text;
  private final String currency;
  private final List<Printed> printed = new ArrayList<>();

  /** A line in words: made once, as a list is laid out twice to know its pages. */
  private record Printed(List<String> cells, List<String> notes) {}

  private PartsListPdf(PartsList list, Wording wording) {
    this.list = list;
    this.wording = wording;
    this.text = new OrderText(wording);
    this.currency = list.currency();
    for (OrderLine line : list.lines()) {
      printed.add(new Printed(cells(printed.size() + 1, line), text.notes(line)));
    }
  }

  public static byte[] of(PartsList list, Wording wording) {
    return new PartsListPdf(list, wording).print();
  }

  private byte[] print() {
    OrderTitle title = new OrderTitle(list, wording);
    return Sheet.print(title.cover("parts-list"), this::fill);
  }

  private void fill(Sheet sheet) {
    OrderTitle title = new OrderTitle(list, wording);
    sheet.title(wording.text("document.parts-list"), title.name(), title.sentence());
    sheet.grid(lines());
    text.unmatched(list).forEach(sheet::note);
    sheet.heading(wording.text("document.terms"));
    sheet.pairs(terms());
    sheet.heading(wording.text("document.jobs"));
    sheet.grid(jobs());
    sheet.note(wording.text("document.ten-years.one"));
    sheet.heading(wording.text("document.transport"));
    sheet.note(wording.text("document.transport.about"));
    sheet.heading(wording.text("document.storage"));
    sheet.note(wording.text("document.storage.about"));
  }

  private Grid lines() {
    Grid grid =
        new Grid(
            List.of(
                head("position", 4, false),
                head("part-number", 11, false),
                head("description", 43, false),
                head("quantity", 7, true),
                head("unit-price", 9, true),
                head("line-total", 11, true),
                head("stock", 6, true),
                head("lead", 5, true),
                head("line-mass-kg", 9, true)));
    printed.forEach(line -> grid.row(line.cells(), 2, line.notes(), Paper.SOFT));
    grid.sum(
        List.of(
            "",
            "",
            wording.text("document.total"),
            "",
            "",
            money(list.total()),
            "",
            "",
            wording.shortest(list.mass().doubleValue(), Unit.KILOGRAM, 3)));
    return grid;
  }

  private List<String> cells(int position, OrderLine line) {
    Price price = line.item().offer().price();
    String own = price == null || currency != null ? "" : '\u00a0' + price.currency();
    return List.of(
        Integer.toString(position),
        line.item().number(),
        text.describe(line.item()),
        wording.number(line.quantity(), 0),
        money(line.unitPrice()) + own,
        money(line.total()) + own,
        wording.number(line.item().offer().stock(), 0),
        wording.text("document.days-short", line.leadTimeDays()),
        wording.exact(line.mass()));
  }

  private List<String[]> terms() {
    List<String[]> terms = new ArrayList<>();
    String unknown = wording.text("document.terms.unknown");
    terms.add(pair("document.terms.currency", currency == null ? unknown : currency));
    terms.add(pair("document.terms.vat", wording.text("document.terms.net")));
    terms.add(
        pair(
            "document.valid-until",
            list.validUntil() == null ? unknown : list.validUntil().toString()));
    terms.add(
        pair(
            "document.terms.mass",
            wording.text(
                "document.kilograms",
                wording.shortest(list.mass().doubleValue(), Unit.KILOGRAM, 3))));
    terms.add(pair("document.terms.lead", wording.text("document.days", list.leadTimeDays())));
    terms.add(
        pair(
            "document.terms.counted",
            list.countedOn() == null ? unknown : list.countedOn().toString()));
    terms.add(
        pair(
            "document.terms.revision",
            list.jobs().stream()
                .map(job -> Integer.toString(job.wanted().revision()))
                .distinct()
                .collect(Collectors.joining(", "))));
    return terms;
  }

  private Grid jobs() {
    Grid grid =
        new Grid(
            List.of(
                head("job", 32, false),
                head("set", 27, false),
                head("sets", 6, true),
                head("spares", 7, true),
                head("set-cost", 12, true),
                head("ten-years", 18, true)));
    for (ListedJob job : list.jobs()) {
      List<String> notes = new ArrayList<>(text.weak(job));
      if (text.mark(job) != null) {
        notes.add(0, text.mark(job));
      }
      // A line each: they are no one sentence.
      notes = notes.isEmpty() ? notes : List.of(String.join("\n", notes));
      grid.row(
          List.of(
              text.name(job.wanted().job()),
              text.set(job.wanted().outfit()),
              wording.number(job.wanted().sets(), 0),
              wording.number(job.wanted().spares(), 0),
              money(job.setCost()),
              tenYears(job)),
          0,
          notes,
          Paper.STOP);
    }
    return grid;
  }

  private String tenYears(ListedJob job) {
    return job.tenYearCost() == null
        ? money(null)
        : wording.text("document.ten-years.sets", money(job.tenYearCost()), job.setsInTenYears());
  }

  private String money(BigDecimal amount) {
    return amount == null ? "–" : wording.money(amount);
  }

  private Grid.Head head(String name, float width, boolean number) {
    return new Grid.Head(wording.text("document.column." + name), width, number);
  }

  private String[] pair(String key, String value) {
    return new String[] {wording.text(key), value};
  }
}
