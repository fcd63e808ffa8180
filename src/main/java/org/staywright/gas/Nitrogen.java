package org.staywright.gas;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.staywright.unit.Bound;

/**
 * The equation of state of nitrogen: coefficients of the residual and ideal Helmholtz energy.
 *
 * <p>Source: R. Span, E. W. Lemmon, R. T. Jacobsen, W. Wagner, A. Yokozeki, J. Phys. Chem. Ref.
 * Data 29 (2000) 1361, its 32 power terms. The four Gaussian terms only act near the critical point
 * (126 K) and are left out: over 233…373 K and up to 300 bar they change nothing in the eighth
 * digit.
 */
final class Nitrogen {

  /**
   * Temperatures of the gas, K: −60 °C cold soak to 350 °C after a fast stroke, to the next whole
   * kelvin outwards, as −60 + 273.15 is a hair under 213.15.
   */
  static final Bound TEMPERATURE = Bound.between(213, 624, "K");

  /**
   * Temperatures within a fast stroke, K: gas that expands may be colder than any soak. The terms
   * left out stay as small as before down to here.
   */
  static final Bound FAST_TEMPERATURE = Bound.between(150, 624, "K");

  /** Pressures of the gas, Pa: up to 1,000 bar. */
  static final Bound PRESSURE = Bound.between(0, 1e8, "Pa");

  /**
   * Densities, kg/m³: above the one at 1,000 bar and −60 °C, so that the pressure decides first.
   */
  static final Bound DENSITY = Bound.between(0, 700, "kg/m³");

  private static final String FILE = "/shared/nitrogen-equation-of-state.csv";
  private static final String MODEL = "Span2000";

  /** Universal gas constant as the source uses it, J/(mol K). */
  static final double R;

  /** Molar mass, kg/mol. */
  static final double MOLAR_MASS;

  /** Reducing temperature, K. */
  static final double T_RED;

  /** Reducing density, kg/m³. */
  static final double RHO_RED;

  static final double[] N;
  static final int[] D;
  static final double[] T;
  static final int[] L;

  /** Ideal part, in the order: 1, τ, ln τ, τ⁻¹, τ⁻², τ⁻³, Planck–Einstein factor and θ in K. */
  static final double[] IDEAL;

  static {
    Map<String, Double> single = new HashMap<>();
    List<String[]> power = new ArrayList<>();
    read(single, power);
    R = given(single, "R_J_molK");
    MOLAR_MASS = given(single, "M_kg_mol");
    T_RED = given(single, "T_red_K");
    RHO_RED = given(single, "rho_red_mol_m3") * MOLAR_MASS;
    IDEAL =
        new double[] {
          given(single, "ideal_a1"),
          given(single, "ideal_a2_tau"),
          given(single, "ideal_log_tau"),
          given(single, "ideal_tau^-1"),
          given(single, "ideal_tau^-2"),
          given(single, "ideal_tau^-3"),
          given(single, "ideal_PlanckEinstein_n"),
          given(single, "ideal_PlanckEinstein_theta_K")
        };
    N = power.stream().mapToDouble(row -> Double.parseDouble(row[3])).toArray();
    D = power.stream().mapToInt(row -> Integer.parseInt(row[4])).toArray();
    T = power.stream().mapToDouble(row -> Double.parseDouble(row[5])).toArray();
    L = power.stream().mapToInt(row -> Integer.parseInt(row[6])).toArray();
  }

  private Nitrogen() {}

  private static double given(Map<String, Double> single, String name) {
    return Objects.requireNonNull(single.get(name), name);
  }

  private static void read(Map<String, Double> single, List<String[]> power) {
    try (var in = Nitrogen.class.getResourceAsStream(FILE);
        var lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        String[] cell = line.split(",", 12);
        if (!cell[0].equals(MODEL)) {
          continue;
        }
        if (cell[1].equals("power")) {
          power.add(cell);
        } else if (!cell[1].equals("gaussian")) {
          single.put(cell[1], Double.valueOf(cell[3]));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + FILE, e);
    }
  }
}
