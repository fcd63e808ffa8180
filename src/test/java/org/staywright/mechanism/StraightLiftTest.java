package org.staywright.mechanism;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.staywright.mechanism.Mounts.RodEnd;

class StraightLiftTest {

  private static final long SEED = Long.getLong("staywright.seed", 20261125);

  private static StraightLift random(Random random) {
    double mass = 1 + 100 * random.nextDouble();
    return new StraightLift(
        new Masses(mass, 1.1 * mass, 0.7 * mass),
        0.05 + random.nextDouble(),
        2 * Math.PI * random.nextDouble(),
        10 * random.nextDouble(),
        new Mounts(
            new Point(random.nextDouble() - 0.5, random.nextDouble() - 0.5),
            new Point(random.nextDouble() - 0.5, random.nextDouble() - 0.5),
            random.nextBoolean() ? 0 : 0.05,
            RodEnd.EITHER));
  }

  /** Virtual work: the lever is the slope of the length, by a difference of the lengths alone. */
  @Test
  void leverIsTheSlopeOfTheLength() {
    System.out.println("StraightLiftTest seed " + SEED);
    Random random = new Random(SEED);
    for (int i = 0; i < 300; i++) {
      StraightLift lift = random(random);
      if (!lift.faults().isEmpty()) {
        continue;
      }
      Travel travel = lift.travel(lift.end());
      double h = 1e-6;
      for (int k = 0; k < travel.q().length; k += 6) {
        double q = travel.q()[k];
        if (lift.length(q) > 0.02) {
          double slope = (lift.length(q + h) - lift.length(q - h)) / (2 * h);
          assertEquals(slope, travel.lever()[k], 1e-6, "case " + i + " at " + q);
        }
      }
    }
  }

  @Test
  void gravityPullsAlongTheGuideByTheSineOfItsSlope() {
    Random random = new Random(SEED);
    for (int i = 0; i < 300; i++) {
      StraightLift lift = random(random);
      Travel travel = lift.travel(lift.end());
      double raised = lift.end() * Math.sin(lift.direction());
      double work = travel.load()[0] * lift.end();
      assertEquals(-lift.masses().nominal() * 9.80665 * raised, work, 1e-9, "case " + i);
      assertEquals(travel.load()[0], travel.load()[travel.last()]);
      assertEquals(1.1 * travel.load()[7], travel.heavy()[7], 1e-9);
      assertEquals(0.7 * travel.load()[7], travel.light()[7], 1e-9);
    }
  }

  @Test
  void aSpringAlongTheGuideLengthensByTheTravel() {
    for (double degrees = 0; degrees < 360; degrees += 15) {
      double direction = Math.toRadians(degrees);
      Mounts mounts =
          new Mounts(
              new Point(0.1, 0.2),
              new Point(0.1 + 0.3 * Math.cos(direction), 0.2 + 0.3 * Math.sin(direction)),
              0,
              RodEnd.EITHER);
      Travel travel =
          new StraightLift(new Masses(1, 1, 1), 0.25, direction, 0, mounts).travel(0.25);
      for (int k = 0; k < travel.q().length; k++) {
        assertEquals(0.3 + travel.q()[k], travel.length()[k], 1e-12);
        assertEquals(1, travel.lever()[k], 1e-12);
      }
    }
  }

  @Test
  void findsMountsThatMeetAnywhereOnTheWay() {
    Random random = new Random(SEED);
    int found = 0;
    for (int i = 0; i < 2000; i++) {
      StraightLift any = random(random);
      double meeting = any.end() * (2 * random.nextDouble() - 0.5);
      Point frame = sum(any.mounts().moving(), new Point(meeting, 0).turned(any.direction()));
      StraightLift lift =
          new StraightLift(
              any.masses(),
              any.end(),
              any.direction(),
              0,
              new Mounts(frame, any.mounts().moving(), 0, RodEnd.EITHER));
      boolean meets = meeting >= 1e-3 && meeting <= any.end();
      if (Math.min(Math.abs(meeting), Math.abs(meeting - any.end())) > 2e-3) {
        assertEquals(meets, !lift.faults().isEmpty(), "case " + i);
        found += meets ? 1 : 0;
      }
    }
    assertTrue(found > 100);
  }

  @Test
  void takesAMillimetreForApartAndNothingLess() {
    assertEquals(List.of(), lift(0.002).faults());
    assertEquals("mounts-coincide", lift(0.0015).faults().get(0).code());
    assertEquals("moving", lift(0.0015).faults().get(0).where());
  }

  /** Upwards, beside a frame mount 1 mm from the plumb line. */
  private static StraightLift lift(double x) {
    Mounts any = new Mounts(new Point(9, 9), new Point(9, 9), 0, RodEnd.EITHER);
    Mounts mounts = any.with(new Point(0.001, 0), new Point(x, 0));
    return new StraightLift(new Masses(1, 1, 1), 0.2, Math.PI / 2, 0, mounts);
  }

  private static Point sum(Point a, Point b) {
    return new Point(a.x() + b.x(), a.y() + b.y());
  }
}
