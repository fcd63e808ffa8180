package org.staywright.web.field;

/**
 * A figure of a fit that is compared with the same of others.
 *
 * @param label in words: what has the same is the same figure
 * @param text with its unit
 * @param merit the more the better, null where none is better
 */
public record ComparedFigure(String label, String text, Double merit) {

  public static ComparedFigure plain(String label, String text) {
    return new ComparedFigure(label, text, null);
  }

  /** The more the better. */
  public static ComparedFigure more(String label, String text, Double value) {
    return new ComparedFigure(label, text, value);
  }

  /** The less the better. */
  public static ComparedFigure less(String label, String text, Double value) {
    return new ComparedFigure(label, text, value == null ? null : -value);
  }
}
