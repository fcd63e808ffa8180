package org.staywright.spring;

/**
 * A gas spring that pulls its ends together: gas on the rod's side of a solid piston, air behind
 * it, so that the ring around the rod draws it in: −(p − p_a)·A_a. Its gas has the most room where
 * the spring is shortest: V = V0 − A_a·y, y the extension from there. SI, at 20 °C.
 *
 * @param rodDiameter m
 * @param tubeDiameter outside, m
 * @param boreDiameter inside of the tube, m
 * @param stroke m
 * @param extendedLength without end fittings, m
 * @param compressedLength without end fittings, m
 * @param force F1: pulling force, rod going in, at y = 5 mm, 20 °C, above zero, N
 * @param friction half of the hysteresis at 20 °C, N
 * @param coldFrictionFactor friction at −30 °C over that at 20 °C
 * @param gasVolume where the spring is shortest, m³
 * @param oilVolume m³
 */
public record TractionSpring(
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
    return -ringArea();
  }

  @Override
  public int sense() {
    return -1;
  }

  /** Nothing buckles that is only pulled. */
  @Override
  public double criticalLoad(double length, double tubeEnd) {
    return Double.POSITIVE_INFINITY;
  }
}
