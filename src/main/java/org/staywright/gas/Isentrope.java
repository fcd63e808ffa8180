package org.staywright.gas;

import static org.staywright.gas.BeyondEquation.Quantity.TEMPERATURE;

/**
 * Nitrogen compressed or expanded so fast that no heat passes the wall: constant entropy, by the
 * same equation of state.
 *
 * <p>{@link #temperature} solves the entropy balance exactly. {@link #between} does so at a few
 * Chebyshev points and interpolates ln p and ln T over ln ρ, which are nearly straight: for the
 * many points of a curve.
 */
public final class Isentrope {

  private static final int NODES = 9;
  private static final double LONGEST_STEP_K = 60;

  private final double[] lnDensity = new double[NODES];
  private final double[] lnPressure = new double[NODES];
  private final double[] lnTemperature = new double[NODES];

  private Isentrope(double density, double kelvin, double otherDensity) {
    double a = Math.log(density);
    double b = Math.log(otherDensity);
    double entropy = Isotherm.at(kelvin).state(density).entropy();
    double guess = kelvin;
    for (int i = 0; i < NODES; i++) {
      lnDensity[i] = a + (b - a) * (1 - Math.cos(Math.PI * i / (NODES - 1))) / 2;
      double rho = Math.exp(lnDensity[i]);
      guess = solve(entropy, rho, guess);
      lnTemperature[i] = Math.log(guess);
      lnPressure[i] = Math.log(new Isotherm(guess).pressure(rho));
    }
  }

  /**
   * The isentrope through one state, ready for any density between that state's and another.
   *
   * @param density of the starting state, kg/m³
   * @param kelvin of the starting state, K
   * @param otherDensity the far end, kg/m³
   */
  public static Isentrope between(double density, double kelvin, double otherDensity) {
    return new Isentrope(density, kelvin, otherDensity);
  }

  /** Absolute pressure on this isentrope, Pa. */
  public double pressure(double density) {
    return Math.exp(interpolate(lnPressure, Math.log(density)));
  }

  /** Temperature on this isentrope, K. */
  public double temperature(double density) {
    return Math.exp(interpolate(lnTemperature, Math.log(density)));
  }

  /**
   * Temperature after a change of density at constant entropy.
   *
   * @param density before, kg/m³
   * @param kelvin before, K
   * @param densityAfter kg/m³
   * @return K
   */
  public static double temperature(double density, double kelvin, double densityAfter) {
    Isotherm.State start = Isotherm.at(kelvin).state(density);
    double slope = start.pressurePerKelvin() / (density * start.cv());
    double guess = kelvin * Math.exp(slope * Math.log(densityAfter / density));
    return solve(start.entropy(), densityAfter, guess);
  }

  /** Absolute pressure after a change of density at constant entropy, Pa. */
  public static double pressure(double density, double kelvin, double densityAfter) {
    return new Isotherm(temperature(density, kelvin, densityAfter)).pressure(densityAfter);
  }

  /** Temperature at which a gas of that density has that entropy, K. */
  static double solve(double entropy, double density, double guess) {
    double low = Nitrogen.FAST_TEMPERATURE.low();
    double high = Nitrogen.FAST_TEMPERATURE.high();
    double kelvin = Math.max(low, Math.min(high, guess));
    for (int i = 0; i < 60; i++) {
      Isotherm.State state = new Isotherm(kelvin).state(density);
      // (∂s/∂T)_ρ = c_v / T
      double step = (entropy - state.entropy()) * kelvin / state.cv();
      double next = kelvin + Math.max(-LONGEST_STEP_K, Math.min(LONGEST_STEP_K, step));
      if (Math.abs(next - kelvin) <= 1e-10 * kelvin) {
        return BeyondEquation.within(TEMPERATURE, next, Nitrogen.FAST_TEMPERATURE);
      }
      if ((next > high && kelvin == high) || (next < low && kelvin == low)) {
        BeyondEquation.within(TEMPERATURE, next, Nitrogen.FAST_TEMPERATURE);
      }
      kelvin = Math.max(low, Math.min(high, next));
    }
    throw new BeyondEquation(TEMPERATURE, kelvin, Nitrogen.FAST_TEMPERATURE);
  }

  /**
   * Barycentric interpolation at the Chebyshev points (Berrut and Trefethen, SIAM Review 46, 2004).
   */
  private double interpolate(double[] value, double at) {
    double upper = 0;
    double lower = 0;
    for (int i = 0; i < NODES; i++) {
      double distance = at - lnDensity[i];
      if (distance == 0) {
        return value[i];
      }
      double weight = (i % 2 == 0 ? 1 : -1) * (i == 0 || i == NODES - 1 ? 0.5 : 1) / distance;
      upper += weight * value[i];
      lower += weight;
    }
    return upper / lower;
  }
}
