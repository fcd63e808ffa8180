package org.staywright.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class IsothermsTest {

  @Test
  void keepToTheEquationOfStateBetweenTheirTemperatures() {
    Isotherms isotherms = new Isotherms(243.15, 353.15, 1.5, 300);
    for (double kelvin = 243.15; kelvin <= 353.15; kelvin += 5.5) {
      double[] fit = isotherms.at(kelvin);
      for (double density = 20; density <= 300; density += 14) {
        double exact = Isotherm.at(kelvin).pressure(density);
        assertEquals(1, Isotherms.pressure(fit, density) / exact, 2e-4);
      }
    }
  }
}
