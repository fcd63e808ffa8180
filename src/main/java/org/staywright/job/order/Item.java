package org.staywright.job.order;

import java.math.BigDecimal;
import org.staywright.part.Fitting;
import org.staywright.part.Offer;
import org.staywright.part.Part;

/**
 * Something to order: a spring or an end fitting, as it stood in a revision of the stock.
 *
 * @param part null for a fitting
 * @param fitting null for a part
 * @param revision of the stock
 */
public record Item(Part part, Fitting fitting, int revision) {

  public static Item of(Part part, int revision) {
    return new Item(part, null, revision);
  }

  public static Item of(Fitting fitting, int revision) {
    return new Item(null, fitting, revision);
  }

  public String number() {
    return part != null ? part.number() : fitting.number();
  }

  /** Family or type. */
  public String kind() {
    return part != null ? part.family().code() : fitting.type().code();
  }

  public Offer offer() {
    return part != null ? part.offer() : fitting.offer();
  }

  /** Of one piece, kg, as the range gives it. */
  public BigDecimal mass() {
    return BigDecimal.valueOf(part != null ? part.mass() : fitting.mass());
  }

  /** Springs first, then fittings by type. */
  int place() {
    return part != null ? 0 : 1 + fitting.type().ordinal();
  }
}
