package org.staywright.spring;

/**
 * Force against speed of a damper one way: F = F_ref·(v/v_ref)^α, proportional for α = 1 and
 * flatter the faster for less, as valves that open make it. A fit to what such valves do: common
 * practice, no source.
 *
 * @param force F_ref at the reference speed, N
 * @param speed v_ref, m/s
 * @param exponent α, above 0 and at most 1
 */
public record Digression(double force, double speed, double exponent) {

  /**
   * @param speed m/s, not below zero
   * @return N
   */
  public double at(double speed) {
    return force * Math.pow(speed / this.speed, exponent);
  }
}
