package org.staywright.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.unit.Unit.ROOM;

import org.junit.jupiter.api.Test;

class ConstancyTest {

  @Test
  void isLeastOverGreatestForceInTheUsedTravel() {
    ForceLaw law = gasSpring(0.008, 0.0156, 34e-6).law();
    assertEquals(
        law.force(0.02, ROOM) / law.force(0.15, ROOM), law.constancy(0.02, 0.15, ROOM), 1e-12);
    assertEquals(law.constancy(0.02, 0.15, ROOM), law.constancy(0.15, 0.02, ROOM), 1e-12);
    assertEquals(1, law.constancy(0.1, 0.1, ROOM), 1e-12);
  }

  @Test
  void gasComesNearerToConstantForceThanACoil() {
    double gas = gasSpring(0.008, 0.0156, 34e-6).law().constancy(0, 0.1, ROOM);
    // Compressed from 60 mm preload by 100 mm: 60/160.
    CoilSpring coil = CoilChecks.coil(3e-3, 0.024, 10, 0.3);
    double rate = coil.rate();
    ForceLaw law = new LinearLaw(coil, rate * 0.06, rate, 0);
    assertEquals(60.0 / 160, law.constancy(0, 0.1, ROOM), 1e-12);
    assertTrue(gas > 0.8, "" + gas);
  }

  @Test
  void aThinnerRodAWiderTubeAndMoreRoomComeNearer() {
    double before = gasSpring(0.008, 0.0156, 34e-6).law().constancy(0, 0.2, ROOM);
    assertTrue(gasSpring(0.006, 0.0156, 34e-6).law().constancy(0, 0.2, ROOM) > before);
    assertTrue(gasSpring(0.008, 0.0156, 45e-6).law().constancy(0, 0.2, ROOM) > before);
  }

  @Test
  void countsAPullByItsSize() {
    TractionSpring pull =
        new TractionSpring(
            new Cylinder(0.008, 0.018, 0.0156, 0.2, 0.53, 0.33, 0, 1, 60e-6, 0), 300);
    double constancy = pull.law().constancy(0, 0.2, ROOM);
    assertTrue(constancy > 0 && constancy < 1, "" + constancy);
  }

  private static GasSpring gasSpring(double rod, double bore, double gas) {
    return new GasSpring(new Cylinder(rod, 0.018, bore, 0.2, 0.46, 0.26, 0, 1, gas, 0), 400);
  }
}
