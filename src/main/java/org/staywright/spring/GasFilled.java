package org.staywright.spring;

import static org.staywright.unit.Unit.ROOM;

/** A spring that nitrogen drives: what its charge and its tube are asked about. SI. */
public sealed interface GasFilled extends Spring permits GasSpring {

  /** Inside diameter of the tube, m. */
  double boreDiameter();

  /** Room for gas where it is greatest, m³. */
  double gasVolume();

  /** m³. */
  double oilVolume();

  /** Room for gas where it is least and the oil has grown, m³. */
  double leastGasVolume(double kelvin);

  /** Absolute pressure as delivered, at rest and 20 °C, Pa. */
  default double restPressure() {
    return law().pressure(restCompression(), ROOM);
  }
}
