package org.staywright.fit.replace;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NormalTest {

  /**
   * Decimal logarithms of the upper tail as in Abramowitz and Stegun, Handbook of Mathematical
   * Functions, table 26.2, from memory; those up to 25 agree with erfc of the C library, which ends
   * at 37, the others with the series summed to eleven terms.
   */
  @ParameterizedTest
  @CsvSource({
    "5,6.54265",
    "10,23.11805",
    "15,50.43522",
    "20,88.56010",
    "25,137.51475",
    "50,544.96634",
    "100,2173.87154",
    "200,8688.58977",
    "500,54289.90830"
  })
  void agreesWithTheHandbookFarIntoTheTail(double x, double tail) {
    assertEquals(-tail, Normal.logDistribution(-x) / Math.log(10), 6e-6);
  }

  /** The same handbook, table 26.1, from memory. */
  @ParameterizedTest
  @CsvSource({"0,0.5", "1,0.841344746", "2,0.977249868", "-1,0.158655254", "3,0.998650102"})
  void agreesWithTheHandbookInTheMiddle(double z, double below) {
    assertEquals(below, Math.exp(Normal.logDistribution(z)), 1e-9);
  }

  @Test
  void passesFromOneFormulaToTheOtherWithoutAStep() {
    double above = Normal.logDistribution(-15);
    double below = Normal.logDistribution(Math.nextDown(-15.0));
    assertEquals(above, below, 1e-7);
  }

  @Test
  void sumsExponentialsWithoutOverflow() {
    assertEquals(1000 + Math.log(2), Normal.logSum(new double[] {1000, 1000}), 1e-12);
    assertEquals(-5, Normal.logSum(new double[] {-5, Double.NEGATIVE_INFINITY}), 1e-12);
  }
}
