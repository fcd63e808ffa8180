package org.staywright.spring;

import java.util.Optional;

/**
 * A gas spring with an open piston: gas on both sides of it at one pressure, so that only the rod's
 * cross-section pushes: (p − p_a)·A_r. All in SI, at 20 °C.
 *
 * @param rodDiameter m
 * @param tubeDiameter outside, m
 * @param boreDiameter inside of the tube, m
 * @param stroke m
 * @param extendedLength without end fittings, m
 * @param compressedLength without end fittings, m
 * @param force F1: pushing force, rod extending, 5 mm before full extension, 20 °C, N
 * @param friction half of the hysteresis at 20 °C, N
 * @param coldFrictionFactor friction at −30 °C over that at 20 °C
 * @param gasVolume at full extension, m³
 * @param oilVolume m³
 */
public record GasSpring(
    double rodDiameter,
    double tubeDiameter,
    double boreDiameter,
    double stroke,
    double extendedLength,
    double compressedLength,
    double force,
    double friction,
    double coldFrictionFactor,
    double gasVolume,
    double oilVolume)
    implements GasFilled {

  @Override
  public double drivingArea() {
    return rodArea();
  }

  @Override
  public Optional<GasSpring> asGasSpring() {
    return Optional.of(this);
  }

  static double area(double diameter) {
    return Math.PI / 4 * diameter * diameter;
  }
}
