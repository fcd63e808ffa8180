package org.staywright.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.check.Facts;
import org.staywright.unit.Unit;

/** Published values are in {@link NitrogenChecks}; here is what must hold everywhere. */
class IsothermTest {

  private static final double SPECIFIC = Nitrogen.R / Nitrogen.MOLAR_MASS;

  @Test
  void becomesIdealAsTheGasThins() {
    for (double kelvin = 213.15; kelvin <= 623.15; kelvin += 10) {
      Isotherm isotherm = Isotherm.at(kelvin);
      assertEquals(kelvin, isotherm.kelvin());
      assertEquals(1, isotherm.compressibility(1e-6), 1e-8);
      assertEquals(1e-6 * SPECIFIC * kelvin, isotherm.pressure(1e-6), 1e-8);
      Isotherm.State state = isotherm.state(1e-6);
      assertEquals(SPECIFIC, state.cp() - state.cv(), 1e-5);
      assertEquals(1 / kelvin, state.pressurePerKelvin() / state.pressure(), 1e-10);
    }
  }

  @Test
  void findsTheDensityOfEveryPressure() {
    for (double kelvin = 213.15; kelvin <= 623.15; kelvin += 10) {
      Isotherm isotherm = Isotherm.at(kelvin);
      for (double bar = 0.001; bar < 1000; bar *= 1.4) {
        double pressure = bar * 1e5;
        double back = isotherm.pressure(isotherm.density(pressure));
        assertEquals(pressure, back, 1e-9 * pressure + 1e-5, kelvin + " K, " + bar + " bar");
      }
      assertEquals(0, isotherm.density(0), 1e-9);
    }
  }

  @Test
  void pressureRisesWithDensity() {
    for (double kelvin = 213.15; kelvin <= 623.15; kelvin += 5) {
      Isotherm isotherm = Isotherm.at(kelvin);
      for (double density = 0; density <= Nitrogen.DENSITY.high(); density += 5) {
        assertTrue(isotherm.state(density).pressurePerDensity() > 0, kelvin + " K, " + density);
      }
      double most = isotherm.state(Nitrogen.DENSITY.high()).pressure();
      assertTrue(most > Nitrogen.PRESSURE.high());
    }
  }

  /** Maxwell: (∂s/∂ρ)_T = −(∂p/∂T)_ρ/ρ², and (∂u/∂ρ)_T = (p − T(∂p/∂T)_ρ)/ρ². */
  @Test
  void propertiesAreDerivativesOfOnePotential() {
    long seed = 20_260_701;
    System.out.println("IsothermTest seed " + seed);
    Random random = new Random(seed);
    for (int i = 0; i < 500; i++) {
      double t = 220 + 390 * random.nextDouble();
      double rho = 0.5 + 450 * random.nextDouble();
      String place = "seed " + seed + ", draw " + i + ": " + t + " K, " + rho + " kg/m³";
      Isotherm.State here = Isotherm.at(t).state(rho);
      double dr = 1e-4 * rho;
      Isotherm.State more = Isotherm.at(t).state(rho + dr);
      Isotherm.State less = Isotherm.at(t).state(rho - dr);
      double dt = 1e-3 * t;
      Isotherm.State hot = Isotherm.at(t + dt).state(rho);
      Isotherm.State cold = Isotherm.at(t - dt).state(rho);

      double pressurePerKelvin = (hot.pressure() - cold.pressure()) / (2 * dt);
      near(here.pressurePerKelvin(), pressurePerKelvin, place);
      near(here.pressurePerDensity(), (more.pressure() - less.pressure()) / (2 * dr), place);
      near(here.cv(), (hot.energy() - cold.energy()) / (2 * dt), place);
      near(here.cv(), t * (hot.entropy() - cold.entropy()) / (2 * dt), place);
      double entropySlope = (more.entropy() - less.entropy()) / (2 * dr);
      near(-here.pressurePerKelvin() / (rho * rho), entropySlope, place);
      double energySlope = (more.energy() - less.energy()) / (2 * dr);
      double maxwell = (here.pressure() - t * here.pressurePerKelvin()) / (rho * rho);
      assertEquals(maxwell, energySlope, 1e-5 * here.pressure() / (rho * rho), place);
      near(here.energy() + here.pressure() / rho, here.enthalpy(), place);
      double z = Isotherm.at(t).compressibility(rho);
      near(here.pressure(), rho * SPECIFIC * t * z, place);
    }
  }

  /** c_p = (∂h/∂T)_p, with the density found anew at either temperature. */
  @Test
  void heatAtConstantPressureIsTheSlopeOfEnthalpy() {
    for (double kelvin = 223.15; kelvin <= 613.15; kelvin += 30) {
      for (double bar : new double[] {1, 50, 150, 300, 600, 1000}) {
        double step = 1e-2;
        Isotherm hot = Isotherm.at(kelvin + step);
        Isotherm cold = Isotherm.at(kelvin - step);
        double slope =
            (hot.state(hot.density(bar * 1e5)).enthalpy()
                    - cold.state(cold.density(bar * 1e5)).enthalpy())
                / (2 * step);
        Isotherm here = Isotherm.at(kelvin);
        near(here.state(here.density(bar * 1e5)).cp(), slope, kelvin + " K, " + bar + " bar");
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {212.99, 624.01, 0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesTemperaturesItWasNotMadeFor(double kelvin) {
    BeyondEquation beyond = assertThrows(BeyondEquation.class, () -> Isotherm.at(kelvin));
    assertEquals(BeyondEquation.Quantity.TEMPERATURE, beyond.quantity());
    assertEquals(kelvin, beyond.value());
    assertEquals("≥ 213 and ≤ 624 K", beyond.bound().text());
  }

  @Test
  void takesTheColdestAndHottestThatMayBeAskedFor() {
    assertTrue(Isotherm.at(Unit.CELSIUS.si(-60)).pressure(100) > 0);
    assertTrue(Isotherm.at(Unit.CELSIUS.si(350)).pressure(100) > 0);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, 1.0000001e8, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesPressuresItWasNotMadeFor(double pascal) {
    Isotherm isotherm = Isotherm.at(293.15);
    BeyondEquation beyond = assertThrows(BeyondEquation.class, () -> isotherm.density(pascal));
    assertEquals(BeyondEquation.Quantity.PRESSURE, beyond.quantity());
    assertEquals(pascal, beyond.value());
    assertEquals("≥ 0 and ≤ 100000000 Pa", beyond.bound().text());
  }

  /** No room left for the gas, or less than none: a density that is infinite or negative. */
  @ParameterizedTest
  @ValueSource(doubles = {-1e-9, -300, 650, 701, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesDensitiesNoSpringMayReach(double density) {
    assertThrows(BeyondEquation.class, () -> Isotherm.at(293.15).pressure(density));
  }

  @Test
  void refusesPublishedPointsOutsideItsTemperatures() {
    int refused = 0;
    for (CSVRecord row : Facts.of("nitrogen-points")) {
      double kelvin = Facts.number(row, "T_K");
      if (!Nitrogen.TEMPERATURE.holds(kelvin)) {
        assertThrows(BeyondEquation.class, () -> Isotherm.at(kelvin));
        refused++;
      }
    }
    assertEquals(11, refused);
  }

  private static void near(double expected, double actual, String place) {
    assertEquals(expected, actual, 2e-5 * Math.abs(expected), place);
  }
}
