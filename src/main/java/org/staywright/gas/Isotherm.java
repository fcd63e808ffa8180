package org.staywright.gas;

import static org.staywright.gas.BeyondEquation.Quantity.DENSITY;
import static org.staywright.gas.BeyondEquation.Quantity.PRESSURE;
import static org.staywright.gas.BeyondEquation.Quantity.TEMPERATURE;
import static org.staywright.gas.Nitrogen.D;
import static org.staywright.gas.Nitrogen.IDEAL;
import static org.staywright.gas.Nitrogen.L;
import static org.staywright.gas.Nitrogen.MOLAR_MASS;
import static org.staywright.gas.Nitrogen.N;
import static org.staywright.gas.Nitrogen.R;
import static org.staywright.gas.Nitrogen.RHO_RED;
import static org.staywright.gas.Nitrogen.T_RED;
import static org.staywright.unit.Unit.ROOM;

import java.util.Arrays;
import org.staywright.unit.Bound;

/**
 * Nitrogen at one temperature: every property as a function of density.
 *
 * <p>The temperature's share of each term is worked out once, so that a slow stroke costs only the
 * density's. Relations between the Helmholtz energy and the properties: Span et al. 2000, Table 17
 * (as in any reference equation of state).
 */
public final class Isotherm {

  private static final int HIGHEST_POWER = Arrays.stream(D).max().orElseThrow();
  private static final int HIGHEST_DECAY = Arrays.stream(L).max().orElseThrow();

  /** Temperatures the equation is used at, K. */
  public static final Bound TEMPERATURES = Nitrogen.TEMPERATURE;

  /** Springs are filled at it, a million of them one after the other. */
  private static final Isotherm AT_ROOM = new Isotherm(ROOM);

  private final double kelvin;
  private final double tau;

  /** n τ^t of each residual term. */
  private final double[] share = new double[N.length];

  /**
   * @param kelvin temperature, K, 213…624
   */
  public static Isotherm at(double kelvin) {
    return kelvin == ROOM ? AT_ROOM : new Isotherm(requireTemperature(kelvin));
  }

  /** The temperature, where the equation is good for it, K. */
  public static double requireTemperature(double kelvin) {
    return BeyondEquation.within(TEMPERATURE, kelvin, Nitrogen.TEMPERATURE);
  }

  Isotherm(double kelvin) {
    this.kelvin = kelvin;
    tau = T_RED / kelvin;
    // Every exponent t is a whole number of eighths.
    double eighth = Math.sqrt(Math.sqrt(Math.sqrt(tau)));
    for (int i = 0; i < N.length; i++) {
      share[i] = N[i] * power(eighth, (int) Math.round(8 * Nitrogen.T[i]));
    }
  }

  public double kelvin() {
    return kelvin;
  }

  /**
   * p = ρ R T (1 + δ α_δ); refused above 1,000 bar and where no room is left for the gas.
   *
   * @param density kg/m³
   * @return absolute pressure, Pa
   */
  public double pressure(double density) {
    BeyondEquation.within(DENSITY, density, Nitrogen.DENSITY);
    double pressure = density * R / MOLAR_MASS * kelvin * compressibility(density);
    return BeyondEquation.within(PRESSURE, pressure, Nitrogen.PRESSURE);
  }

  /** Z = p / (ρ R T) = 1 + δ α_δ. */
  public double compressibility(double density) {
    double[] term = new double[N.length];
    double[] decay = terms(density, term);
    double sum = 0;
    for (int i = 0; i < N.length; i++) {
      sum += term[i] * (D[i] - L[i] * decay[L[i]]);
    }
    return 1 + sum;
  }

  /** All the derivatives at one density. */
  public State state(double density) {
    return new State(density, derivatives(density));
  }

  /**
   * Density at a pressure, by a bracketed Newton iteration: p rises with ρ throughout, as nitrogen
   * is far above its critical temperature here.
   *
   * @param pressure absolute, Pa, up to 1e8
   * @return density, kg/m³
   */
  public double density(double pressure) {
    BeyondEquation.within(PRESSURE, pressure, Nitrogen.PRESSURE);
    double low = Nitrogen.DENSITY.low();
    double high = Nitrogen.DENSITY.high();
    double density = Math.min(pressure * MOLAR_MASS / (R * kelvin), 400);
    for (int i = 0; i < 60; i++) {
      double[] a = derivatives(density);
      double scale = R / MOLAR_MASS * kelvin;
      double miss = density * scale * (1 + a[1]) - pressure;
      if (miss > 0) {
        high = density;
      } else {
        low = density;
      }
      double next = density - miss / (scale * (1 + 2 * a[1] + a[2]));
      if (!(next >= low && next <= high)) {
        next = (low + high) / 2;
      }
      if (Math.abs(next - density) <= 1e-13 * next) {
        return next;
      }
      density = next;
    }
    throw new BeyondEquation(PRESSURE, pressure, Nitrogen.PRESSURE);
  }

