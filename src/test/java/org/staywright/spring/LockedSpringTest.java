package org.staywright.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.unit.Unit.ATMOSPHERE;
import static org.staywright.unit.Unit.ROOM;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

class LockedSpringTest {

  private static final LockingSpring STRUT = Locks.strut(Locking.ELASTIC);
  private static final LockingSpring COLUMN = Locks.column();

  /** Boyle on either side, Poisson with γ = 7/5 when fast: a thin gas has a closed form. */
  @Test
  void followsItsClosedFormWhereTheGasIsThin() {
    LockingSpring thin = Locks.spring(0.010, 0.022, 0.019, 0.16, 10, 2e-6, 2e-6, Locking.ELASTIC);
    double bore = Math.PI / 4 * 0.019 * 0.019;
    double rod = Math.PI / 4 * 0.010 * 0.010;
    double p1 = ATMOSPHERE + 10.5 / rod;
    double v0 = bore * 0.16 + 4e-6;
    for (double x0 : new double[] {0.01, 0.08, 0.13}) {
      double p0 = p1 * (v0 - rod * 0.005) / (v0 - rod * x0);
      double full = bore * (0.16 - x0) + 2e-6;
      double side = (bore - rod) * x0 + 2e-6;
      LockedSpring locked = thin.locked(x0, ROOM);
      for (double deflection : new double[] {-0.005, 0.001, 0.005, 0.02}) {
        double pressed = full / (full - bore * deflection);
        double eased = side / (side + (bore - rod) * deflection);
        double slow = p0 * (pressed * bore - eased * (bore - rod) - rod);
        double fast =
            p0 * (Math.pow(pressed, 1.4) * bore - Math.pow(eased, 1.4) * (bore - rod) - rod);
        String place = "x0 " + x0 + ", δ " + deflection;
        assertEquals(slow, locked.slow(deflection), 3e-3 * Math.abs(slow), place);
        assertEquals(fast, locked.fast(deflection), 1e-2 * Math.abs(fast), place);
      }
      double stiffness = p0 * (bore * bore / full + (bore - rod) * (bore - rod) / side);
      assertEquals(stiffness, locked.stiffness(), 3e-3 * stiffness);
    }
  }

  /** At 45 bar nitrogen is stiffer than Boyle's gas of the same pressure. */
  @Test
  void isNoIdealGasUnderPressure() {
    LockedSpring locked =
        Locks.spring(0.01, 0.022, 0.019, 0.16, 1000, 2e-6, 2e-6, Locking.ELASTIC)
            .locked(0.08, ROOM);
    double pressure = ATMOSPHERE + 1050 / (Math.PI / 4 * 1e-4);
    double bore = Math.PI / 4 * 0.019 * 0.019;
    double ring = bore - Math.PI / 4 * 1e-4;
    double boyle =
        pressure * (bore * bore / (bore * 0.08 + 2e-6) + ring * ring / (ring * 0.08 + 2e-6));
    assertTrue(locked.stiffness() > 1.05 * boyle, locked.stiffness() + " / " + boyle);
  }

  @Test
  void stiffnessIsTheSlopeOfTheSlowForceAtRest() {
    for (LockingSpring spring :
        new LockingSpring[] {STRUT, COLUMN, Locks.strut(Locking.RIGID_PUSH)}) {
      for (double x0 : new double[] {0.01, 0.06, 0.11}) {
        LockedSpring locked = spring.locked(x0, 263.15);
        double slope = locked.slow(1e-7) / 1e-7;
        assertEquals(slope, locked.stiffness(), 1e-4 * slope);
        assertEquals(0, locked.slow(0), 1e-6);
        assertEquals(0, locked.fast(0), 1e-3);
      }
    }
  }

  @Test
  void openStiffnessIsTheSlopeOfTheOpenForce() {
    ChargedSpring open = STRUT.charged();
    double slope = (open.force(0.08 + 1e-6, ROOM) - open.force(0.08 - 1e-6, ROOM)) / 2e-6;
    assertEquals(slope, STRUT.locked(0.08, ROOM).openStiffness(), 1e-5 * slope);
  }

