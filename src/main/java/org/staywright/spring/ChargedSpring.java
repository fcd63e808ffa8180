package org.staywright.spring;

import static org.staywright.unit.Unit.ATMOSPHERE;

import org.staywright.gas.Isentrope;
import org.staywright.gas.Isotherm;

/**
 * A gas spring with a known mass of nitrogen in it: force over compression and temperature.
 *
 * @param spring its dimensions
 * @param gasMass kg
 */
public record ChargedSpring(GasSpring spring, double gasMass) {

  /** Density of the gas, kg/m³. */
  public double density(double compression, double kelvin) {
    return gasMass / spring.gasVolume(compression, kelvin);
  }

  /** Absolute pressure after a slow stroke, Pa. */
  public double pressure(double compression, double kelvin) {
    return pressure(compression, Isotherm.at(kelvin));
  }

  /** The same for many points at one temperature. */
  public double pressure(double compression, Isotherm gas) {
    return gas.pressure(density(compression, gas.kelvin()));
  }

  /** Pushing force of the gas alone after a slow stroke, N. */
  public double gasForce(double compression, double kelvin) {
    return force(pressure(compression, kelvin));
  }

  /** The same for many points at one temperature. */
  public double gasForce(double compression, Isotherm gas) {
    return force(pressure(compression, gas));
  }

  /** Slow force with the rod moving out, N: F1 and F2 at the gauge points. */
  public double extending(double compression, double kelvin) {
    return gasForce(compression, kelvin) - spring.friction(kelvin);
  }

  /** Slow force with the rod pushed in, N: F3 and F4 at the gauge points. */
  public double compressing(double compression, double kelvin) {
    return gasForce(compression, kelvin) + spring.friction(kelvin);
  }

  /** A stroke too fast for heat to pass, from one compression to another. */
  public FastStroke fast(double from, double to, double kelvin) {
    return new FastStroke(
        this, kelvin, Isentrope.between(density(from, kelvin), kelvin, density(to, kelvin)));
  }

  /** Absolute pressure at the end of such a stroke alone, Pa. */
  public double fastPressure(double from, double to, double kelvin) {
    return Isentrope.pressure(density(from, kelvin), kelvin, density(to, kelvin));
  }

  double force(double pressure) {
    return (pressure - ATMOSPHERE) * spring.rodArea();
  }

  /**
   * The fast limit: gas at constant entropy, oil still as warm as before.
   *
   * @param spring that moves
   * @param kelvin temperature before the stroke
   * @param isentrope of the gas
   */
  public record FastStroke(ChargedSpring spring, double kelvin, Isentrope isentrope) {

    /** Absolute pressure, Pa. */
    public double pressure(double compression) {
      return isentrope.pressure(spring.density(compression, kelvin));
    }

    /** Pushing force of the gas alone, N. */
    public double gasForce(double compression) {
      return spring.force(pressure(compression));
    }

    /** Temperature of the gas, K. */
    public double gasTemperature(double compression) {
      return isentrope.temperature(spring.density(compression, kelvin));
    }
  }
}
