package org.staywright.mechanism;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.staywright.unit.Fault;

/** Worked examples are in {@link StaticsChecks}. */
class HingedFlapTest {

  static final long SEED = 20_260_703;
  private static final List<Flap> FLAPS = flaps();

  /** Angle of the finite differences, rad. */
  private static final double STEP = 1e-5;

  @Test
  void leverIsTheSlopeOfTheSpringsLength() {
    for (Flap flap : FLAPS) {
      Travel travel = flap.made().travel(flap.end());
      for (int i = 0; i < travel.q().length; i++) {
        double q = travel.q()[i];
        assertEquals(flap.length(q), travel.length()[i], 1e-12, flap.place());
        double slope = (flap.length(q + STEP) - flap.length(q - STEP)) / (2 * STEP);
        assertEquals(slope, travel.lever()[i], 1e-8, flap.place());
      }
    }
  }

  @Test
  void loadIsTheSlopeOfThePotentialEnergy() {
    for (Flap flap : FLAPS) {
      Travel travel = flap.made().travel(flap.end());
      for (int i = 0; i < travel.q().length; i++) {
        double q = travel.q()[i];
        double slope = (flap.energy(q + STEP) - flap.energy(q - STEP)) / (2 * STEP);
        assertEquals(-slope, travel.load()[i], 1e-6, flap.place());
        assertEquals(-1.1 * slope, travel.heavy()[i], 1e-6, flap.place());
        assertEquals(-0.8 * slope, travel.light()[i], 1e-6, flap.place());
      }
    }
  }

  /** The loads summed over the whole travel are the energy between its ends (Simpson's rule). */
  @Test
  void workOverTheTravelIsTheEnergyBetweenItsEnds() {
    for (Flap flap : FLAPS) {
      Travel travel = flap.made().travel(flap.end());
      double work = 0;
      double way = 0;
      for (int i = 0; i <= travel.last(); i++) {
        int weight = i == 0 || i == travel.last() ? 1 : i % 2 == 1 ? 4 : 2;
        double step = flap.end() / travel.last() / 3;
        work += weight * step * travel.load()[i];
        way += weight * step * travel.lever()[i];
      }
      assertEquals(flap.energy(0) - flap.energy(flap.end()), work, 1e-4, flap.place());
      assertEquals(flap.length(flap.end()) - flap.length(0), way, 1e-3, flap.place());
    }
  }

  @Test
  void risesByTheHeightBetweenItsMounts() {
    for (Flap flap : FLAPS) {
      for (double share : new double[] {0, 0.4, 1}) {
        double q = share * flap.end();
        double up = flap.height(flap.moving(), q) - flap.height(flap.frame(), 0);
        assertEquals(up / flap.length(q), flap.made().rise(q).orElseThrow(), 1e-9, flap.place());
      }
    }
  }

  @Test
  void aMirroredFlapIsTheSameFlap() {
    for (Flap flap : FLAPS) {
      Travel one = flap.made().travel(flap.end());
      Travel other = flap.mirrored().made().travel(flap.end());
      assertArrayEquals(one.length(), other.length(), 1e-12, flap.place());
      assertArrayEquals(one.lever(), other.lever(), 1e-12, flap.place());
      assertArrayEquals(one.load(), other.load(), 1e-9, flap.place());
      assertEquals(
          flap.made().rise(0.3).orElseThrow(),
          flap.mirrored().made().rise(0.3).orElseThrow(),
          1e-12);
    }
  }

  @Test
  void tiltByAQuarterTurnsAGravityMomentIntoNone() {
    Flap flap = new Flap(0, 10, new Point(0.5, 0), 1, 1.2, Math.PI / 2, at(0.1, -0.2), at(0.3, 0));
    assertEquals(0, flap.made().travel(1.2).load()[0], 1e-12);
    Flap level = new Flap(0, 10, new Point(0.5, 0), 1, 1.2, 0, at(0.1, -0.2), at(0.3, 0));
    assertEquals(-10 * 9.80665 * 0.5, level.made().travel(1.2).load()[0], 1e-12);
  }

  @Test
  void samplesEvenlyToAnyEnd() {
    Travel travel = FLAPS.get(0).made().travel(0.6);
    assertEquals(61, travel.q().length);
    assertEquals(0, travel.q()[0]);
    assertEquals(0.6, travel.q()[60], 1e-15);
    assertEquals(0.01, travel.q()[1], 1e-15);
    assertTrue(travel.shortest() <= travel.length()[30]);
    assertTrue(travel.longest() >= travel.length()[30]);
  }

  @Test
  void mountsApartAcrossTheSideViewMakeTheSpringLonger() {
    Flap flap = FLAPS.get(0);
    HingedFlap flat = flap.made();
    HingedFlap askew =
        new HingedFlap(
            flat.masses(),
            flat.centreOfMass(),
            flat.handle(),
            flat.sense(),
            flat.end(),
            flat.tilt(),
            flat.friction(),
            new Mounts(flap.frame(), flap.moving(), 0.05, Mounts.RodEnd.EITHER));
    Travel travel = askew.travel(flap.end());
    for (int i = 0; i <= travel.last(); i++) {
      double q = travel.q()[i];
      assertEquals(Math.hypot(flap.length(q), 0.05), travel.length()[i], 1e-12);
      double slope = (askew.length(q + STEP) - askew.length(q - STEP)) / (2 * STEP);
      assertEquals(slope, travel.lever()[i], 1e-8);
    }
  }

