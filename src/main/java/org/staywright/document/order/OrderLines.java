package org.staywright.document.order;

import java.util.List;
import java.util.stream.Collectors;
import org.staywright.job.order.OrderLine;
import org.staywright.job.order.PartsList;
import org.staywright.part.Price;
import org.staywright.wording.Wording;

/** Order lines as plain text that pastes into a mail. */
public final class OrderLines {

  private OrderLines() {}

  public static String of(PartsList list, Wording wording) {
    OrderText words = new OrderText(wording);
    StringBuilder text = new StringBuilder();
    String jobs =
        list.jobs().stream()
            .map(job -> words.name(job.wanted().job()))
            .collect(Collectors.joining(", "));
    add(text, wording.text("document.lines.head", jobs.isEmpty() ? "" : ": " + jobs));
    words.marks(list).forEach(mark -> add(text, mark));
    words.weak(list).forEach(sentence -> add(text, sentence));
    text.append('\n');
    List<OrderLine> lines = list.lines();
    for (int i = 0; i < lines.size(); i++) {
      OrderLine line = lines.get(i);
      add(
          text,
          wording.text(
              "document.lines.line",
              i + 1,
              wording.number(line.quantity(), 0),
              line.item().number(),
              words.describe(line.item())));
      Price price = line.item().offer().price();
      if (price != null) {
        add(
            text,
            wording.text(
                "document.lines.price",
                wording.money(line.unitPrice(), price.currency()),
                wording.money(line.total(), price.currency())));
      }
    }
    text.append('\n');
    add(
        text,
        list.total() == null
            ? wording.text("document.lines.total.unknown")
            : wording.text("document.lines.total", wording.money(list.total(), list.currency())));
    if (list.validUntil() != null) {
      add(text, wording.text("document.lines.valid", list.validUntil()));
    }
    add(text, wording.text("document.lines.mass", wording.exact(list.mass())));
    return text.toString();
  }

  /** A space that does not break is no friend of plain mail. */
  private static void add(StringBuilder text, String line) {
    text.append(line.replace('\u00a0', ' ')).append('\n');
  }
}
