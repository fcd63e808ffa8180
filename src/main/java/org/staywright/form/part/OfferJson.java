package org.staywright.form.part;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.staywright.part.Offer;
import org.staywright.part.Price;

/** Price, stock and lead time as JSON. */
final class OfferJson {

  private OfferJson() {}

  static void into(ObjectNode json, Offer offer) {
    Price price = offer.price();
    if (price == null) {
      json.putNull("price");
    } else {
      ObjectNode terms = json.putObject("price");
      terms.put("currency", price.currency());
      terms.put("validUntil", String.valueOf(price.validUntil()));
      terms.put("pack", price.pack());
      terms.put("orderMultiple", price.orderMultiple());
      ArrayNode breaks = terms.putArray("breaks");
      price.breaks().forEach(b -> breaks.addObject().put("from", b.from()).put("each", b.each()));
    }
    json.put("stock", offer.stock());
    json.put("stockDate", offer.stockDate() == null ? null : offer.stockDate().toString());
    json.put("leadTimeDays", offer.leadTimeDays());
  }
}
