package org.staywright.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Published viscosities are in {@link ViscosityChecks}. */
class OilTest {

  private static final double FORTY = 313.15;

  /** ISO 3448: the grade is the viscosity at 40 °C in mm²/s. */
  @Test
  void isOfItsGradeAtFortyDegrees() {
    assertEquals(22e-6, Oil.VG_22.kinematicViscosity(FORTY), 1e-12);
    assertEquals(32e-6, Oil.VG_32.kinematicViscosity(FORTY), 1e-12);
    assertEquals(46e-6, Oil.VG_46.kinematicViscosity(FORTY), 1e-12);
  }

  /** 870 kg/m³ at 20 °C; 0.7e-3 a kelvin make 1.4 % more room at 40 °C. */
  @Test
  void growsByItsExpansion() {
    assertEquals(870, Oil.VG_22.density(293.15), 1e-9);
    assertEquals(870 / 1.014, Oil.VG_22.density(FORTY), 1e-9);
  }

  /** η = ν·ρ. */
  @Test
  void isAsThickAsItsDensityMakesIt() {
    assertEquals(32e-6 * 870 / 1.014, Oil.VG_32.viscosity(FORTY), 1e-9);
  }
}
