package org.staywright.job;

import org.staywright.part.Fitting;
import org.staywright.part.Offer;
import org.staywright.part.Part;

/**
 * Something to order: a spring or an end fitting.
 *
 * @param part null for a fitting
 * @param fitting null for a part
 */
public record Item(Part part, Fitting fitting) {

  static Item of(Part part) {
    return new Item(part, null);
  }

  static Item of(Fitting fitting) {
    return new Item(null, fitting);
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
}
