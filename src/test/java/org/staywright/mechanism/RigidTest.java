package org.staywright.mechanism;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.staywright.mechanism.Mounts.RodEnd;

/** Two routes to the same load: its pose over q here, the formulas of each mechanism there. */
class RigidTest {

  private static final double GRAVITY = 9.80665;

  private static List<Rigid> loads() {
    Mounts mounts = new Mounts(at(0.12, -0.2), at(0.35, 0.05), 0.04, RodEnd.MOVING);
    Masses masses = new Masses(20, 23, 18);
    Seal seal = new Seal(6, 0.5);
    return List.of(
        new HingedFlap(masses, at(0.5, 0.1), at(0.9, 0), 1, 1.3, 0.2, 3, mounts, null, seal),
        new HingedFlap(masses, at(0.5, -0.1), at(0.9, 0), -1, 1.3, -0.4, 3, mounts, 9.0, seal),
        new StraightLift(masses, 0.4, 0.7, 12, mounts),
        new StraightLift(masses, 0.4, 2.4, 12, mounts));
  }

  @Test
  void theSpringReachesFromTheFrameToWhereThePoseTakesTheMovingMount() {
    for (Rigid load : loads()) {
      for (double q : new double[] {0, 0.1, 0.37}) {
        Point apart = taken(load.pose(q), load.mounts().moving()).minus(load.mounts().frame());
        double length = Math.hypot(Math.hypot(apart.x(), apart.y()), 0.04);
        assertEquals(length, load.length(q), 1e-12, load.code());
        double rise = dot(load.up(), apart) / length;
        assertEquals(rise, load.rise(q).orElseThrow(), 1e-12, load.code());
        Point way = way(load.pose(q), load.mounts().moving());
        double lever = dot(apart, way) / length;
        assertEquals(lever, load.lever(q), 1e-12, load.code());
      }
    }
  }

  /** Q = −m·g·(up · dC/dq), and what acts besides. */
  @Test
  void gravityWorksAgainstTheWayOfTheCentreOfMass() {
    for (Rigid load : loads()) {
      Travel travel = load.travel(load.end());
      for (int i = 0; i <= travel.last(); i += 5) {
        double q = travel.q()[i];
        double perMass = -GRAVITY * dot(load.up(), way(load.pose(q), load.centreOfMass()));
        double besides = load.besides(q);
        assertEquals(20 * perMass + besides, travel.load()[i], 1e-9, load.code());
        assertEquals(23 * perMass + besides, travel.heavy()[i], 1e-9, load.code());
        assertEquals(18 * perMass + besides, travel.light()[i], 1e-9, load.code());
      }
    }
  }

  @Test
  void onlyTheFlapHasSomethingBesidesGravity() {
    assertEquals(-6, loads().get(0).besides(0), 1e-12);
    assertEquals(-3, loads().get(1).besides(0.25), 1e-12);
    assertEquals(0, loads().get(2).besides(0));
  }

  /** A plate turning on its edge, m·l²/3: 30 kg and 1.2 m make 14.4 kg·m². */
  @Test
  void aFlapIsAPlateOnItsEdgeUnlessItsInertiaIsGiven() {
    Mounts mounts = new Mounts(at(0.1, -0.2), at(0.3, 0), 0, RodEnd.EITHER);
    Masses masses = new Masses(30, 30, 30);
    HingedFlap plate = new HingedFlap(masses, at(0.6, 0), at(1.2, 0), 1, 1, 0, 0, mounts);
    assertEquals(14.4, plate.inertia().orElseThrow(), 1e-12);
    assertEquals(9, loads().get(1).inertia().orElseThrow());
    assertEquals(20, loads().get(2).inertia().orElseThrow());
  }

  @Test
  void sharesAreOfTheNominalMass() {
    Masses shares = loads().get(2).shares();
    assertEquals(1, shares.nominal());
    assertEquals(1.15, shares.heaviest(), 1e-12);
    assertEquals(0.9, shares.lightest(), 1e-12);
  }

  @Test
  void hungElsewhereOnlyItsMountsAreOthers() {
    Mounts elsewhere = new Mounts(at(0.2, -0.3), at(0.4, 0.1), 0, RodEnd.FRAME);
    for (Rigid load : loads()) {
      Rigid hung = load.at(elsewhere);
      assertEquals(Math.hypot(0.2, 0.4), hung.length(0), 1e-12);
      assertEquals(RodEnd.FRAME, hung.rodEnd());
      assertEquals(0, hung.lateralOffset());
      assertEquals(load, hung.at(load.mounts()));
      assertEquals(0.04, load.lateralOffset());
      assertEquals(RodEnd.MOVING, load.rodEnd());
    }
  }

  @Test
  void movedFartherOrTiltedItIsOtherwiseTheSame() {
    HingedFlap flap = (HingedFlap) loads().get(0);
    assertEquals(0.8, flap.to(0.8).end());
    assertEquals(flap, flap.to(0.8).to(1.3));
    assertEquals(-0.1, flap.tilted(-0.1).tilt());
    assertEquals(flap, flap.tilted(-0.1).tilted(0.2));
    StraightLift lift = (StraightLift) loads().get(2);
    assertEquals(0.2, lift.to(0.2).end());
    assertEquals(lift, lift.to(0.2).to(0.4));
  }

  @Test
  void eachMechanismAnswersOnItsOwnSide() {
    Mechanism profile = new ForceProfile(List.of());
    Mechanism seat = new SeatColumn(10, 50, 100, 0.8, 0.1);
    assertEquals("hinged-flap", side(loads().get(0)));
    assertEquals("straight-lift", side(loads().get(2)));
    assertEquals("force-profile", side(profile));
    assertEquals("seat-column", side(seat));
    for (Rigid load : loads()) {
      assertSame(load, load.<Mechanism>as(flap -> flap, lift -> lift));
      assertEquals(side(load), load.code());
    }
    assertEquals(side(profile), profile.code());
    assertEquals(side(seat), seat.code());
    assertEquals(Mechanism.Movement.TURNS, loads().get(0).movement());
    assertEquals(Mechanism.Movement.SHIFTS, loads().get(2).movement());
  }

  private static String side(Mechanism load) {
    return load.as(
        rigid -> rigid.as(flap -> "hinged-flap", lift -> "straight-lift"),
        profile -> "force-profile",
        seat -> "seat-column");
  }

  private static Point taken(Pose pose, Point point) {
    return new Point(
        pose.cos() * point.x() - pose.sin() * point.y() + pose.x(),
        pose.sin() * point.x() + pose.cos() * point.y() + pose.y());
  }

  /** d(point)/dq: a quarter turn ahead of where it is, and the shift. */
  private static Point way(Pose pose, Point point) {
    Point there = taken(pose, point).minus(new Point(pose.x(), pose.y()));
    return new Point(
        pose.along() - pose.turning() * there.y(), pose.upward() + pose.turning() * there.x());
  }

  private static double dot(Point one, Point other) {
    return one.x() * other.x() + one.y() * other.y();
  }

  private static Point at(double x, double y) {
    return new Point(x, y);
  }
}
