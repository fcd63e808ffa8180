package org.staywright.spring;

import java.util.Optional;

/**
 * A gas spring with an open piston: gas on both sides of it at one pressure, so that only the rod's
 * cross-section pushes: (p − p_a)·A_r.
 *
 * @param cylinder with the most room for gas at full extension
 * @param force F1: pushing force, rod extending, 5 mm before full extension, 20 °C, N
 */
public record GasSpring(Cylinder cylinder, double force) implements GasFilled {

  @Override
  public double drivingArea() {
    return cylinder.rodArea();
  }

  @Override
  public Optional<GasSpring> asGasSpring() {
    return Optional.of(this);
  }
}
