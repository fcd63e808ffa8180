package org.staywright.part;

import java.util.List;

/**
 * What is looked for among the end fittings and brackets.
 *
 * @param type wanted, null for any
 * @param finish wanted, null for any
 * @param thread wanted, null for any
 * @param inStock whether at least one must be on the shelf
 * @param text in number or description, upper or lower case alike, null for any
 */
public record FittingSearch(
    FittingType type, Finish finish, String thread, boolean inStock, String text) {

  /** Those of a range that match, in the order of their numbers. */
  public List<Fitting> in(Range range) {
    return range.fittings().stream().filter(this::matches).toList();
  }

  private boolean matches(Fitting fitting) {
    return (type == null || fitting.type() == type)
        && (finish == null || fitting.finish() == finish)
        && (thread == null || thread.equals(fitting.thread()))
        && (!inStock || fitting.offer().stock() > 0)
        && (text == null
            || PartSearch.contains(fitting.number(), text)
            || PartSearch.contains(fitting.description(), text));
  }
}
