package org.staywright.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.unit.Unit.ROOM;

import org.junit.jupiter.api.Test;

class LockingSpringTest {

  @Test
  void openItIsTheGasSpringItIsMadeOf() {
    LockingSpring strut = Locks.strut(Locking.ELASTIC);
    ChargedSpring charged = strut.charged(1.1, 0.9);
    ChargedSpring open = strut.open().charged(1.1, 0.9);
    assertEquals(open.gasMass(), charged.gasMass(), 0);
    assertEquals(strut, charged.spring());
    for (int i = 0; i <= 10; i++) {
      double x = strut.stroke() * i / 10;
      assertEquals(open.force(x, 263.15), charged.force(x, 263.15), 0);
      assertEquals(open.fast(0, 0.1, ROOM).force(x), charged.fast(0, 0.1, ROOM).force(x), 0);
    }
  }

  @Test
  void itsTwoSidesTogetherAreItsGasVolume() {
    LockingSpring strut = Locks.strut(Locking.ELASTIC);
    assertEquals(0, strut.volumeAmiss(), 1e-12);
    for (double x = 0; x <= strut.stroke(); x += 0.02) {
      assertEquals(strut.gasVolume(x, ROOM), strut.fullSide(x) + strut.rodSide(x), 1e-12);
    }
    LockingSpring more = new LockingSpring(strut.open(), 3e-6, 2e-6, Locking.ELASTIC, 5000);
    assertEquals(-1e-6, more.volumeAmiss(), 1e-12);
  }

  @Test
  void aSleeveIsThinnerThanTheBoreWouldHaveIt() {
    LockingSpring column = Locks.column();
    ThickTube bore = new ThickTube(column.cylinder().boreDiameter() / 2, column.tubeDiameter() / 2);
    assertTrue(column.tube().pressureAt(490e6) < bore.pressureAt(490e6));
    // Bore, inner wall and sleeve fill what lies inside the outer wall.
    double inside = column.tube().innerRadius();
    double wall =
        2 * Math.PI * column.cylinder().boreDiameter() / 2 * (column.tubeDiameter() / 2 - inside);
    double sleeve = Math.PI * inside * inside - column.cylinder().boreArea() - wall;
    assertEquals(column.rodSideDeadVolume(), sleeve * column.stroke(), 1e-12);
    LockingSpring strut = Locks.strut(Locking.ELASTIC);
    assertTrue(column.softensSteadily() && !strut.softensSteadily());
    assertEquals(strut.cylinder().boreDiameter() / 2, strut.tube().innerRadius(), 1e-12);
  }

  @Test
  void writesItsLockingAsOneWord() {
    assertEquals("rigid-push", Locking.RIGID_PUSH.code());
    assertTrue(Locking.RIGID_PUSH.rigidPushed() && !Locking.RIGID_PUSH.rigidPulled());
    assertTrue(Locking.RIGID_BOTH.rigidPushed() && Locking.RIGID_BOTH.rigidPulled());
    assertTrue(!Locking.RIGID_PULL.rigidPushed() && !Locking.ELASTIC.rigidPulled());
  }
}
