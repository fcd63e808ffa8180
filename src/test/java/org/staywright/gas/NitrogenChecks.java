package org.staywright.gas;

import static org.staywright.check.Facts.number;
import static org.staywright.check.Facts.source;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.staywright.check.Check;
import org.staywright.check.Facts;

/** Nitrogen against the published tables. */
public final class NitrogenChecks {

  private static final double PERCENT = 0.01;

  /** The largest gaps between two equations of state; the second's own claim for c_v is 2 %. */
  private static final double OTHER_EQUATION_CV_PERCENT = 0.25;

  private static final double OTHER_EQUATION_W_PERCENT = 0.1;

  /** Least to most of B that the simple formula for it misses over the table, cm³/mol. */
  private static final double SIMPLE_FORMULA = 0.8;

  private NitrogenChecks() {}

  /** Ten properties at eight temperatures and six pressures. */
  public static List<Check> table() {
    List<Check> checks = new ArrayList<>();
    for (CSVRecord row : Facts.of("nitrogen-table")) {
      String place = row.get("T_K") + " K, " + row.get("p_bar") + " bar: ";
      double pressure = number(row, "p_bar") * 1e5;
      Isotherm isotherm = Isotherm.at(number(row, "T_K"));
      double density = isotherm.density(pressure);
      Isotherm.State state = isotherm.state(density);
      add(checks, row, place + "density", "rho_kg_m3", density, "kg/m³");
      add(checks, row, place + "Z", "Z", isotherm.compressibility(density), "");
      add(checks, row, place + "c_v", "cv_J_kgK", state.cv(), "J/(kg K)");
      add(checks, row, place + "c_p", "cp_J_kgK", state.cp(), "J/(kg K)");
      add(checks, row, place + "speed of sound", "w_m_s", state.speedOfSound(), "m/s");
      add(checks, row, place + "(∂p/∂T)_v", "dpdT_v_Pa_K", state.pressurePerKelvin(), "Pa/K");
      double relative = state.pressurePerKelvin() / pressure;
      add(checks, row, place + "(∂p/∂T)_v/p", "dpdT_v_over_p_1_K", relative, "1/K");
      add(checks, row, place + "entropy", "s_J_kgK", state.entropy(), "J/(kg K)");
      double slow = density / pressure * state.pressurePerDensity();
      add(checks, row, place + "isothermal exponent", "isothermal_exponent_n_T", slow, "");
      double fast = state.isentropicExponent();
      add(checks, row, place + "isentropic exponent", "isentropic_exponent_kappa_s", fast, "");
    }
    return checks;
  }

  private static void add(
      List<Check> checks, CSVRecord row, String what, String column, double ours, String unit) {
    checks.add(Check.percent(what, row.get(column), ours, unit, PERCENT, source(row)));
  }

  /** Single values, also from outside the temperatures this program accepts. */
  public static List<Check> points() {
    List<Check> checks = new ArrayList<>();
    for (CSVRecord row : Facts.of("nitrogen-points")) {
      boolean other = !row.get("source").startsWith("Span");
      String quantity = row.get("quantity");
      double percent =
          !other
              ? PERCENT
              : quantity.startsWith("cv") ? OTHER_EQUATION_CV_PERCENT : OTHER_EQUATION_W_PERCENT;
      String what = row.get("T_K") + " K, " + row.get("p_MPa") + " MPa: " + name(quantity);
      checks.add(
          Check.printed(
              what, row.get("published"), ours(row), unit(quantity), percent, source(row)));
    }
    return checks;
  }

  /** Virial coefficients as the limit of the equation of state at no density. */
  public static List<Check> virials() {
    List<Check> checks = new ArrayList<>();
    for (CSVRecord row : Facts.of("nitrogen-virial")) {
      double kelvin = number(row, "T_K");
      String place = row.get("T_K") + " K: ";
      checks.add(
          Check.absolute(
              place + "B",
              row.get("B_Span2000_cm3_mol"),
              second(kelvin),
              "cm³/mol",
              1e-3,
              "Span et al. 2000, zero-density limit"));
      checks.add(
          Check.percent(
              place + "C",
              row.get("C_Span2000_cm6_mol2"),
              third(kelvin),
              "cm⁶/mol²",
              PERCENT,
              "Span et al. 2000, zero-density limit"));
      checks.add(
          Check.absolute(
              place + "B by a − b·exp(c/T)",
              row.get("B_KayeLaby_cm3_mol"),
              second(kelvin),
              "cm³/mol",
              SIMPLE_FORMULA,
              "Kaye & Laby formula, LibreTexts table A9; 0.8 cm³/mol is 0.003 % of Z per bar"));
    }
    return checks;
  }

  private static double ours(CSVRecord row) {
    // Not Isotherm.at: some points lie outside the temperatures it accepts.
    Isotherm isotherm = new Isotherm(number(row, "T_K"));
    double density = isotherm.density(number(row, "p_MPa") * 1e6);
    Isotherm.State state = isotherm.state(density);
    double molar = Nitrogen.MOLAR_MASS;
    return switch (row.get("quantity")) {
      case "u_J_mol" -> state.energy() * molar;
      case "h_J_mol" -> state.enthalpy() * molar;
      case "s_J_molK" -> state.entropy() * molar;
      case "cp_J_molK" -> state.cp() * molar;
      case "cv_J_molK" -> state.cv() * molar;
      case "rho_mol_L" -> density / molar / 1000;
      case "w_m_s" -> state.speedOfSound();
      default -> throw new IllegalArgumentException(row.toString());
    };
  }

  private static String name(String quantity) {
    return quantity.substring(0, quantity.indexOf('_'));
  }

  private static String unit(String quantity) {
    return switch (quantity.substring(quantity.indexOf('_') + 1)) {
      case "J_mol" -> "J/mol";
      case "J_molK" -> "J/(mol K)";
      case "mol_L" -> "mol/L";
      default -> "m/s";
    };
  }

  /** (Z − 1)/ρ at molar density, extrapolated from two small densities to none, cm³/mol. */
  private static double second(double kelvin) {
    double at = 0.01;
    return (2 * quotient(kelvin, at) - quotient(kelvin, 2 * at)) * 1e6;
  }

  /** The slope of the same at no density, by a parabola through three points, cm⁶/mol². */
  private static double third(double kelvin) {
    double at = 0.5;
    double rise =
        8 * quotient(kelvin, 2 * at) - 5 * quotient(kelvin, at) - 3 * quotient(kelvin, 3 * at);
    return rise / (2 * at / Nitrogen.MOLAR_MASS) * 1e12;
  }

  private static double quotient(double kelvin, double density) {
    return (new Isotherm(kelvin).compressibility(density) - 1) / density * Nitrogen.MOLAR_MASS;
  }
}
