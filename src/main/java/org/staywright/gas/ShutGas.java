package org.staywright.gas;

/**
 * Nitrogen that is shut in and then pressed or eased so fast that no heat passes the wall: the
 * {@link Isentrope} from one state, for one density after another.
 *
 * <p>Eased ever further it gets no colder than the equation of state is used at: from there on its
 * pressure is that of the coldest gas, which is too high.
 */
public final class ShutGas {

  private static final Isotherm COLDEST = new Isotherm(Nitrogen.FAST_TEMPERATURE.low());

  private final double density;
  private final double kelvin;
  private final double entropy;

  /** d ln T / d ln ρ at the beginning. */
  private final double slope;

  /**
   * @param density at the beginning, kg/m³
   * @param kelvin at the beginning, K
   */
  public ShutGas(double density, double kelvin) {
    this.density = density;
    this.kelvin = kelvin;
    Isotherm.State start = Isotherm.at(kelvin).state(density);
    entropy = start.entropy();
    slope = start.pressurePerKelvin() / (density * start.cv());
  }

  /** Absolute pressure at another density, Pa. */
  public double pressure(double after) {
    if (after < density && COLDEST.state(after).entropy() > entropy) {
      return COLDEST.pressure(after);
    }
    double guess = kelvin * Math.exp(slope * Math.log(after / density));
    return new Isotherm(Isentrope.solve(entropy, after, guess)).pressure(after);
  }
}
