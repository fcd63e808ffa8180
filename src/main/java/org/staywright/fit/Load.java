package org.staywright.fit;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.staywright.mechanism.Travel;
import org.staywright.part.Part;
import org.staywright.spring.ForceLaw;

/** The three cases a part is judged in: what is most likely, and the worst either way. */
enum Load {
  NOMINAL(Job.Conditions::nominal, Travel::load, 0, false),
  /** Cold, under-filled, aged, and the mass at its heaviest. */
  WEAK(Job.Conditions::coldest, Travel::heavy, -1, true),
  /** Hot, over-filled, new, and the mass at its lightest. */
  STRONG(Job.Conditions::hottest, Travel::light, 1, false);

  private final ToDoubleFunction<Job.Conditions> kelvin;
  private final Function<Travel, double[]> load;
  private final int tolerances;
  private final boolean aged;

  Load(
      ToDoubleFunction<Job.Conditions> kelvin,
      Function<Travel, double[]> load,
      int tolerances,
      boolean aged) {
    this.kelvin = kelvin;
    this.load = load;
    this.tolerances = tolerances;
    this.aged = aged;
  }

  double kelvin(Job.Conditions conditions) {
    return kelvin.applyAsDouble(conditions);
  }

  double[] load(Travel travel) {
    return load.apply(travel);
  }

  ForceLaw law(Part part, double gasLeft) {
    double forceFactor = 1 + tolerances * part.forceTolerance() / part.spring().force();
    return part.spring().law(forceFactor, aged ? gasLeft : 1);
  }

  /** Share of the gas left at the end of the service. */
  static double gasLeft(Job.Conditions conditions, Part.Wear wear) {
    return wear.gasLeft(conditions.years(), conditions.cyclesPerYear());
  }
}