  @Test
  void soundGeometryHasNoFaults() {
    assertEquals(List.of(), codes(at(0.1, -0.2), at(0.3, 0), 1, 1.2));
  }

  @Test
  void refusesMountsThatCoincide() {
    assertEquals(List.of("mounts-coincide"), codes(at(0.3, 0), at(0.3, 0), 1, 1.2));
  }

  @Test
  void refusesMountsThatPassThroughEachOther() {
    // On one circle about the hinge, 40° ahead.
    Point ahead = at(0.3, 0).turned(Math.toRadians(40));
    assertEquals(List.of("mounts-pass-through"), codes(ahead, at(0.3, 0), 1, 1.2));
    assertEquals(List.of(), codes(ahead, at(0.3, 0), 1, Math.toRadians(30)));
    assertEquals(List.of(), codes(ahead, at(0.3, 0), -1, 1.2));
    Point behind = at(0.3, 0).turned(Math.toRadians(-40));
    assertEquals(List.of("mounts-pass-through"), codes(behind, at(0.3, 0), -1, 1.2));
  }

  /** Where they start on the circle does not matter, only how far apart. */
  @Test
  void refusesMountsThatPassThroughEachOtherWhereverTheyStart() {
    Point moving = at(0.3, 0).turned(Math.toRadians(25));
    Point ahead = at(0.3, 0).turned(Math.toRadians(65));
    assertEquals(List.of("mounts-pass-through"), codes(ahead, moving, 1, 1.2));
    assertEquals(List.of(), codes(ahead, moving, 1, Math.toRadians(30)));
    // Half a millimetre before they meet.
    assertEquals(List.of("mounts-pass-through"), codes(ahead, moving, 1, Math.toRadians(39.9)));
  }

  @Test
  void takesAMillimetreForApart() {
    assertEquals(List.of(), codes(at(0.001, 0), at(0.002, 0), 1, 1));
    assertEquals(List.of(), codes(at(0, 0.3), at(0.001, 0), 1, 0.5));
    HingedFlap flap = new Flap(0, 10, at(0.5, 0), 1, 1, 0, at(0.1, -0.2), at(0.3, 0)).made();
    HingedFlap held =
        new HingedFlap(flap.masses(), flap.centreOfMass(), at(0.001, 0), 1, 1, 0, 0, flap.mounts());
    assertEquals(List.of(), held.faults());
  }

  @Test
  void refusesMountsAtTheHinge() {
    assertEquals(List.of("mount-at-hinge"), codes(at(0, 0), at(0.3, 0), 1, 1.2));
    assertEquals(List.of("mount-at-hinge"), codes(at(0.3, 0), at(0, 0), 1, 1.2));
    assertEquals(List.of("mount-at-hinge", "mount-at-hinge"), codes(at(0, 0), at(0, 0), 1, 1.2));
  }

  @Test
  void refusesAHandleAtTheHinge() {
    HingedFlap flap = new Flap(0, 10, at(0.5, 0), 1, 1, 0, at(0.1, -0.2), at(0.3, 0)).made();
    HingedFlap held =
        new HingedFlap(flap.masses(), flap.centreOfMass(), at(0, 0), 1, 1, 0, 0, flap.mounts());
    assertEquals("handle-at-hinge", held.faults().get(0).code());
    assertEquals("handle", held.faults().get(0).where());
  }

  @Test
  void aSealActsFullyWhenShutAndHalfAsMuchHalfWayToWhereItLetsGo() {
    HingedFlap plain = new Flap(0, 10, at(0.5, 0), 1, 1.2, 0, at(0.1, -0.2), at(0.3, 0)).made();
    HingedFlap sealed =
        new HingedFlap(
            plain.masses(),
            plain.centreOfMass(),
            plain.handle(),
            1,
            1.2,
            0,
            0,
            plain.mounts(),
            null,
            new Seal(8, 0.2));
    Travel without = plain.travel(1.2);
    Travel with = sealed.travel(1.2);
    // 61 samples over 1.2 rad: one each 0.02 rad.
    double[] taken = {8, 7.2, 6.4, 5.6, 4.8, 4, 3.2, 2.4, 1.6, 0.8, 0, 0, 0};
    for (int i = 0; i < taken.length; i++) {
      assertEquals(without.load()[i] - taken[i], with.load()[i], 1e-9);
      assertEquals(without.heavy()[i] - taken[i], with.heavy()[i], 1e-9);
      assertEquals(without.light()[i] - taken[i], with.light()[i], 1e-9);
    }
  }

  private static List<String> codes(Point frame, Point moving, int sense, double end) {
    HingedFlap flap = new Flap(0, 10, at(0.5, 0), sense, end, 0, frame, moving).made();
    return flap.faults().stream().map(Fault::code).toList();
  }

  private static Point at(double x, double y) {
    return new Point(x, y);
  }

  private static List<Flap> flaps() {
    Random random = new Random(SEED);
    System.out.println("HingedFlapTest seed " + SEED);
    return IntStream.range(0, 60).mapToObj(draw -> Flap.random(draw, random)).toList();
  }
}
