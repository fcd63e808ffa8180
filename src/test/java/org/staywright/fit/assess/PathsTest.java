package org.staywright.fit.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.staywright.fit.Samples;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Job.OpenStop;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.Rejection;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.SeatColumn;
import org.staywright.mechanism.StraightLift;

/** A lift along its spring: the spring is 0.3 m long at the bottom and grows by the travel. */
class PathsTest {

  private static StraightLift lift(double degrees, double friction) {
    double direction = Math.toRadians(degrees);
    Point start = new Point(0.3, 0).turned(direction);
    Mounts mounts = new Mounts(new Point(0, 0), start, 0, Mounts.RodEnd.EITHER);
    return new StraightLift(new Masses(10, 12, 8), 0.2, direction, friction, mounts);
  }

  private static Job job(Mechanism mechanism, OpenStop stop) {
    return Samples.job(mechanism, stop, RankBy.BALANCED);
  }

  @Test
  void theTravelEndsWhereTheSpringIsFullyExtended() {
    Paths paths = new Paths(job(lift(90, 0), OpenStop.SPRING_STOP));
    assertFalse(paths.shared());
    for (double extended : new double[] {0.491, 0.5, 0.509}) {
      Path path = paths.of(extended);
      assertEquals(extended, path.travel().longest(), 1e-9);
      assertEquals(extended - 0.3, path.travel().q()[path.travel().last()], 1e-9);
      assertNull(path.blocker());
      assertNull(path.rejection());
    }
  }

  /** 10 mm to either side of its end, and 15 mm more as a near miss. */
  @Test
  void aSpringThatStopsALittleOffIsNearAndFartherOffIsOut() {
    Paths paths = new Paths(job(lift(90, 0), OpenStop.SPRING_STOP));
    for (double extended : new double[] {0.476, 0.489, 0.511, 0.524}) {
      Blocker blocker = paths.of(extended).blocker();
      assertEquals(Criterion.SPRING_STOP, blocker.criterion());
      assertEquals(0.5, blocker.needed(), 1e-12);
      assertEquals(extended, blocker.has());
      assertEquals(Math.abs(extended - 0.5) / 0.5, blocker.miss(), 1e-12);
    }
    assertEquals(0.476, paths.of(0.476).travel().longest(), 1e-9);
    assertEquals(0.5, paths.of(0.524).travel().longest(), 1e-9);
    assertEquals(Rejection.TOO_SHORT_OPEN, paths.of(0.474).rejection());
    assertEquals(Rejection.TOO_SHORT_OPEN, paths.of(0.2).rejection());
    assertEquals(Rejection.TOO_LONG_OPEN, paths.of(0.526).rejection());
  }

  @Test
  void withAStopOfItsOwnAllSpringsShareOnePath() {
    Paths paths = new Paths(job(lift(90, 0), OpenStop.FLAP_STOP));
    assertTrue(paths.shared());
    assertSame(paths.of(0.4), paths.of(0.6));
    assertEquals(0.5, paths.of(0.4).travel().longest(), 1e-12);
  }

  /** Reserves of 5 mm and 4 mm are asked; 15 mm less than that is no near miss. */
  @Test
  void lengthsThatMissByMoreThanFifteenMillimetresAreOut() {
    Job flap = job(lift(90, 0), OpenStop.FLAP_STOP);
    Path path = new Paths(flap).of(0.6);
    assertNull(path.misfit(flap.requirements(), 0.3 + 0.0099, 0.6));
    assertEquals(Rejection.TOO_LONG_CLOSED, path.misfit(flap.requirements(), 0.3 + 0.0101, 0.6));
    assertNull(path.misfit(flap.requirements(), 0.2, 0.5 - 0.0109));
    assertEquals(Rejection.TOO_SHORT_OPEN, path.misfit(flap.requirements(), 0.2, 0.5 - 0.0111));
    Job spring = job(lift(90, 0), OpenStop.SPRING_STOP);
    Path reached = new Paths(spring).of(0.49);
    assertNull(reached.misfit(spring.requirements(), 0.2, 0.47));
    Path far = new Paths(spring).of(0.2);
    assertEquals(Rejection.TOO_SHORT_OPEN, far.misfit(spring.requirements(), 0.1, 0.2));
  }

  @Test
  void theWindowIsFiveDegreesOfAFlapAndTenMillimetresOfALift() {
    assertEquals(Math.toRadians(5), Paths.window(Samples.lid().mechanism()), 1e-12);
    assertEquals(10e-3, Paths.window(lift(90, 0)), 1e-12);
  }

  /** Level, and eased by a guide that takes less than the hand's limit. */
  @Test
  void aLoadThatStaysAndIsEasilyMovedNeedsNoSpringUnlessItIsTheStopOrMoreIsAsked() {
    StraightLift level = lift(0, 20);
    assertFalse(new Paths(job(level, OpenStop.FLAP_STOP)).bare().springNeeded());
    assertTrue(new Paths(job(level, OpenStop.SPRING_STOP)).bare().springNeeded());
    assertTrue(new Paths(job(lift(0, 60), OpenStop.FLAP_STOP)).bare().springNeeded());
    assertTrue(new Paths(job(lift(90, 20), OpenStop.FLAP_STOP)).bare().springNeeded());
  }

  @Test
  void aHandMovesWhatIsKnownToWeighSomething() {
    assertTrue(InTime.handed(job(lift(90, 0), OpenStop.FLAP_STOP)));
    ForceProfile table =
        new ForceProfile(
            List.of(new ForceProfile.Point(0.3, 100), new ForceProfile.Point(0.4, 90)));
    assertFalse(InTime.handed(job(table, OpenStop.FLAP_STOP)));
    assertFalse(InTime.handed(job(new SeatColumn(10, 50, 100, 0.8, 0.1), OpenStop.FLAP_STOP)));
  }

  @Test
  void theRodHangsAtTheLowerMountUnlessSomebodyWishesElse() {
    assertEquals(Mounts.RodEnd.FRAME, Assessment.rodEnd(job(lift(90, 0), OpenStop.FLAP_STOP)));
    assertEquals(Mounts.RodEnd.MOVING, Assessment.rodEnd(job(lift(-90, 0), OpenStop.FLAP_STOP)));
    Mounts wish = new Mounts(new Point(0, 0), new Point(0, 0.3), 0, Mounts.RodEnd.MOVING);
    assertEquals(
        Mounts.RodEnd.MOVING, Assessment.rodEnd(job(lift(90, 0).at(wish), OpenStop.FLAP_STOP)));
  }

  /** Work and energy: what weighs most falls the whole way, less friction. */
  @Test
  void theBareLoadArrivesWithTheWorkOfItsWeightLessFriction() {
    double falls = new Paths(job(lift(90, 20), OpenStop.FLAP_STOP)).bare().drop();
    assertEquals((12 * 9.80665 - 20) * 0.2, falls, 1e-9);
    double rises = new Paths(job(lift(-90, 20), OpenStop.FLAP_STOP)).bare().drop();
    assertEquals((12 * 9.80665 - 20) * 0.2, rises, 1e-9);
    assertEquals(0, new Paths(job(lift(0, 20), OpenStop.FLAP_STOP)).bare().drop());
  }
}
