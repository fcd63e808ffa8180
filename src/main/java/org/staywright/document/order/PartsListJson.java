package org.staywright.document.order;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import org.staywright.document.part.LineFigures;
import org.staywright.job.order.Alternate;
import org.staywright.job.order.ListedJob;
import org.staywright.job.order.Mate;
import org.staywright.job.order.OrderLine;
import org.staywright.job.order.PartsList;
import org.staywright.part.Offer;
import org.staywright.part.Price;
import org.staywright.wording.Wording;

/** A parts list as JSON. */
public final class PartsListJson {

  /** All prices are net. */
  static final String VAT_BASIS = "net";

  private final OrderText text;

  private PartsListJson(Wording wording) {
    this.text = new OrderText(wording);
  }

  public static ObjectNode of(PartsList list, Wording wording) {
    return new PartsListJson(wording).json(list);
  }

  private ObjectNode json(PartsList list) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ArrayNode lines = json.putArray("lines");
    for (OrderLine line : list.lines()) {
      lines.add(line(lines.size() + 1, line));
    }
    json.put("total", list.total());
    json.put("currency", list.currency());
    json.put("validUntil", text(list.validUntil()));
    json.put("vatBasis", VAT_BASIS);
    json.put("leadTimeDays", list.leadTimeDays());
    json.put("massKg", list.mass());
    ArrayNode unmatched = json.putArray("unmatched");
    for (Mate.Missing missing : list.unmatched()) {
      unmatched.addObject().put("kind", missing.type().code()).put("beside", missing.beside());
    }
    ArrayNode jobs = json.putArray("jobs");
    list.jobs().forEach(job -> jobs.add(job(job)));
    return json;
  }

  private ObjectNode line(int position, OrderLine line) {
    Offer offer = line.item().offer();
    Price price = offer.price();
    ObjectNode json =
        JsonNodeFactory.instance
            .objectNode()
            .put("position", position)
            .put("partNumber", line.item().number())
            .put("description", text.describe(line.item()))
            .put("kind", line.item().kind())
            .put("quantity", line.quantity())
            .put("needed", line.needed())
            .put("unitPrice", line.unitPrice())
            .put("lineTotal", line.total())
            .put("currency", price == null ? null : price.currency())
            .put("validUntil", price == null ? null : text(price.validUntil()))
            .put("minimum", price == null ? null : price.minimum())
            .put("pack", price == null ? null : price.pack())
            .put("orderMultiple", price == null ? null : price.orderMultiple())
            .put("leadTimeDays", line.leadTimeDays())
            .put("stock", offer.stock())
            .put("stockDate", text(offer.stockDate()))
            .put("stockRevision", line.item().revision())
            .put("massKg", line.item().mass())
            .put("lineMassKg", line.mass())
            .put("oneBatchOf", line.matched() > 1 ? line.matched() : null);
    LineFigures figures = LineFigures.of(line);
    json.put("shelfLifeYears", figures.shelfYears());
    json.set("transport", figures.charge() == null ? null : transport(figures));
    json.set("alternate", line.alternate() == null ? null : alternate(line, figures));
    ArrayNode notes = json.putArray("notes");
    text.notes(line).forEach(notes::add);
    return json;
  }

  private static ObjectNode transport(LineFigures figures) {
    return JsonNodeFactory.instance
        .objectNode()
        .put("gasSpaceL", figures.gasSpace())
        .put("chargeBar", figures.charge())
        .put("chargeBarL", figures.product())
        .put("withinAdrSp283Figures", figures.withinTransport())
        .put("burstFactorToDeclare", figures.burstFactor());
  }

  private static ObjectNode alternate(OrderLine line, LineFigures figures) {
    Alternate alternate = line.alternate();
    return JsonNodeFactory.instance
        .objectNode()
        .put("partNumber", alternate.part())
        .put("stock", alternate.stock())
        .put("openingMoreN", figures.openMore())
        .put("closingMoreN", figures.closeMore());
  }

  private ObjectNode job(ListedJob job) {
    return JsonNodeFactory.instance
        .objectNode()
        .put("name", job.wanted().job())
        .put("partNumber", job.wanted().outfit().part().number())
        .put("count", job.wanted().outfit().count())
        .put("sets", job.wanted().sets())
        .put("spares", job.wanted().spares())
        .put("stockRevision", job.wanted().revision())
        .put("setCost", job.setCost())
        .put("setsInTenYears", job.setsInTenYears())
        .put("tenYearCost", job.tenYearCost())
        .put("chosenAlthough", text.mark(job));
  }

  private static String text(LocalDate date) {
    return date == null ? null : date.toString();
  }
}
