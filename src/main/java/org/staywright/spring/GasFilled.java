package org.staywright.spring;

import static org.staywright.unit.Unit.ATMOSPHERE;
import static org.staywright.unit.Unit.ROOM;

import java.util.Optional;
import org.staywright.gas.Isotherm;

/**
 * A spring that nitrogen drives: what its charge and its tube are asked about. Statics: (p − p_a)·A
 * with A the area that the gas drives it with, a force balance on rod and piston. SI.
 */
public sealed interface GasFilled extends Filled permits GasSpring, LockingSpring, TractionSpring {

  /**
   * What the gas acts on, m²: above zero where it pushes the ends apart, below where it pulls them
   * together.
   */
  double drivingArea();

  /**
   * Room left for the gas: V0 less what the rod or piston takes and what the oil has grown.
   *
   * @param compression from full extension, m
   * @param kelvin of the oil
   * @return m³
   */
  default double gasVolume(double compression, double kelvin) {
    return cylinder().gasVolume()
        - drivingArea() * (compression - restCompression())
        - cylinder().oilGrowth(kelvin);
  }

  /** Room for gas where it is least and the oil has grown, m³. */
  default double leastGasVolume(double kelvin) {
    return gasVolume(stroke() - restCompression(), kelvin);
  }

  /** Absolute pressure as delivered, at rest and 20 °C, Pa. */
  default double restPressure() {
    return law().pressure(restCompression(), ROOM);
  }

  /** Absolute pressure that gives a force at the gauge point at 20 °C, Pa. */
  default double chargePressure(double force) {
    return ATMOSPHERE + (force + friction()) / Math.abs(drivingArea());
  }

  /**
   * The spring filled to its force class times a factor, then left with a share of that gas.
   *
   * @param forceFactor on F1 before filling
   * @param gasFraction of the gas mass after it
   */
  default ChargedSpring charged(double forceFactor, double gasFraction) {
    double filled =
        Isotherm.at(ROOM).density(chargePressure(force() * forceFactor))
            * gasVolume(nearGauge(), ROOM);
    return new ChargedSpring(this, filled * gasFraction);
  }

  /** The spring as delivered. */
  default ChargedSpring charged() {
    return charged(1, 1);
  }

  @Override
  default ChargedSpring law(double forceFactor, double gasFraction) {
    return charged(forceFactor, gasFraction);
  }

  @Override
  default Optional<GasFilled> charge() {
    return Optional.of(this);
  }
}