  @Property(tries = 300)
  void lockedItIsNeverSofterThanOpen(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double place,
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 0.8) double rodShare,
      @ForAll @Scale(9) @DoubleRange(min = 1e-7, max = 1e-4) double full,
      @ForAll @Scale(9) @DoubleRange(min = 1e-7, max = 1e-4) double side,
      @ForAll @DoubleRange(min = 243, max = 350) double kelvin) {
    LockingSpring spring =
        Locks.spring(0.019 * rodShare, 0.022, 0.019, 0.16, 200, full, side, Locking.ELASTIC);
    LockedSpring locked = spring.locked(place * 0.16, kelvin);
    assertTrue(locked.stiffness() >= locked.openStiffness() * (1 - 1e-9));
  }

  @Property(tries = 300)
  void holdsMoreTheFurtherTheWarmerAndTheFaster(
      @ForAll @Scale(6) @DoubleRange(min = 0.02, max = 0.1) double x0,
      @ForAll @Scale(6) @DoubleRange(min = 0.0005, max = 0.02) double deflection,
      @ForAll @DoubleRange(min = 253, max = 350) double kelvin) {
    for (LockingSpring spring : new LockingSpring[] {STRUT, COLUMN}) {
      double reach = Math.min(deflection, spring.stroke() - x0 - 0.001);
      LockedSpring locked = spring.locked(x0, kelvin);
      double slow = locked.slow(reach);
      assertTrue(slow > 0 && locked.slow(reach + 0.001) > slow);
      assertTrue(locked.fast(reach) > slow);
      assertTrue(spring.locked(x0, kelvin + 1).slow(reach) > slow);
      assertTrue(slow >= locked.openStiffness() * reach);
      assertTrue(locked.slow(-reach / 2) < 0);
    }
  }

  @Property(tries = 100)
  void aClosedSlowLoopOfTheOpenSpringCostsItsFriction(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.05) double from,
      @ForAll @Scale(6) @DoubleRange(min = 0.06, max = 0.12) double to,
      @ForAll @DoubleRange(min = 243, max = 350) double kelvin) {
    double cost = TractionSpringTest.loop(STRUT.law(), from, to, kelvin);
    assertEquals(2 * STRUT.friction(kelvin) * (to - from), cost, 1e-6);
  }

  @Test
  void holdsALoadAtTheDeflectionItFinds() {
    LockedSpring locked = COLUMN.locked(0.06, ROOM);
    for (double load : new double[] {0, 10, 300, 900}) {
      double deflection = locked.deflection(load, 1e-9);
      assertEquals(load, locked.slow(deflection), 1e-4 * load);
    }
  }

  @Test
  void refusesALoadThatNothingHoldsWithTheBracketItSearched() {
    LockedSpring locked = COLUMN.locked(0.06, ROOM);
    double most = locked.slow(locked.greatest());
    Fault fault = refused(() -> locked.deflection(1.01 * most, 1e-9));
    assertEquals("locked-load", fault.code());
    assertTrue(fault.bound().contains("δ ≤"), fault.bound());
    assertEquals("locked-load", refused(() -> locked.deflection(-1, 1e-9)).code());
    assertEquals(0, STRUT.locked(STRUT.stroke(), ROOM).deflection(0, 1e-9), "right at its end too");
    assertEquals("locked-load", refused(() -> locked.deflection(Double.NaN, 1e-9)).code());
  }

  @Test
  void refusesADeflectionBeyondStrokePressureOrLock() {
    LockedSpring shallow = STRUT.locked(0.15, ROOM);
    Fault stroke = refused(() -> shallow.require(0.0101));
    assertEquals("locked-stroke", stroke.code());
    assertEquals(10.1, (double) stroke.value(), 1e-9);
    assertTrue(stroke.bound().endsWith("mm"), stroke.bound());
    assertEquals(0.0099, shallow.require(0.0099));

    LockingSpring tight = Locks.spring(0.01, 0.022, 0.019, 0.16, 1500, 1e-6, 2e-5, Locking.ELASTIC);
    LockingSpring strong = new LockingSpring(tight.open(), 1e-6, 2e-5, Locking.ELASTIC, 1e6);
    assertEquals("locked-gas", refused(() -> strong.locked(0.12, ROOM).require(0.0399)).code());

    LockingSpring weak = new LockingSpring(STRUT.open(), 2e-6, 2e-6, Locking.ELASTIC, 400);
    LockedSpring held = weak.locked(0.08, ROOM);
    assertEquals("locked-force", refused(() -> held.require(0.04)).code());
    assertEquals(400, held.fast(held.greatest()), 0.01);

    Locking rigid = Locking.RIGID_PUSH;
    LockingSpring stiff = new LockingSpring(STRUT.open(), 2e-6, 2e-6, rigid, 1e6);
    assertEquals("locked-gas", refused(() -> stiff.locked(0.08, ROOM).require(0.01)).code());
  }

  @Test
  void refusesAPlaceOutsideTheStroke() {
    assertEquals("compression", refused(() -> STRUT.locked(0.1601, ROOM)).where());
    assertEquals("compression", refused(() -> STRUT.locked(-0.001, ROOM)).where());
  }

  @Test
  void refusesASideWithoutRoom() {
    GasSpring open = STRUT.open();
    Fault none = refused(() -> new LockingSpring(open, 0, 2e-6, Locking.ELASTIC, 5000));
    assertEquals("fullSideDeadVolume", none.where());
    Fault less = refused(() -> new LockingSpring(open, 2e-6, -1e-9, Locking.ELASTIC, 5000));
    assertEquals("rodSideDeadVolume", less.where());
  }

  @Test
  void aStrutIsSoftestBetweenItsEndsAndAColumnAtTheBottomOfItsSleevedStroke() {
    double gas = STRUT.charged().gasMass();
    double place = LockedSpring.softest(STRUT, gas, ROOM, 1e-8);
    assertTrue(place > 0.01 && place < 0.15, "" + place);
    double least = STRUT.locked(place, ROOM).stiffness();
    for (int i = 0; i <= 200; i++) {
      assertTrue(STRUT.locked(0.16 * i / 200, ROOM).stiffness() >= least * (1 - 1e-9));
    }
    // A large sleeve: highest, that is extended, it is softest.
    assertEquals(0, LockedSpring.softest(COLUMN, COLUMN.charged().gasMass(), ROOM, 1e-8));
    double before = 0;
    for (int i = 0; i <= 20; i++) {
      double stiffness = COLUMN.locked(0.12 * i / 20, ROOM).stiffness();
      assertTrue(stiffness > before);
      before = stiffness;
    }
  }

  @Test
  void oilHoldsOnlyTheWayItIsFilledFor() {
    double elastic = STRUT.locked(0.08, ROOM).stiffness();
    double pushed = Locks.strut(Locking.RIGID_PUSH).locked(0.08, ROOM).stiffness();
    assertTrue(pushed > 50 * elastic, pushed + " / " + elastic);
    LockedSpring pull = Locks.strut(Locking.RIGID_PULL).locked(0.08, ROOM);
    assertEquals(elastic, pull.stiffness(), 1e-9 * elastic);
    assertTrue(pull.slow(-1e-4) < -50 * elastic * 1e-4);
    assertEquals(
        STRUT.locked(0.08, ROOM).slow(-1e-4),
        Locks.strut(Locking.RIGID_PUSH).locked(0.08, ROOM).slow(-1e-4),
        1e-9);
    LockedSpring both = Locks.strut(Locking.RIGID_BOTH).locked(0.08, ROOM);
    assertEquals(pushed, both.stiffness(), 1e-9 * pushed);
    assertEquals(pull.slow(-1e-4), both.slow(-1e-4), 1e-9);
  }

  /**
   * By hand: oil A²·B/V, tube 2/E·((k²+1)/(k²−1)+ν) on top of 1/B, rod E·A/L, one after another.
   */
  @Test
  void oilTubeAndRodGiveOneAfterAnother() {
    LockedOil oil = new LockedOil(3e-4, 3e-5, new ThickTube(0.010, 0.012), 0.2, 1e-4);
    double square = 1.44;
    double tube = 2 / 210e9 * ((square + 1) / (square - 1) + 0.3);
    double giving = 3e-5 / 9e-8 * (1 / 1.5e9 + tube) + 0.2 / (210e9 * 1e-4);
    assertEquals(1 / giving, oil.stiffness(), 1e-6 / giving);
    double stiff = 9e-8 * 1.5e9 / 3e-5;
    assertTrue(oil.stiffness() < stiff && oil.stiffness() > 0.8 * stiff);
  }

  @Test
  void drawsItsCurveFromRestToTheDeflection() {
    LockedSpring locked = COLUMN.locked(0.06, ROOM);
    LockedCurve curve = LockedCurve.of(locked, 0.01, 21);
    assertEquals(21, curve.deflection().length);
    assertEquals(0, curve.slow()[0], 1e-6);
    assertEquals(0.01, curve.deflection()[20], 1e-15);
    assertEquals(locked.fast(0.005), curve.fast()[10], 1e-9);
    assertEquals(locked.stiffness(), curve.stiffness(), 0);
    double[] sorted = curve.slow().clone();
    Arrays.sort(sorted);
    assertEquals(Arrays.toString(sorted), Arrays.toString(curve.slow()));
    assertEquals("locked-stroke", refused(() -> LockedCurve.of(locked, 0.0601, 21)).code());
  }

  private static Fault refused(Runnable run) {
    return assertThrows(Refusal.class, run::run).faults().get(0);
  }
}
