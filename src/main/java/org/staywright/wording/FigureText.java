package org.staywright.wording;

import org.staywright.fit.Criterion;
import org.staywright.fit.Figure;
import org.staywright.fit.Kept;
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
    return shown(signed ? si : Math.abs(si), unit, figure.decimals());
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
        : shown(kept.has(), unit, kept.criterion().decimals());
  }

  /** What is asked: "≤ 50 N". */
  public String asked(Kept kept, Unit unit) {
    return wording.text(
        "fit.criterion." + kept.criterion().sense().code(),
        shown(kept.needed(), unit, kept.criterion().decimals()));
  }

  private String shown(double si, Unit unit, int decimals) {
    return unit == null ? wording.number(si, decimals) : wording.quantity(si, unit, decimals);
  }
}
