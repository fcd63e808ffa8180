package org.staywright.form.part;

import static org.staywright.unit.Bound.above;
import static org.staywright.unit.Bound.between;

import java.util.function.ToDoubleFunction;
import org.staywright.form.table.NumberColumn;
import org.staywright.part.Fitting;
import org.staywright.unit.Bound;
import org.staywright.unit.Unit;

/** The numbers of an end fitting or bracket, in the order of their columns. */
public enum FittingColumn implements NumberColumn {
  LENGTH_TO_CENTRE(
      "length_to_centre_mm", between(0, 500, "mm"), 0, f -> Unit.MILLIMETRE.of(f.lengthToCentre())),
  RATING("rating_n", between(0, 500_000, "N"), 0, Fitting::rating),
  SWING("swing_deg", between(0, 90, "°"), 0, f -> Unit.DEGREE.of(f.swing())),
  BALL_DIAMETER(
      "ball_diameter_mm", between(0, 100, "mm"), 0, f -> Unit.MILLIMETRE.of(f.ballDiameter())),
  PIN_DIAMETER(
      "pin_diameter_mm", between(0, 100, "mm"), 0, f -> Unit.MILLIMETRE.of(f.pinDiameter())),
  MASS("mass_kg", above(0, 100, "kg"), Fitting::mass);

  private final String column;
  private final Bound bound;
  private final double whenEmpty;
  private final ToDoubleFunction<Fitting> of;

  FittingColumn(String column, Bound bound, ToDoubleFunction<Fitting> of) {
    this(column, bound, Double.NaN, of);
  }

  FittingColumn(String column, Bound bound, double whenEmpty, ToDoubleFunction<Fitting> of) {
    this.column = column;
    this.bound = bound;
    this.whenEmpty = whenEmpty;
    this.of = of;
  }

  @Override
  public String column() {
    return column;
  }

  @Override
  public Bound bound() {
    return bound;
  }

  @Override
  public double whenEmpty() {
    return whenEmpty;
  }

  /** The number of a fitting, in the column's unit. */
  public double of(Fitting fitting) {
    return NumberColumn.tidy(of.applyAsDouble(fitting));
  }
}
