package org.staywright.web.fit;

import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.assess.Fit;
import org.staywright.mechanism.Mechanism;
import org.staywright.unit.Unit;
import org.staywright.wording.FigureText;
import org.staywright.wording.Wording;

/** Figures of a spring to be made and of a stock part, and what lies between them. */
public final class IdealRows {

  /**
   * @param label of the figure
   * @param made of the spring to be made
   * @param stock of the stock part, "–" for none
   * @param more that the stock part has, with its sign
   */
  public record Row(String label, String made, String stock, String more) {}

  private final Fit made;
  private final Fit stock;
  private final Wording wording;
  private final List<Row> rows = new ArrayList<>();

  /**
   * @param stock null for none
   */
  IdealRows(Fit made, Fit stock, Wording wording) {
    this.made = made;
    this.stock = stock;
    this.wording = wording;
  }

  List<Row> rows() {
    add("ideal.count", fit -> (double) fit.count(), null, 0);
    add(Figure.HAND_RMS);
    add(Figure.HAND_OPEN_WORST);
    add(Figure.HAND_CLOSE_WORST);
    add(Figure.HOLD_RATIO_OPEN);
    add(Figure.HOLD_OPEN);
    add("part.label.forceClassN", fit -> fit.part().spring().force(), NEWTON, 0);
    add("part.figure.progression", fit -> fit.part().spring().progression(), null, 2);
    add("part.label.strokeMm", fit -> fit.part().spring().stroke(), MILLIMETRE, 0);
    add(Figure.EXTENDED);
    add(Figure.COMPRESSED);
    add("part.label.rodDiameterMm", fit -> fit.part().spring().rodDiameter(), MILLIMETRE, 0);
    add("part.label.tubeDiameterMm", fit -> fit.part().spring().tubeDiameter(), MILLIMETRE, 0);
    return rows;
  }

  private void add(Figure figure) {
    // None of these is a place on the way: their unit is the same for every mechanism.
    add(
        "fit.figure." + figure.code(),
        figure::value,
        figure.unit(Mechanism.Movement.TURNS),
        figure.decimals(),
        FigureText.rounding(figure));
  }

  private void add(String key, Function<Fit, Double> of, Unit unit, int decimals) {
    add(key, of, unit, decimals, RoundingMode.HALF_UP);
  }

  private void add(
      String key, Function<Fit, Double> of, Unit unit, int decimals, RoundingMode rounding) {
    Double here = of.apply(made);
    Double there = stock == null ? null : of.apply(stock);
    if (here == null && there == null) {
      return;
    }
    Double more = here == null || there == null ? null : there - here;
    rows.add(
        new Row(
            wording.text(key),
            shown(here, unit, decimals, rounding),
            shown(there, unit, decimals, rounding),
            signed(more, unit, decimals)));
  }

  private String shown(Double si, Unit unit, int decimals, RoundingMode rounding) {
    return si == null ? "–" : wording.quantity(si, unit, decimals, rounding);
  }

  /** A difference that rounds to nothing has no sign. */
  private String signed(Double si, Unit unit, int decimals) {
    String plain = shown(si == null ? null : Math.abs(si), unit, decimals, RoundingMode.HALF_UP);
    if (si == null || plain.equals(shown(0.0, unit, decimals, RoundingMode.HALF_UP))) {
      return plain;
    }
    return (si > 0 ? "+" : "−") + plain;
  }
}
