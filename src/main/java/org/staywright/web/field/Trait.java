package org.staywright.web.field;

/**
 * A figure of a fit that is compared with the same of others.
 *
 * @param label in words: what has the same is the same figure
 * @param text with its unit
 * @param merit the more the better, null where none is better
 */
public record Trait(String label, String text, Double merit) {

  public static Trait plain(String label, String text) {
    return new Trait(label, text, null);
  }

  /** The more the better. */
  public static Trait more(String label, String text, Double value) {
    return new Trait(label, text, value);
  }

  /** The less the better. */
  public static Trait less(String label, String text, Double value) {
    return new Trait(label, text, value == null ? null : -value);
  }
}
