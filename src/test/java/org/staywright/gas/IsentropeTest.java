package org.staywright.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class IsentropeTest {

  @Test
  void keepsTheEntropy() {
    for (double kelvin = 233.15; kelvin <= 353.15; kelvin += 20) {
      for (double bar : new double[] {1, 20, 80, 150, 250}) {
        double start = Isotherm.at(kelvin).density(bar * 1e5);
        double entropy = Isotherm.at(kelvin).state(start).entropy();
        double least = kelvin > 290 ? 0.7 : 1;
        for (double ratio : new double[] {least, 1.1, 1.4, 1.8}) {
          double hot = Isentrope.temperature(start, kelvin, ratio * start);
          double after = Isotherm.at(hot).state(ratio * start).entropy();
          assertEquals(entropy, after, 1e-7 * entropy, kelvin + " K, " + bar + " bar, " + ratio);
        }
      }
    }
  }

  /** −dp/dv·v/p = κ along the path, by finite differences. */
  @Test
  void risesByTheIsentropicExponent() {
    double start = Isotherm.at(293.15).density(150e5);
    double up = Isentrope.pressure(start, 293.15, start * 1.0001);
    double down = Isentrope.pressure(start, 293.15, start * 0.9999);
    double slope = Math.log(up / down) / Math.log(1.0001 / 0.9999);
    assertEquals(Isotherm.at(293.15).state(start).isentropicExponent(), slope, 1e-6);
  }

  /** The fast screening of a range relies on it: p ≤ p₁(ρ/ρ₁)^κ, κ at the far end, unheated. */
  @Test
  void aPowerOfTheDensityIsNeverLessThanTheFastPressure() {
    for (double kelvin = 213.15; kelvin <= 423.15; kelvin += 10) {
      Isotherm start = Isotherm.at(kelvin);
      for (double bar = 1; bar <= 300; bar *= 1.3) {
        double before = start.density(bar * 1e5);
        for (double ratio = 1.02; ratio < 1.8 && ratio * before < 450; ratio += 0.06) {
          double kappa = start.state(ratio * before).isentropicExponent();
          double bound = bar * 1e5 * Math.pow(ratio, kappa);
          double hot = Isentrope.temperature(before, kelvin, ratio * before);
          double exact = Isotherm.at(hot).state(ratio * before).pressure();
          assertTrue(exact <= bound, kelvin + " K, " + bar + " bar, " + ratio);
        }
      }
    }
  }

  @Test
  void interpolatesAsGoodAsExactly() {
    double worst = 0;
    for (double kelvin = 213.15; kelvin <= 353.15; kelvin += 20) {
      for (double bar : new double[] {5, 50, 150, 250}) {
        double start = Isotherm.at(kelvin).density(bar * 1e5);
        double least = kelvin > 310 ? 0.6 : 1.1;
        // Denser springs would end above 1,000 bar.
        double most = bar > 200 ? 1.4 : 1.8;
        for (double ratio : new double[] {least, 1.3, most}) {
          Isentrope isentrope = Isentrope.between(start, kelvin, ratio * start);
          for (int i = 0; i <= 20; i++) {
            double density = start * (1 + (ratio - 1) * i / 20);
            double exact = Isentrope.temperature(start, kelvin, density);
            double pressure = Isotherm.at(exact).pressure(density);
            worst = Math.max(worst, Math.abs(isentrope.temperature(density) / exact - 1));
            worst = Math.max(worst, Math.abs(isentrope.pressure(density) / pressure - 1));
          }
        }
      }
    }
    System.out.printf("Isentrope, interpolated against exact: %.1e%n", worst);
    assertTrue(worst < 1e-6, "worst " + worst);
  }

  /**
   * Gas that expands gets colder than any soak. Values by CoolProp 8.0.0 (pypi), the equation of
   * the same source with all of its terms: T1, p1, ratio of expansion, T2, p2.
   */
  @Test
  void expandsAsTheWholeEquationHasItDownTo150Kelvin() {
    double[][] published = {
      {293.15, 120e5, 3, 177.55177, 22.279278e5},
      {253.15, 80e5, 2.5, 167.78735, 20.197151e5},
      {293.15, 150e5, 4, 154.39933, 17.499832e5},
      {243.15, 100e5, 2, 175.33249, 33.588408e5},
    };
    for (double[] row : published) {
      double start = Isotherm.at(row[0]).density(row[1]);
      double end = start / row[2];
      assertEquals(row[3], Isentrope.temperature(start, row[0], end), 1e-4 * row[3]);
      assertEquals(row[4], Isentrope.pressure(start, row[0], end), 1e-4 * row[4]);
    }
  }

  @Test
  void staysWhereNothingChanges() {
    double start = Isotherm.at(293.15).density(100e5);
    assertEquals(293.15, Isentrope.temperature(start, 293.15, start), 1e-7);
    assertEquals(100e5, Isentrope.between(start, 293.15, start).pressure(start), 1);
  }

  @Test
  void refusesAStrokeThatEndsTooHotOrTooCold() {
    double start = Isotherm.at(353.15).density(100e5);
    BeyondEquation hot = beyond(() -> Isentrope.temperature(start, 353.15, 5 * start));
    assertEquals(BeyondEquation.Quantity.TEMPERATURE, hot.quantity());
    assertTrue(hot.value() > 624, "went to " + hot.value());
    double chill = Isotherm.at(233.15).density(100e5);
    BeyondEquation cold = beyond(() -> Isentrope.temperature(chill, 233.15, 0.3 * chill));
    assertTrue(cold.value() < 150, "went to " + cold.value());
    assertEquals("≥ 150 and ≤ 624 K", cold.bound().text());
  }

  private static BeyondEquation beyond(Executable stroke) {
    return assertThrows(BeyondEquation.class, stroke);
  }
}
