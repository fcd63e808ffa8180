package org.staywright.fit.mounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;

/** Zones to begin a search with. */
class RoomTest {

  private static final Point HINGE = new Point(0, 0);

  /** A flap of 1 m with its mounts at the hinge, so that they ask for no room. */
  private static HingedFlap flap(double closed, int sense) {
    return new HingedFlap(
        new Masses(10, 10, 10),
        new Point(0.5, 0).turned(closed),
        new Point(1, 0).turned(closed),
        sense,
        Math.toRadians(80),
        0,
        0,
        new Mounts(HINGE, HINGE, 0, RodEnd.EITHER));
  }

  @Test
  void aLidHasItsFrameMountBelowItAndItsOtherOnIt() {
    Zones room = Room.of(flap(0, 1));
    same(new Zone(-0.1, 0.3, -0.5, 0), room.frame());
    same(new Zone(0, 0.55, -0.08, 0), room.moving());
  }

  @Test
  void theOtherWayRoundItIsMirrored() {
    Zones room = Room.of(flap(Math.PI, -1));
    same(new Zone(-0.3, 0.1, -0.5, 0), room.frame());
    same(new Zone(-0.55, 0, -0.08, 0), room.moving());
  }

  @Test
  void whatFallsOpenHasItsFrameMountBeyondTheHinge() {
    // Upright when closed, let down to the right: its weight opens it all the way.
    Zones room = Room.of(flap(Math.PI / 2, -1));
    same(new Zone(-0.15, 0.15, -0.85, 0), room.frame());
    same(new Zone(-0.08, 0, 0, 0.55), room.moving());
  }

  @Test
  void theMountsThatAreThereLieInThem() {
    Mounts far = new Mounts(new Point(0.7, 0.4), new Point(0.9, 0.2), 0, RodEnd.FRAME);
    Zones room = Room.of((HingedFlap) flap(0, 1).at(far));
    assertTrue(room.frame().holds(far.frame()) && room.moving().holds(far.moving()));
    assertEquals(RodEnd.FRAME, room.rodEnd());
  }

  private static void same(Zone expected, Zone zone) {
    assertEquals(expected.left(), zone.left(), 1e-12);
    assertEquals(expected.right(), zone.right(), 1e-12);
    assertEquals(expected.bottom(), zone.bottom(), 1e-12);
    assertEquals(expected.top(), zone.top(), 1e-12);
  }
}
