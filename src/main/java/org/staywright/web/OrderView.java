package org.staywright.web;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.staywright.caution.Cautions;
import org.staywright.document.OrderText;
import org.staywright.fit.Fit;
import org.staywright.job.Choice;
import org.staywright.job.Chosen;
import org.staywright.job.Item;
import org.staywright.job.OrderLine;
import org.staywright.job.Ordering;
import org.staywright.job.PartsList;
import org.staywright.part.Price;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/**
 * What to order for a chosen part, in words.
 *
 * @param choice as it was made
 * @param sentence what the part does
 * @param lines to order
 * @param total net, "" where a price is missing
 * @param terms of the whole order
 * @param unmatched what belongs to it but is not in stock
 * @param cautions it calls for
 * @param marks why the part does not fit, empty where it does
 */
public record OrderView(
    Choice choice,
    String sentence,
    List<Line> lines,
    String total,
    List<Figure> terms,
    List<String> unmatched,
    List<CautionView> cautions,
    List<String> marks) {

  /**
   * @param position from 1
   * @param number of the part
   * @param page address of its page, "" for none
   * @param description in words
   * @param quantity to order
   * @param unitPrice net
   * @param total net
   * @param lead time
   */
  public record Line(
      int position,
      String number,
      String page,
      String description,
      String quantity,
      String unitPrice,
      String total,
      String lead) {}

  static OrderView of(Chosen chosen, Ordering ordering, Wording plain) {
    Wording wording = plain.about(chosen.job().mechanism().code());
    PartsList list = ordering.list(List.of(chosen));
    Choice choice = chosen.choice();
    Fit fit = chosen.fit();
    List<Line> lines = new ArrayList<>();
    for (OrderLine line : list.lines()) {
      lines.add(line(lines.size() + 1, line, wording));
    }
    return new OrderView(
        choice,
        fit == null ? "" : Verdict.sentence(fit, wording),
        lines,
        money(list.total(), list.currency(), wording),
        terms(list, choice, wording),
        list.unmatched().stream()
            .map(
                missing ->
                    wording.text(
                        "page.job.unmatched",
                        PartText.in(wording).name("fitting", missing.type()),
                        missing.beside()))
            .toList(),
        fit == null ? List.of() : CautionView.of(Cautions.of(chosen.job(), fit), wording),
        new OrderText(wording).marks(list));
  }

  private static Line line(int position, OrderLine line, Wording wording) {
    Item item = line.item();
    PartText text = PartText.in(wording);
    Price price = item.offer().price();
    String currency = price == null ? "" : price.currency();
    return new Line(
        position,
        item.number(),
        item.part() == null ? "" : "/parts/" + item.number(),
        item.part() == null ? text.describe(item.fitting()) : text.describe(item.part()),
        wording.number(line.quantity(), 0),
        money(line.unitPrice(), currency, wording),
        money(line.total(), currency, wording),
        FitRow.lead(line.leadTimeDays(), wording));
  }

  private static List<Figure> terms(PartsList list, Choice choice, Wording wording) {
    List<Figure> terms = new ArrayList<>();
    terms.add(new Figure(wording.text("page.job.lead"), FitRow.lead(list.leadTimeDays(), wording)));
    if (list.validUntil() != null) {
      terms.add(new Figure(wording.text("page.job.valid"), list.validUntil().toString()));
    }
    terms.add(new Figure(wording.text("page.job.revision"), choice.revision().toString()));
    return terms;
  }

  private static String money(BigDecimal amount, String currency, Wording wording) {
    return amount == null ? "–" : wording.money(amount, currency);
  }
}
