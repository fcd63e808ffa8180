package org.staywright.spring;

import static org.staywright.unit.Unit.ATMOSPHERE;
import static org.staywright.unit.Unit.ROOM;

import java.util.Optional;
import org.staywright.gas.Isotherm;

/**
 * A gas spring with an open piston: gas on both sides of it at one pressure, so that only the rod's
 * cross-section pushes.
 *
 * <p>Statics: (p − p_a)·A_r, a force balance on rod and piston. All in SI, at 20 °C.
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

  /** Growth of the oil's volume, 1/K: common practice for mineral oil, no source. */
  public static final double OIL_EXPANSION = 0.7e-3;

  public double rodArea() {
    return area(rodDiameter);
  }

  public double boreArea() {
    return area(boreDiameter);
  }

  /** Section of the tube's wall, m². */
  public double wallArea() {
    return area(tubeDiameter) - boreArea();
  }

  private static double area(double diameter) {
    return Math.PI / 4 * diameter * diameter;
  }

  /**
   * Room left for the gas: V0 − A_r·x, less what the oil has grown.
   *
   * @param compression from full extension, m
   * @param kelvin of the oil
   * @return m³
   */
  public double gasVolume(double compression, double kelvin) {
    return gasVolume - rodArea() * compression - oilVolume * OIL_EXPANSION * (kelvin - ROOM);
  }

  @Override
  public double leastGasVolume(double kelvin) {
    return gasVolume(stroke, kelvin);
  }

  /** Absolute pressure that gives a pushing force at the gauge point at 20 °C, Pa. */
  public double chargePressure(double pushingForce) {
    return ATMOSPHERE + (pushingForce + friction) / rodArea();
  }

  /**
   * The spring filled to its force class times a factor, then left with a share of that gas.
   *
   * @param forceFactor on F1 before filling
   * @param gasFraction of the gas mass after it
   */
  public ChargedSpring charged(double forceFactor, double gasFraction) {
    double filled =
        Isotherm.at(ROOM).density(chargePressure(force * forceFactor))
            * gasVolume(GAUGE_POINT, ROOM);
    return new ChargedSpring(this, filled * gasFraction);
  }

  @Override
  public Optional<GasSpring> asGasSpring() {
    return Optional.of(this);
  }

  @Override
  public ChargedSpring law(double forceFactor, double gasFraction) {
    return charged(forceFactor, gasFraction);
  }

  /** The spring as delivered. */
  public ChargedSpring charged() {
    return charged(1, 1);
  }

  @Override
  public double criticalLoad(double length, double tubeEnd) {
    return SteppedColumn.of(this, length, tubeEnd).criticalLoad();
  }
}
