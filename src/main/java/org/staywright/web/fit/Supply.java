package org.staywright.web.fit;

import java.util.ArrayList;
import java.util.List;
import org.staywright.part.Offer;
import org.staywright.part.Price;
import org.staywright.web.field.Labelled;
import org.staywright.wording.Wording;

/** On what terms a part can be had, in words. */
public final class Supply {

  private Supply() {}

  /** Each price from its quantity; none where none is known. */
  public static List<Labelled> prices(Offer offer, Wording wording) {
    Price price = offer.price();
    return price == null
        ? List.of()
        : price.breaks().stream()
            .map(
                step ->
                    new Labelled(
                        wording.text("document.price-from", step.from()),
                        wording.money(step.each(), price.currency())))
            .toList();
  }

  /** All but the prices. */
  public static List<Labelled> terms(Offer offer, Wording wording) {
    List<Labelled> terms = new ArrayList<>();
    Price price = offer.price();
    if (price != null) {
      add(terms, "order.vat", wording.text("order.vat.net"), wording);
      if (price.validUntil() != null) {
        add(terms, "document.valid-until", price.validUntil().toString(), wording);
      }
      add(terms, "document.pack", wording.number(price.pack(), 0), wording);
      add(terms, "document.order-multiple", wording.number(price.orderMultiple(), 0), wording);
    }
    add(terms, "part.label.stock", stock(offer, wording), wording);
    String lead = wording.text("document.days", wording.number(offer.leadTimeDays(), 0));
    add(terms, "order.lead", lead, wording);
    return terms;
  }

  /** What is there, and of which day that is known. */
  public static String stock(Offer offer, Wording wording) {
    String pieces = wording.number(offer.stock(), 0);
    return offer.stockDate() == null
        ? pieces
        : wording.text("order.stock", pieces, offer.stockDate().toString());
  }

  private static void add(List<Labelled> terms, String key, String value, Wording wording) {
    terms.add(new Labelled(wording.text(key), value));
  }
}
