package org.staywright.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ShutGasTest {

  /**
   * Values by CoolProp 8.0.0 (pypi), the equation of the same source with all of its terms: T1, p1,
   * ratio of expansion, p2.
   */
  @Test
  void easesAsTheWholeEquationHasIt() {
    double[][] published = {
      {293.15, 120e5, 3, 22.279278e5},
      {253.15, 80e5, 2.5, 20.197151e5},
      {243.15, 100e5, 2, 33.588408e5},
    };
    for (double[] row : published) {
      double start = Isotherm.at(row[0]).density(row[1]);
      ShutGas gas = new ShutGas(start, row[0]);
      assertEquals(row[3], gas.pressure(start / row[2]), 1e-4 * row[3]);
    }
  }

  @Test
  void isPressedAlongTheIsentrope() {
    double start = Isotherm.at(293.15).density(60e5);
    ShutGas gas = new ShutGas(start, 293.15);
    assertEquals(60e5, gas.pressure(start), 1e-3);
    for (double ratio : new double[] {0.5, 0.9, 1.1, 1.5, 2}) {
      double other = Isentrope.pressure(start, 293.15, ratio * start);
      assertEquals(other, gas.pressure(ratio * start), 1e-7 * other);
    }
  }

  @Test
  void getsNoColderThanTheEquationIsUsedAt() {
    double start = Isotherm.at(233.15).density(150e5);
    ShutGas gas = new ShutGas(start, 233.15);
    double far = start / 8;
    assertTrue(new Isotherm(150).state(far).entropy() > Isotherm.at(233.15).state(start).entropy());
    assertEquals(new Isotherm(150).pressure(far), gas.pressure(far));
    double near = start / 1.5;
    assertTrue(gas.pressure(near) > new Isotherm(150).pressure(near));
  }
}
