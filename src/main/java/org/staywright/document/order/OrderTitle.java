package org.staywright.document.order;

import java.util.List;
import org.staywright.document.sheet.Sheet;
import org.staywright.job.order.PartsList;
import org.staywright.wording.Wording;

/** What stands above an order and around it. */
public final class OrderTitle {

  /** More marks than this would leave no room for the list. */
  private static final int MOST_MARKS = 3;

  private final PartsList list;
  private final Wording wording;

  public OrderTitle(PartsList list, Wording wording) {
    this.list = list;
    this.wording = wording;
  }

  /** The job, or how many. */
  String name() {
    return list.jobs().size() == 1
        ? new OrderText(wording).name(list.jobs().get(0).wanted().job())
        : wording.text("document.parts-list.jobs", list.jobs().size());
  }

  String sentence() {
    String total =
        list.total() == null
            ? wording.text("document.parts-list.unpriced")
            : wording.money(list.total(), list.currency());
    String here =
        list.leadTimeDays() == 0
            ? wording.text("document.stock.now")
            : wording.text("document.stock.days", list.leadTimeDays());
    return wording.text("document.parts-list.sentence", list.lines().size(), total, here);
  }

  public Sheet.Cover cover(String kind) {
    return new Sheet.Cover(
        wording.text("document." + kind) + ' ' + name(),
        wording.locale(),
        wording.text("document.footer"),
        list.countedOn(),
        kind + list,
        marks());
  }

  private List<String> marks() {
    List<String> marks = new OrderText(wording).marks(list);
    return marks.size() <= MOST_MARKS
        ? marks
        : List.of(wording.text("document.chosen-although.many", marks.size()));
  }
}
