package org.staywright.web.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.staywright.caution.fit.Cautions;
import org.staywright.document.order.OrderLines;
import org.staywright.document.order.OrderText;
import org.staywright.job.Chosen;
import org.staywright.job.order.ListedJob;
import org.staywright.job.order.OrderLine;
import org.staywright.job.order.PartsList;
import org.staywright.part.Offer;
import org.staywright.part.Price;
import org.staywright.unit.Unit;
import org.staywright.web.field.Labelled;
import org.staywright.web.fit.CautionView;
import org.staywright.web.fit.FitRow;
import org.staywright.web.fit.Supply;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/**
 * A parts list in words.
 *
 * @param lines to order
 * @param total net, "–" where a price is missing
 * @param terms of the whole order
 * @param jobs it is for, with what a set costs
 * @param notes that hold for all of it
 * @param marks why a part does not fit, empty where all do
 * @param mail order lines to paste
 * @param mailRows lines of that text
 * @param cautions it calls for
 */
public record ListView(
    List<Line> lines,
    String total,
    List<Labelled> terms,
    List<JobCost> jobs,
    List<String> notes,
    List<String> marks,
    String mail,
    int mailRows,
    List<CautionView> cautions) {

  /** Characters of a row of the mail before it may wrap. */
  private static final int MAIL_WIDTH = 100;

  /**
   * @param position from 1
   * @param number of the part
   * @param page address of its page, "" for none
   * @param description in words
   * @param quantity to order
   * @param unitPrice net
   * @param total net
   * @param stock on the shelf, and when it was counted
   * @param lead time
   * @param notes a buyer should know
   */
  public record Line(
      int position,
      String number,
      String page,
      String description,
      String quantity,
      String unitPrice,
      String total,
      String stock,
      String lead,
      List<String> notes) {}

  /**
   * @param name of the job
   * @param set what one set is made of
   * @param sets wanted, and spares
   * @param now cost of one set, net
   * @param tenYears cost of one place over ten years, net
   */
  public record JobCost(String name, String set, String sets, String now, String tenYears) {}

  public static ListView of(List<Chosen> chosen, PartsList list, Wording wording) {
    OrderText words = new OrderText(wording);
    List<Line> lines = new ArrayList<>();
    for (OrderLine line : list.lines()) {
      lines.add(line(lines.size() + 1, line, words, wording));
    }
    String mail = OrderLines.of(list, wording);
    return new ListView(
        lines,
        money(list.total(), list.currency(), wording),
        terms(chosen, list, wording),
        list.jobs().stream().map(job -> cost(job, list.currency(), wording)).toList(),
        notes(list, wording),
        words.marks(list),
        mail,
        mail.lines().mapToInt(row -> 1 + row.length() / MAIL_WIDTH).sum() + 1,
        chosen.stream()
            .filter(one -> one.fit() != null)
            .flatMap(one -> cautions(one, wording).stream())
            .distinct()
            .toList());
  }

  private static List<CautionView> cautions(Chosen one, Wording wording) {
    return CautionView.of(
        Cautions.of(one.job(), one.fit()), wording.about(one.job().mechanism().code()));
  }

  private static Line line(int position, OrderLine line, OrderText words, Wording wording) {
    Offer offer = line.item().offer();
    PartText text = PartText.in(wording);
    String currency = offer.price() == null ? "" : offer.price().currency();
    List<String> notes = new ArrayList<>(words.notes(line));
    if (offer.price() != null) {
      notes.add(0, breaks(offer.price(), wording));
    }
    return new Line(
        position,
        line.item().number(),
        line.item().part() == null ? "" : "/parts/" + line.item().number(),
        line.item().part() == null
            ? text.describe(line.item().fitting())
            : text.describe(line.item().part()),
        wording.number(line.quantity(), 0),
        money(line.unitPrice(), currency, wording),
        money(line.total(), currency, wording),
        Supply.stock(offer, wording),
        FitRow.lead(line.leadTimeDays(), wording),
        notes);
  }

  /** Every price by its quantity. */
  public static List<String> steps(Price price, Wording wording) {
    return price.breaks().stream()
        .map(
            step ->
                wording.text(
                    "order.break",
                    wording.number(step.from(), 0),
                    wording.money(step.each(), price.currency())))
        .toList();
  }

  private static String breaks(Price price, Wording wording) {
    String each = String.join("; ", steps(price, wording));
    return price.validUntil() == null
        ? wording.text("order.breaks", each)
        : wording.text("order.breaks.valid", each, price.validUntil().toString());
  }

  private static List<Labelled> terms(List<Chosen> chosen, PartsList list, Wording wording) {
    List<Labelled> terms = new ArrayList<>();
    terms.add(new Labelled(wording.text("job.lead"), FitRow.lead(list.leadTimeDays(), wording)));
    if (list.validUntil() != null) {
      terms.add(new Labelled(wording.text("job.valid"), list.validUntil().toString()));
    }
    if (list.countedOn() != null) {
      terms.add(new Labelled(wording.text("order.counted"), list.countedOn().toString()));
    }
    terms.add(new Labelled(wording.text("order.vat"), wording.text("order.vat.net")));
    terms.add(
        new Labelled(
            wording.text("order.mass"),
            wording.text(
                "document.kilograms",
                wording.shortest(list.mass().doubleValue(), Unit.KILOGRAM, 3))));
    String revisions =
        chosen.stream()
            .map(one -> one.range().revision())
            .distinct()
            .map(revision -> revision.toString())
            .collect(Collectors.joining(", "));
    terms.add(new Labelled(wording.text("job.revision"), revisions));
    return terms;
  }

  private static JobCost cost(ListedJob job, String currency, Wording wording) {
    String name = job.wanted().job();
    return new JobCost(
        name.isBlank() ? wording.text("order.unnamed") : name,
        new OrderText(wording).set(job.wanted().outfit()),
        wording.text("order.sets", job.wanted().sets(), job.wanted().spares()),
        money(job.setCost(), currency, wording),
        money(job.tenYearCost(), currency, wording));
  }

  private static List<String> notes(PartsList list, Wording wording) {
    List<String> notes = new ArrayList<>(new OrderText(wording).unmatched(list));
    List<Integer> sets =
        list.jobs().stream().map(ListedJob::setsInTenYears).filter(Objects::nonNull).toList();
    if (list.jobs().size() == 1 && sets.size() == 1) {
      notes.add(wording.text("document.ten-years", wording.number(sets.get(0), 0)));
    } else if (!sets.isEmpty()) {
      notes.add(wording.text("document.ten-years.one"));
    }
    notes.add(wording.text("document.storage.about"));
    notes.add(wording.text("document.transport.about"));
    return notes;
  }

  static String money(BigDecimal amount, String currency, Wording wording) {
    return amount == null || currency == null ? "–" : wording.money(amount, currency);
  }
}