  /** α, δα_δ, δ²α_δδ, τα_τ, τ²α_ττ, δτα_δτ of the residual part. */
  private double[] derivatives(double density) {
    double[] terms = new double[N.length];
    double[] decay = terms(density, terms);
    double[] a = new double[6];
    for (int i = 0; i < N.length; i++) {
      double term = terms[i];
      double dl = decay[L[i]];
      double first = D[i] - L[i] * dl;
      double t = Nitrogen.T[i];
      a[0] += term;
      a[1] += term * first;
      a[2] += term * (first * (D[i] - 1 - L[i] * dl) - L[i] * L[i] * dl);
      a[3] += term * t;
      a[4] += term * t * (t - 1);
      a[5] += term * t * first;
    }
    return a;
  }

  /**
   * n τ^t δ^d exp(−δ^l) of each term; the few different powers are worked out once.
   *
   * @return δ^l by l
   */
  private double[] terms(double density, double[] term) {
    double delta = density / RHO_RED;
    double[] power = new double[HIGHEST_POWER + 1];
    power[0] = 1;
    for (int k = 1; k <= HIGHEST_POWER; k++) {
      power[k] = power[k - 1] * delta;
    }
    double[] decay = new double[HIGHEST_DECAY + 1];
    double[] exponential = new double[HIGHEST_DECAY + 1];
    exponential[0] = 1;
    for (int l = 1; l <= HIGHEST_DECAY; l++) {
      decay[l] = power[l];
      exponential[l] = Math.exp(-decay[l]);
    }
    for (int i = 0; i < N.length; i++) {
      term[i] = share[i] * power[D[i]] * exponential[L[i]];
    }
    return decay;
  }

  private static double power(double base, int exponent) {
    double result = 1;
    for (int e = exponent; e > 0; e >>= 1, base *= base) {
      if ((e & 1) != 0) {
        result *= base;
      }
    }
    return result;
  }

  /** The gas at this temperature and one density. */
  public final class State {

    private final double density;
    private final double[] a;

    private State(double density, double[] a) {
      this.density = density;
      this.a = a;
    }

    /** Absolute pressure, Pa. */
    public double pressure() {
      return density * R / MOLAR_MASS * kelvin * (1 + a[1]);
    }

    /** ∂p/∂T at constant density, Pa/K. */
    public double pressurePerKelvin() {
      return density * R / MOLAR_MASS * (1 + a[1] - a[5]);
    }

    /** ∂p/∂ρ at constant temperature, J/kg. */
    public double pressurePerDensity() {
      return R / MOLAR_MASS * kelvin * (1 + 2 * a[1] + a[2]);
    }

    /** Specific heat at constant volume, J/(kg K). */
    public double cv() {
      return -R / MOLAR_MASS * (idealTauTau() + a[4]);
    }

    /** Specific heat at constant pressure, J/(kg K). */
    public double cp() {
      double x = 1 + a[1] - a[5];
      return cv() + R / MOLAR_MASS * x * x / (1 + 2 * a[1] + a[2]);
    }

    /** Specific internal energy, J/kg, zero point as in the source. */
    public double energy() {
      return R / MOLAR_MASS * kelvin * (idealTau() + a[3]);
    }

    /** Specific enthalpy, J/kg. */
    public double enthalpy() {
      return energy() + R / MOLAR_MASS * kelvin * (1 + a[1]);
    }

    /** Specific entropy, J/(kg K), zero point as in the source; the density must be above zero. */
    public double entropy() {
      return R / MOLAR_MASS * (idealTau() + a[3] - ideal() - a[0]);
    }

    /** Speed of sound, m/s. */
    public double speedOfSound() {
      return Math.sqrt(pressurePerDensity() * cp() / cv());
    }

    /** κ = −(v/p)(∂p/∂v) at constant entropy. */
    public double isentropicExponent() {
      return density / pressure() * pressurePerDensity() * cp() / cv();
    }

    private double ideal() {
      return IDEAL[0]
          + IDEAL[1] * tau
          + IDEAL[2] * Math.log(tau)
          + Math.log(density / RHO_RED)
          + IDEAL[3] / tau
          + IDEAL[4] / (tau * tau)
          + IDEAL[5] / (tau * tau * tau)
          + IDEAL[6] * Math.log(-Math.expm1(-IDEAL[7] / kelvin));
    }

    private double idealTau() {
      double u = IDEAL[7] / kelvin;
      return IDEAL[1] * tau
          + IDEAL[2]
          - IDEAL[3] / tau
          - 2 * IDEAL[4] / (tau * tau)
          - 3 * IDEAL[5] / (tau * tau * tau)
          + IDEAL[6] * u / Math.expm1(u);
    }

    private double idealTauTau() {
      double u = IDEAL[7] / kelvin;
      double e = Math.expm1(u);
      return -IDEAL[2]
          + 2 * IDEAL[3] / tau
          + 6 * IDEAL[4] / (tau * tau)
          + 12 * IDEAL[5] / (tau * tau * tau)
          - IDEAL[6] * u * u * (e + 1) / (e * e);
    }
  }
}
