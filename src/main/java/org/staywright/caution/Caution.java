package org.staywright.caution;

import java.math.RoundingMode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.job.Corner;
import org.staywright.part.Coded;
import org.staywright.unit.Unit;

/**
 * Something that could hurt.
 *
 * @param code key of its sentence
 * @param severity how near the harm is
 * @param figures that called for it, in the order of the sentence's gaps
 * @param source standard or "common practice, no source"
 * @param at where it happens, null for no place in particular
 */
public record Caution(
    String code, Severity severity, List<Figure> figures, String source, @Nullable At at) {

  /** Source of a rule that no standard states. */
  public static final String COMMON_PRACTICE = "common practice, no source";

  /** How near the harm is. */
  public enum Severity implements Coded {
    DANGER,
    WARNING,
    NOTE
  }

  /**
   * @param si value
   * @param unit it is shown in, null for a plain number
   * @param decimals it is shown with
   * @param rounding up where it is the most, down where it is the least that it comes to
   */
  public record Figure(double si, @Nullable Unit unit, int decimals, RoundingMode rounding) {

    public Figure(double si, @Nullable Unit unit, int decimals) {
      this(si, unit, decimals, RoundingMode.HALF_UP);
    }

    public static Figure of(double si, @Nullable Unit unit) {
      return new Figure(si, unit, 0);
    }

    public static Figure most(double si, @Nullable Unit unit) {
      return new Figure(si, unit, 0, RoundingMode.CEILING);
    }

    public static Figure least(double si, @Nullable Unit unit, int decimals) {
      return new Figure(si, unit, decimals, RoundingMode.FLOOR);
    }
  }

  /**
   * Where and when it happens.
   *
   * @param end of the travel, or how it stands there: it has a sentence of its own
   * @param corner of springs and load, named in it last
   */
  public record At(String end, Corner corner) {}

  public Caution(String code, Severity severity, List<Figure> figures, String source) {
    this(code, severity, figures, source, null);
  }

  public Caution {
    figures = List.copyOf(figures);
  }

  public static Caution danger(String code, Figure... figures) {
    return new Caution(code, Severity.DANGER, List.of(figures), COMMON_PRACTICE);
  }

  public static Caution warning(String code, Figure... figures) {
    return new Caution(code, Severity.WARNING, List.of(figures), COMMON_PRACTICE);
  }

  public static Caution note(String code, Figure... figures) {
    return new Caution(code, Severity.NOTE, List.of(figures), COMMON_PRACTICE);
  }

  /** The same, stated by a standard. */
  public Caution by(String standard) {
    return new Caution(code, severity, figures, standard, at);
  }

  /** The same at an end of the travel, as springs and load turn out. */
  public Caution at(String end, Corner corner) {
    return new Caution(code, severity, figures, source, new At(end, corner));
  }
}
