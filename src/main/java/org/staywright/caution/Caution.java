package org.staywright.caution;

import java.util.List;
import org.staywright.part.Coded;
import org.staywright.unit.Unit;

/**
 * Something that could hurt.
 *
 * @param code key of its sentence
 * @param severity how near the harm is
 * @param figures that called for it, in the order of the sentence's gaps
 * @param source standard or "common practice, no source"
 */
public record Caution(String code, Severity severity, List<Figure> figures, String source) {

  /** How near the harm is. */
  public enum Severity implements Coded {
    DANGER,
    WARNING,
    NOTE
  }

  /**
   * @param si value
   * @param unit it is shown in
   * @param decimals it is shown with
   */
  public record Figure(double si, Unit unit, int decimals) {}

  public Caution {
    figures = List.copyOf(figures);
  }
}
