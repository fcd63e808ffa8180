package org.staywright.spring;

import static org.staywright.unit.Unit.ATMOSPHERE;

import java.util.function.DoubleUnaryOperator;
import org.staywright.gas.Isentrope;
import org.staywright.gas.Isotherm;

/**
 * A spring with a known mass of nitrogen in it: force over compression and temperature.
 *
 * @param spring its dimensions
 * @param gasMass kg
 */
public record ChargedSpring(GasFilled spring, double gasMass) implements ForceLaw {

  /** Density of the gas, kg/m³. */
  public double density(double compression, double kelvin) {
    return gasMass / spring.gasVolume(compression, kelvin);
  }

  @Override
  public double pressure(double compression, double kelvin) {
    return Isotherm.at(kelvin).pressure(density(compression, kelvin));
  }

  @Override
  public DoubleUnaryOperator slow(double kelvin) {
    Isotherm gas = Isotherm.at(kelvin);
    return compression -> push(gas.pressure(density(compression, kelvin)));
  }

  @Override
  public FastStroke fast(double from, double to, double kelvin) {
    return new FastStroke(
        this, kelvin, Isentrope.between(density(from, kelvin), kelvin, density(to, kelvin)));
  }

  /** Absolute pressure at the end of such a stroke alone, Pa. */
  public double fastPressure(double from, double to, double kelvin) {
    return Isentrope.pressure(density(from, kelvin), kelvin, density(to, kelvin));
  }

  double push(double pressure) {
    return (pressure - ATMOSPHERE) * spring.drivingArea();
  }

  /**
   * The fast limit: gas at constant entropy, oil still as warm as before.
   *
   * @param spring that moves
   * @param kelvin temperature before the stroke
   * @param isentrope of the gas
   */
  public record FastStroke(ChargedSpring spring, double kelvin, Isentrope isentrope)
      implements Fast {

    @Override
    public double pressure(double compression) {
      return isentrope.pressure(spring.density(compression, kelvin));
    }

    @Override
    public double force(double compression) {
      return spring.push(pressure(compression));
    }

    /** Temperature of the gas, K. */
    public double gasTemperature(double compression) {
      return isentrope.temperature(spring.density(compression, kelvin));
    }
  }
}
