package org.staywright.fit.job;

import java.util.function.ToDoubleFunction;
import org.staywright.part.Coded;
import org.staywright.part.Column;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.spring.ForceLaw;

/** How the springs of a job may turn out: what is most likely, and the worst either way. */
public enum SpringState implements Coded {
  /** At the usual temperature, of its force class, new. */
  NOMINAL(Job.Conditions::nominal, 0, false),
  /** Cold, under-filled, aged. */
  WEAK(Job.Conditions::coldest, -1, true),
  /** Hot, over-filled, new. */
  STRONG(Job.Conditions::hottest, 1, false);

  private final ToDoubleFunction<Job.Conditions> kelvin;
  private final int tolerances;
  private final boolean aged;

  SpringState(ToDoubleFunction<Job.Conditions> kelvin, int tolerances, boolean aged) {
    this.kelvin = kelvin;
    this.tolerances = tolerances;
    this.aged = aged;
  }

  /** Temperature of all there is, K. */
  public double kelvin(Job.Conditions conditions) {
    return kelvin.applyAsDouble(conditions);
  }

  /** The spring of a part as it then pushes. */
  public ForceLaw law(Part part, Job.Conditions conditions) {
    double forceFactor = 1 + tolerances * part.forceTolerance() / part.spring().force();
    return part.spring().law(forceFactor, aged ? gasLeft(conditions, part.wear()) : 1);
  }

  /** Gas in a row of a range, kg. */
  public double gasMass(Range range, int row, double gasLeft) {
    return switch (this) {
      case NOMINAL -> range.column(Column.GAS_MASS)[row];
      case WEAK -> range.column(Column.GAS_MASS_LOW)[row] * gasLeft;
      case STRONG -> range.column(Column.GAS_MASS_HIGH)[row];
    };
  }

  /** Share of the gas left at the end of the service. */
  public static double gasLeft(Job.Conditions conditions, Part.Wear wear) {
    return wear.gasLeft(conditions.years(), conditions.cyclesPerYear());
  }
}
