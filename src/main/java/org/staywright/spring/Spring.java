package org.staywright.spring;

/**
 * What stands between two mounts and pushes, pulls or damps: a force over its length, whatever
 * makes it. Lengths are without end fittings. SI.
 */
public sealed interface Spring permits GasFilled {

  /** Diameter of the rod, or of what guides a coil, m. */
  double rodDiameter();

  /** Outside diameter of the tube or the coil, m. */
  double tubeDiameter();

  /** m. */
  double stroke();

  /** m. */
  double extendedLength();

  /** m. */
  double compressedLength();

  /** Force class: the size of the slow force at the gauge point at 20 °C, N. */
  double force();

  /** Half of the hysteresis, N. */
  double friction(double kelvin);

  /**
   * One specimen of it.
   *
   * @param forceFactor on the force class, before filling where there is gas
   * @param gasFraction share of the gas that is left
   */
  ForceLaw law(double forceFactor, double gasFraction);

  /** As delivered. */
  default ForceLaw law() {
    return law(1, 1);
  }
}
