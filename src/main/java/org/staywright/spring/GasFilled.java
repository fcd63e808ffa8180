package org.staywright.spring;

/** A spring that nitrogen drives: what its charge and its tube are asked about. SI. */
public sealed interface GasFilled extends Spring permits GasSpring {

  /** Inside diameter of the tube, m. */
  double boreDiameter();

  /** Room for gas where it is greatest, m³. */
  double gasVolume();

  /** m³. */
  double oilVolume();

  /** The compression at which the gas has the most room: how the spring lies on the shelf, m. */
  default double restCompression() {
    return 0;
  }
}
