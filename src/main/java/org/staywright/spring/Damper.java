package org.staywright.spring;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * A hydraulic damper: a force over speed, each way its own. Its oil needs room for the rod: either
 * gas at the air's pressure, which pushes nothing, or gas apart from the oil behind a piston of its
 * own, which pushes the rod out a little.
 *
 * @param cylinder whose gas is that apart, none for a damper without
 * @param force that the gas pushes with, rod extending, 5 mm before full extension, 20 °C; 0 where
 *     no gas is apart, N
 * @param compressing force over speed while it grows shorter
 * @param extending force over speed while it grows longer
 */
public record Damper(Cylinder cylinder, double force, Digression compressing, Digression extending)
    implements Filled, SpeedLaw {

  /** What resists the motion, gas and friction apart. */
  @Override
  public double force(double speed) {
    return speed >= 0 ? compressing.at(speed) : -extending.at(-speed);
  }

  /** The gas apart, as the open spring it makes of the damper. */
  public Optional<GasSpring> reserve() {
    return cylinder.gasVolume() == 0
        ? Optional.empty()
        : Optional.of(new GasSpring(cylinder, force));
  }

  @Override
  public Optional<GasFilled> charge() {
    return reserve().map(GasFilled.class::cast);
  }

  @Override
  public <T> T told(Kinds<T> kinds) {
    return kinds.damper(this);
  }

  /** What it pushes with at rest. */
  @Override
  public ForceLaw law(double forceFactor, double gasFraction) {
    return reserve()
        .<ForceLaw>map(gas -> new Push(this, gas.charged(forceFactor, gasFraction)))
        .orElseGet(() -> new LinearLaw(this, 0, 0, 0));
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
