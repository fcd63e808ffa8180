package org.staywright.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class IsothermFitTest {

  /** Relative. */
  private static final double ACCURACY = 5e-6;

  @Test
  void followsTheIsothermOverTheDensitiesInUse() {
    double worst = 0;
    for (double celsius = -60; celsius <= 150; celsius += 10) {
      Isotherm isotherm = Isotherm.at(celsius + 273.15);
      // Weak springs hold about 10 bar at 20 °C, strong ones fully compressed 250 bar.
      double lowest = Isotherm.at(293.15).density(8e5);
      double highest = Isotherm.at(293.15).density(250e5);
      worst = Math.max(worst, worst(isotherm, lowest, highest));
    }
    System.out.printf("IsothermFit, 8…250 bar at 20 °C: %.1e%n", worst);
    assertTrue(worst < ACCURACY, "worst " + worst);
  }

  @Test
  void isTheIsothermItselfInThinGas() {
    Isotherm isotherm = Isotherm.at(293.15);
    IsothermFit fit = IsothermFit.of(isotherm, 1, 20);
    for (double density = 1; density <= 20; density += 0.5) {
      assertEquals(
          isotherm.pressure(density), fit.pressure(density), 1e-10 * fit.pressure(density));
    }
  }

  @Test
  void tellsItsOwnError() {
    Isotherm isotherm = Isotherm.at(293.15);
    for (double[] range : new double[][] {{9, 280}, {150, 280}, {1, 400}}) {
      double told = IsothermFit.of(isotherm, range[0], range[1]).error();
      assertEquals(1, worst(isotherm, range[0], range[1]) / told, 0.5);
    }
  }

  @Test
  void isTheCloserTheLessItSpans() {
    Isotherm isotherm = Isotherm.at(293.15);
    assertTrue(worst(isotherm, 200, 280) < 1e-3 * worst(isotherm, 9, 280));
  }

  @Test
  void handsOutTheCoefficientsItComputesWith() {
    IsothermFit fit = IsothermFit.of(Isotherm.at(253.15), 10, 280);
    double[] c = fit.coefficients();
    double density = 137;
    double sum = 0;
    for (int k = c.length - 1; k >= 0; k--) {
      sum += c[k] * Math.pow(density, k + 1);
    }
    assertEquals(fit.pressure(density), sum, 1e-9 * sum);
  }

  private static double worst(Isotherm isotherm, double lowest, double highest) {
    IsothermFit fit = IsothermFit.of(isotherm, lowest, highest);
    double worst = 0;
    for (int i = 0; i <= 1000; i++) {
      double density = lowest + (highest - lowest) * i / 1000;
      double exact = isotherm.pressure(density);
      worst = Math.max(worst, Math.abs(fit.pressure(density) / exact - 1));
    }
    return worst;
  }
}
