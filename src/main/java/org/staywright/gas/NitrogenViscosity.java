package org.staywright.gas;

/**
 * Viscosity of nitrogen from the thin gas to the dense one.
 *
 * <p>Source: E. W. Lemmon, R. T. Jacobsen, Int. J. Thermophysics 25 (2004) 21: Chapman–Enskog for
 * the thin gas, Eq. 2, and a residual part over density, Eq. 3. Its claim: within 2 %.
 */
public final class NitrogenViscosity {

  /** Lennard-Jones energy over Boltzmann's constant, K, and size, nm (Table I). */
  private static final double ENERGY = 98.94;

  private static final double SIZE = 0.3656;

  /** b₀…b₄ of the collision integral (Table II). */
  private static final double[] B = {0.431, -0.4623, 0.08406, 0.005341, -0.00331};

  /** N, t, d, l of the residual part (Table III). */
  private static final double[] N = {10.72, 0.03989, 0.001208, -7.402, 4.620};

  private static final double[] T = {0.1, 0.25, 3.2, 0.9, 0.3};
  private static final int[] D = {2, 10, 12, 2, 1};
  private static final int[] L = {0, 1, 1, 2, 3};

  private NitrogenViscosity() {}

  /**
   * η = η⁰(T) + Σ N τᵗ δᵈ exp(−δˡ).
   *
   * @param kelvin temperature, K
   * @param density kg/m³
   * @return Pa s
   */
  public static double at(double kelvin, double density) {
    double tau = Nitrogen.T_RED / kelvin;
    double delta = density / Nitrogen.RHO_RED;
    double residual = 0;
    for (int i = 0; i < N.length; i++) {
      double decay = L[i] == 0 ? 1 : Math.exp(-Math.pow(delta, L[i]));
      residual += N[i] * Math.pow(tau, T[i]) * Math.pow(delta, D[i]) * decay;
    }
    return (thin(kelvin) + residual) * 1e-6;
  }

  /** η⁰ = 0.0266958 √(M T) / (σ² Ω), µPa s with M in g/mol. */
  private static double thin(double kelvin) {
    double log = Math.log(kelvin / ENERGY);
    double sum = 0;
    for (int i = B.length - 1; i >= 0; i--) {
      sum = sum * log + B[i];
    }
    double molar = 1000 * Nitrogen.MOLAR_MASS;
    return 0.0266958 * Math.sqrt(molar * kelvin) / (SIZE * SIZE * Math.exp(sum));
  }
}
