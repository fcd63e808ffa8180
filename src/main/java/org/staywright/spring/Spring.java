package org.staywright.spring;

import static org.staywright.unit.Unit.ROOM;

import java.util.Optional;

/**
 * What stands between two mounts and pushes, pulls or damps: a force over its length, whatever
 * makes it. Lengths are without end fittings. SI.
 */
public sealed interface Spring permits Filled, CoilSpring {

  /** Where F1 to F4 are measured: this far from either end of the stroke, m. */
  double GAUGE_POINT = 5e-3;

  /** The temperature where the cold friction factor is reached lies this far below 20 °C, K. */
  double COLD_SPAN = 50;

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

  /** Half of the hysteresis at 20 °C, N. */
  double friction();

  /** Friction at −30 °C over that at 20 °C. */
  double coldFrictionFactor();

  /**
   * Friction at a temperature: rising linearly towards −30 °C and constant beyond both ends. Our
   * assumption, no source.
   *
   * @return N
   */
  default double friction(double kelvin) {
    double cold = Math.max(0, Math.min(1, (ROOM - kelvin) / COLD_SPAN));
    return friction() * (1 + (coldFrictionFactor() - 1) * cold);
  }

  /** The open gas spring that it is, or is while its lock is held open; empty for the others. */
  default Optional<GasSpring> asGasSpring() {
    return Optional.empty();
  }

  /** The gas it holds under pressure, whether that drives it or only backs a damper's oil. */
  default Optional<GasFilled> charge() {
    return Optional.empty();
  }

  /** What is told of its kind alone. */
  default <T> T told(Kinds<T> kinds) {
    return kinds.plain();
  }

  /** +1 where it pushes its ends apart, −1 where it pulls them together. */
  default int sense() {
    return 1;
  }

  /**
   * The pushing force at which it buckles between its mount centres, N; infinite where it cannot.
   *
   * @param length between mount centres, m
   * @param tubeEnd length that the tube's end fitting adds, m
   */
  double criticalLoad(double length, double tubeEnd);

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

  /** How it lies on the shelf: the compression at which it is least strained, m. */
  default double restCompression() {
    return sense() > 0 ? 0 : stroke();
  }

  /** The compression at which F1 and F3 are measured, m. */
  default double nearGauge() {
    return Math.abs(restCompression() - GAUGE_POINT);
  }

  /** The compression at which F2 and F4 are measured, m. */
  default double farGauge() {
    return stroke() - nearGauge();
  }

  /** F2/F1 as delivered. */
  default double progression() {
    ForceLaw delivered = law();
    return delivered.giving(farGauge(), ROOM) / delivered.giving(nearGauge(), ROOM);
  }
}
