package org.staywright.part;

import static org.staywright.unit.Unit.ATMOSPHERE;

import java.util.Optional;
import org.staywright.gas.BeyondEquation;
import org.staywright.spring.ForceLaw;
import org.staywright.spring.Spring;

/**
 * What a part must bear at its worst, whatever the job: the strongest specimen, hot, strained over
 * its whole stroke too fast for heat to pass. Bare, without end fittings.
 *
 * @param peakPressure highest absolute pressure, Pa; that of the air where there is no gas
 * @param peakLoad largest force on its ends, N
 * @param bucklingFactor least buckling load over that force, infinite where it cannot buckle
 * @param burstFactor gauge pressure at which the bore yields at the tensile strength of its tube,
 *     over the gauge charge; NaN where there is no gas
 */
public record Strength(
    double peakPressure, double peakLoad, double bucklingFactor, double burstFactor) {

  /** Least tensile strength of a tube of E355+N, Pa (EN 10305-1): assumed of every tube. */
  public static final double TENSILE = 490e6;

  private static final int STEPS = 40;

  /** Empty where the gas would leave what can be computed. */
  public static Optional<Strength> of(Part part) {
    try {
      return Optional.of(hardest(part));
    } catch (BeyondEquation beyond) {
      return Optional.empty();
    }
  }

  private static Strength hardest(Part part) {
    Spring spring = part.spring();
    double kelvin = part.limits().hottest();
    double from = spring.restCompression();
    double to = spring.stroke() - from;
    double strongest = spring.force() > 0 ? 1 + part.forceTolerance() / spring.force() : 1;
    ForceLaw.Fast slam = spring.law(strongest, 1).fast(from, to, kelvin);
    double most = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= STEPS; i++) {
      double x = spring.stroke() * i / STEPS;
      double load = Math.abs(slam.force(x)) + spring.friction(kelvin);
      most = Math.max(most, load);
      least = Math.min(least, spring.criticalLoad(spring.extendedLength() - x, 0) / load);
    }
    double burst =
        part.gas()
            .map(gas -> gas.tube().pressureAt(TENSILE) / (gas.restPressure() - ATMOSPHERE))
            .orElse(Double.NaN);
    return new Strength(slam.pressure(to), most, least, burst);
  }
}
