package org.staywright.mechanism;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.staywright.mechanism.Mounts.RodEnd;

class TravelTest {

  /** The moving mount passes the frame mount, so that the spring is shortest on the way. */
  private static final StraightLift LIFT = lift(new Point(0.3, 0.2));

  private static StraightLift lift(Point frame) {
    Mounts mounts = new Mounts(frame, new Point(0, 0), 0, RodEnd.EITHER);
    return new StraightLift(new Masses(10, 11, 9), 0.6, 0, 5, mounts);
  }

  @Test
  void findsTheShortestAndTheLongestOnTheWay() {
    Travel travel = LIFT.travel(0.6);
    assertEquals(0.2, travel.shortest(), 1e-12);
    assertEquals(Math.hypot(0.3, 0.2), travel.longest(), 1e-12);
    assertEquals(60, travel.last());
    assertEquals(5, travel.friction());
    assertEquals(1, travel.hand());
  }

  @Test
  void withTheSpringHungElsewhereItIsThatMechanismsOwn() {
    StraightLift other = lift(new Point(0.2, 0.1));
    Travel hung = LIFT.travel(0.6).on(other);
    Travel own = other.travel(0.6);
    assertArrayEquals(own.length(), hung.length());
    assertArrayEquals(own.lever(), hung.lever());
    assertEquals(own.shortest(), hung.shortest());
    assertEquals(own.longest(), hung.longest());
    assertEquals(own.friction(), hung.friction());
  }

  @Test
  void whatIsPutOnItIsFeltByEveryMass() {
    Travel bare = new ForceProfile(List.of(point(0.2, 100), point(0.3, 40))).travel(0.3);
    double[] push = new double[bare.q().length];
    Arrays.setAll(push, i -> 0.5 * i);
    Travel more = bare.with(push, 3);
    assertEquals(3, more.friction());
    assertEquals(-100 + 0, more.load()[0], 1e-9);
    assertEquals(-70 + 15, more.load()[30], 1e-9);
    assertEquals(-70 + 15, more.heavy()[30], 1e-9);
    assertEquals(-40 + 30, more.light()[60], 1e-9);
    assertEquals(8, LIFT.travel(0.6).with(push, 3).friction());
    assertSame(bare.length(), more.length());
  }

  @Test
  void aCoarserViewHasBothEnds() {
    Travel fine = LIFT.travel(0.6);
    Travel coarse = fine.every(15);
    assertArrayEquals(new double[] {0, 0.15, 0.3, 0.45, 0.6}, coarse.q(), 1e-12);
    assertEquals(fine.length()[45], coarse.length()[3]);
    assertEquals(fine.lever()[45], coarse.lever()[3]);
    assertEquals(0.2, coarse.shortest(), 1e-12);
    Travel ends = fine.at(0, 60);
    assertEquals(Math.hypot(0.3, 0.2), ends.shortest(), 1e-12);
    assertEquals(1, ends.last());
    assertEquals(5, ends.friction());
  }

  private static ForceProfile.Point point(double length, double force) {
    return new ForceProfile.Point(length, force);
  }
}
