package org.staywright.fit.replacement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;

class NormalTest {

  @Test
  void agreesWithCommonsMathWhereThatReaches() {
    for (double z = -25; z <= 6; z += 0.037) {
      double exact = Math.log(0.5 * Erf.erfc(-z / Math.sqrt(2)));
      assertEquals(exact, Normal.logDistribution(z), 1e-6, "z = " + z);
    }
  }

  @Test
  void fallsAsThePowerOfTheTailBeyond() {
    double z = -200;
    double tail = -z * z / 2 - Math.log(-z * Math.sqrt(2 * Math.PI));
    assertEquals(tail, Normal.logDistribution(z), 1e-4);
  }

  @Test
  void sumsExponentialsWithoutOverflow() {
    assertEquals(1000 + Math.log(2), Normal.logSum(new double[] {1000, 1000}), 1e-12);
    assertEquals(-5, Normal.logSum(new double[] {-5, Double.NEGATIVE_INFINITY}), 1e-12);
  }
}
