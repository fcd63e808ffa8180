package org.staywright.gas;

import static org.staywright.unit.Unit.ROOM;

/**
 * Mineral oil by its kinematic viscosity at two temperatures.
 *
 * <p>Source: ASTM D341, log₁₀ log₁₀(ν + 0.7) = A − B·log₁₀ T with ν in mm²/s and T in K, good above
 * 2 mm²/s. Grades: ISO 3448, ν at 40 °C; those at 100 °C are typical of a viscosity index near 100
 * (from memory).
 *
 * @param a A
 * @param b B
 */
public record Oil(double a, double b) {

  private static final double FORTY = 313.15;
  private static final double HUNDRED = 373.15;

  /** Density at 20 °C, kg/m³, and its loss with heat, 1/K: common practice, no source. */
  private static final double DENSITY = 870;

  private static final double EXPANSION = 0.7e-3;

  public static final Oil VG_22 = between(FORTY, 22e-6, HUNDRED, 4.3e-6);
  public static final Oil VG_32 = between(FORTY, 32e-6, HUNDRED, 5.4e-6);
  public static final Oil VG_46 = between(FORTY, 46e-6, HUNDRED, 6.8e-6);

  /**
   * @param kelvin one temperature, K
   * @param viscosity there, m²/s
   * @param otherKelvin another, K
   * @param otherViscosity there, m²/s
   */
  public static Oil between(
      double kelvin, double viscosity, double otherKelvin, double otherViscosity) {
    double low = doubleLog(viscosity);
    double high = doubleLog(otherViscosity);
    double b = (low - high) / (Math.log10(otherKelvin) - Math.log10(kelvin));
    return new Oil(low + b * Math.log10(kelvin), b);
  }

  private static double doubleLog(double viscosity) {
    return Math.log10(Math.log10(viscosity * 1e6 + 0.7));
  }

  /** Kinematic viscosity, m²/s. */
  public double kinematicViscosity(double kelvin) {
    return (Math.pow(10, Math.pow(10, a - b * Math.log10(kelvin))) - 0.7) * 1e-6;
  }

  /** kg/m³. */
  public double density(double kelvin) {
    return DENSITY / (1 + EXPANSION * (kelvin - ROOM));
  }

  /** Dynamic viscosity, Pa s. */
  public double viscosity(double kelvin) {
    return kinematicViscosity(kelvin) * density(kelvin);
  }
}
