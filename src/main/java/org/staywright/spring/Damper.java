package org.staywright.spring;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * A hydraulic damper: a force over speed, each way its own. Its oil needs room for the rod: either
 * gas at the air's pressure, which pushes nothing, or gas apart from the oil behind a piston of its
 * own, which pushes the rod out a little.
 *
 * @param rodDiameter m
 * @param tubeDiameter outside, m
 * @param boreDiameter inside of the tube, m
 * @param stroke m
 * @param extendedLength without end fittings, m
 * @param compressedLength without end fittings, m
 * @param force that the gas pushes with, rod extending, 5 mm before full extension, 20 °C; 0 where
 *     no gas is apart, N
 * @param friction half of the hysteresis at 20 °C, N
 * @param coldFrictionFactor friction at −30 °C over that at 20 °C
 * @param gasVolume of the gas apart, at full extension; 0 for none, m³
 * @param oilVolume m³
 * @param compressing force over speed while it grows shorter
 * @param extending force over speed while it grows longer
 */
public record Damper(
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
    double oilVolume,
    Digression compressing,
    Digression extending)
    implements Spring, SpeedLaw {

  /** What resists the motion, gas and friction apart. */
  @Override
  public double force(double speed) {
    return speed >= 0 ? compressing.at(speed) : -extending.at(-speed);
  }

  /** The gas apart, as the open spring it makes of the damper. */
  public Optional<GasSpring> reserve() {
    if (gasVolume == 0) {
      return Optional.empty();
    }
    return Optional.of(
        new GasSpring(
            rodDiameter,
            tubeDiameter,
            boreDiameter,
            stroke,
            extendedLength,
            compressedLength,
            force,
            friction,
            coldFrictionFactor,
            gasVolume,
            oilVolume));
  }

  /** What it pushes with at rest. */
  @Override
  public ForceLaw law(double forceFactor, double gasFraction) {
    return reserve()
        .<ForceLaw>map(gas -> new Push(this, gas.charged(forceFactor, gasFraction)))
        .orElseGet(() -> new LinearLaw(this, 0, 0, 0));
  }

  @Override
  public double criticalLoad(double length, double tubeEnd) {
    ThickTube wall = new ThickTube(boreDiameter / 2, tubeDiameter / 2);
    return SteppedColumn.of(this, wall, length, tubeEnd).criticalLoad();
  }

  /** 1 where nothing pushes. */
  @Override
  public double progression() {
    return reserve().map(GasSpring::progression).orElse(1.0);
  }

  private record Push(Damper spring, ChargedSpring gas) implements ForceLaw {

    @Override
    public DoubleUnaryOperator slow(double kelvin) {
      return gas.slow(kelvin);
    }

    @Override
    public Fast fast(double from, double to, double kelvin) {
      return gas.fast(from, to, kelvin);
    }

    @Override
    public double pressure(double compression, double kelvin) {
      return gas.pressure(compression, kelvin);
    }
  }
}
