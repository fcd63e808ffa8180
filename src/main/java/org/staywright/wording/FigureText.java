package org.staywright.wording;

import java.math.RoundingMode;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.assess.Kept;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Term.Sense;
import org.staywright.unit.Unit;

/** Figures and requirements of a fit in words. */
public final class FigureText {

  private final Wording wording;

  private FigureText(Wording wording) {
    this.wording = wording;
  }

  public static FigureText in(Wording wording) {
    return new FigureText(wording);
  }

  /**
   * What a figure is called.
   *
   * @param si value, null where it never comes to that
   */
  public String label(Figure figure, Double si) {
    boolean below = si != null && si < 0;
    return wording.text("fit.figure." + (below ? figure.codeBelowZero() : figure.code()));
  }

  /**
   * A figure with its unit; what has a name of its own below zero goes without its sign.
   *
   * @param si value, null where it never comes to that
   * @param unit null for a plain number
   */
  public String value(Figure figure, Double si, Unit unit) {
    if (si == null) {
      String own = "fit.figure.never." + figure.code();
      return wording.text(wording.knows(own) ? own : "fit.figure.never");
    }
    boolean signed = figure.codeBelowZero().equals(figure.code());
    RoundingMode rounding = rounding(figure);
    return signed || si >= 0
        ? wording.quantity(si, unit, figure.decimals(), rounding)
        : wording.quantity(-si, unit, figure.decimals(), opposite(rounding));
  }

  /** A figure alone, where its unit stands elsewhere. */
  public String bare(Figure figure, double si, Unit unit) {
    return unit == null
        ? wording.number(si, figure.decimals(), rounding(figure))
        : wording.bare(si, unit, figure.decimals(), rounding(figure));
  }

  /** What is the worst is never told better than it is. */
  public static RoundingMode rounding(Figure figure) {
    return switch (figure) {
      case CLOSED_HOLD_LEAST -> RoundingMode.FLOOR;
      case SELF_OPENS_FROM_WORST -> RoundingMode.CEILING;
      default ->
          switch (figure.better()) {
            case LESS, BALANCED -> RoundingMode.CEILING;
            case MORE -> RoundingMode.FLOOR;
            case NEITHER -> RoundingMode.HALF_UP;
          };
    };
  }

  private static RoundingMode opposite(RoundingMode rounding) {
    return switch (rounding) {
      case FLOOR -> RoundingMode.CEILING;
      case CEILING -> RoundingMode.FLOOR;
      default -> rounding;
    };
  }

  /** What a part has is never told better than it is. */
  static RoundingMode rounding(Criterion criterion) {
    return criterion.sense() == Sense.AT_MOST ? RoundingMode.CEILING : RoundingMode.FLOOR;
  }

  /** What is asked by a criterion. */
  public String label(Criterion criterion) {
    return wording.text("fit.criterion." + criterion.code());
  }

  /**
   * What a part has, "never" where it never does.
   *
   * @param unit null for a plain number
   */
  public String has(Kept kept, Unit unit) {
    if (Double.isNaN(kept.has())) {
      return wording.text("fit.criterion.never");
    }
    return Double.isInfinite(kept.has())
        ? wording.text("fit.criterion.boundless." + (kept.has() > 0 ? "more" : "less"))
        : wording.quantity(
            kept.has(), unit, kept.criterion().decimals(), rounding(kept.criterion()));
  }

  /** What is asked, in full: "≤ 50 N", kept on one line. */
  public String asked(Kept kept, Unit unit) {
    int decimals = wording.decimals(kept.needed(), unit, kept.criterion().decimals());
    String needed = wording.quantity(kept.needed(), unit, decimals, RoundingMode.HALF_UP);
    return wording
        .text("fit.criterion." + kept.criterion().sense().code(), needed)
        .replace(' ', '\u00a0');
  }
}
