package org.staywright.motion;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.staywright.gas.BeyondEquation;
import org.staywright.spring.GasSpring;
import org.staywright.unit.Refusal;

class MotionTest {

  private static final double ROOM = 293.15;
  private static final GasSpring SPRING = Scenes.spring(280, 0.16);

  private static MotionSetup lid(double mass, int springs) {
    return Scenes.scene(Scenes.lid(mass), Scenes.strut(SPRING, ROOM), springs, 0.43);
  }

  @Test
  void closesTheBooksOfEveryMotionWithinAThousandth() {
    long seed = 20261125;
    System.out.println("seed " + seed);
    Random random = new Random(seed);
    Set<Motion.End> ends = EnumSet.noneOf(Motion.End.class);
    for (int i = 0; i < 200; i++) {
      Motion motion = Motion.of(Scenes.random(random));
      ends.add(motion.end());
      assertFalse(motion.exhausted(), "motion " + i);
      assertTrue(motion.energy().imbalance() < 1e-3, "motion " + i + ": " + motion.energy());
    }
    assertTrue(ends.contains(Motion.End.STOP) && ends.contains(Motion.End.REST));
  }

  @Test
  void staysOpenOnTwoSpringsAndFallsOnOne() {
    assertEquals(Motion.End.REST, Motion.of(lid(18, 2)).end());
    assertFalse(Motion.of(lid(18, 2)).moved());
    Motion one = Motion.of(lid(18, 1));
    assertEquals(Motion.End.STOP, one.end());
    assertEquals(0, one.endQ(), 1e-6);
    assertTrue(one.endSpeed() < 0);
    Motion none = Motion.of(lid(18, 0));
    assertTrue(none.endTime() < one.endTime(), "a spring slows the fall");
    assertTrue(none.stopEnergy() > one.stopEnergy());
  }

  @Test
  void opensByItselfWhereTheSpringsAreStrongEnough() {
    Motion motion = Motion.of(lid(10, 2).from(0));
    assertEquals(Motion.End.STOP, motion.end());
    assertEquals(Math.toRadians(80), motion.endQ(), 1e-6);
    assertEquals(
        motion.stopEnergy(),
        4.0 / 3 * 10 * (0.41 * 0.41 + 0.015 * 0.015) * Math.pow(motion.endSpeed(), 2) / 2,
        1e-6);
  }

  @Test
  void dampsTheEndOfOpeningByOilRodDownOnly() {
    // The spring comes within its oil's depth of full extension.
    double extended = 0.405;
    MotionSetup down =
        Scenes.scene(Scenes.lid(10), Scenes.strut(SPRING, ROOM), 2, extended).from(0);
    MotionSetup up =
        new MotionSetup(
            down.course(),
            down.inertia(),
            down.strut(),
            2,
            extended,
            q -> -down.rodRise().applyAsDouble(q),
            Hand.NONE,
            0,
            60);
    assertTrue(
        Motion.of(down).stopEnergy() < 0.7 * Motion.of(up).stopEnergy(),
        Motion.of(down).stopEnergy() + " J down, " + Motion.of(up).stopEnergy() + " J up");
  }

  @Test
  void slowsDownInTheCold() {
    Strut cold = Scenes.strut(SPRING, 263.15);
    Strut hot = Scenes.strut(SPRING, 313.15);
    double slow = Motion.of(Scenes.scene(Scenes.lid(8), cold, 2, 0.43).from(0)).endTime();
    double fast = Motion.of(Scenes.scene(Scenes.lid(8), hot, 2, 0.43).from(0)).endTime();
    assertTrue(fast < slow, fast + " s hot, " + slow + " s cold");
  }

  @Test
  void opensUnderAHandThatPushesEnough() {
    MotionSetup alone = lid(18, 2).from(0);
    assertEquals(Motion.End.REST, Motion.of(alone).end());
    Motion pushed = Motion.of(alone.with(2, new Hand.PushesOn(60)));
    assertEquals(Motion.End.STOP, pushed.end());
    assertTrue(pushed.energy().hand() > 0);
    assertTrue(Motion.of(alone.with(2, new Hand.PushesOn(120))).endTime() < pushed.endTime());
  }

  @Test
  void endsByTimeAndSaysSo() {
    MotionSetup endless = Scenes.oscillator(2, 800, 0.01);
    Motion motion = Motion.of(endless);
    assertEquals(Motion.End.TIME, motion.end());
    assertEquals(5, motion.endTime(), 1e-9);
    assertFalse(motion.exhausted());
  }

  @Test
  void givesUpAMotionThatTakesTooMuchWork() {
    MotionSetup humming = Scenes.oscillator(1e-6, 1e5, 0.01);
    Motion motion = Motion.of(humming);
    assertEquals(Motion.End.TIME, motion.end());
    assertTrue(motion.exhausted());
    assertTrue(motion.endTime() < 5);
  }

  @Test
  void isHeldByTheSpeedOfSoundInTheOrifice() {
    double ring = SPRING.cylinder().boreArea() - SPRING.cylinder().rodArea();
    Orifice tiny = new Orifice(0.15e-3, 2e-3, 1, ring);
    Strut strut = new Strut(SPRING.charged(), ROOM, tiny, OilZones.NONE, 3);
    Motion motion =
        Motion.of(Scenes.scene(Scenes.lid(30), strut, 1, 0.43).with(1, new Hand.PushesOn(-200)));
    assertTrue(motion.choked());
    double fastest = 0;
    for (int i = 0; i < motion.time().length; i++) {
      double lever = lid(18, 1).course().lever(motion.q()[i]);
      fastest = Math.max(fastest, tiny.speed(lever * motion.speed()[i]));
    }
    double sound = Math.sqrt(1.4 * 296.8 * motion.hottest());
    assertTrue(fastest < 1.3 * sound, fastest + " m/s in the hole, sound " + sound);
    assertTrue(fastest > 0.9 * Math.sqrt(1.4 * 296.8 * ROOM), fastest + " m/s in the hole");
  }

  @Test
  void refusesWhatWouldHeatTheGasBeyondWhatIsKnown() {
    double ring = SPRING.cylinder().boreArea() - SPRING.cylinder().rodArea();
    Orifice tiny = new Orifice(0.15e-3, 2e-3, 1, ring);
    Strut strut = new Strut(SPRING.charged(), ROOM, tiny, OilZones.NONE, 3);
    MotionSetup scene =
        Scenes.scene(Scenes.lid(200), strut, 1, 0.43).with(1, new Hand.PushesOn(-2000));
    BeyondEquation beyond = assertThrows(BeyondEquation.class, () -> Motion.of(scene));
    assertEquals(BeyondEquation.Quantity.TEMPERATURE, beyond.quantity());
  }

  @Test
  void refusesAnOrificeThatIsNone() {
    assertThrows(Refusal.class, () -> new Orifice(0, 2e-3, 1, 1e-4));
    assertThrows(Refusal.class, () -> new Orifice(Double.NaN, 2e-3, 1, 1e-4));
    assertThrows(Refusal.class, () -> new Orifice(1e-3, 2e-3, 0, 1e-4));
  }

  @Test
  void refusesAMassThatIsNone() {
    assertThrows(Refusal.class, () -> Scenes.fall(0, 1));
  }

  @Test
  void breaksLooseWhenTheGasHasCooled() {
    // Slammed shut and held by friction while the gas is warm; then it settles further.
    MotionSetup scene = lid(19.5, 2).with(2, new Hand.PushesOn(-58));
    Motion motion = Motion.of(scene);
    assertTrue(motion.energy().imbalance() < 1e-3);
    assertTrue(motion.hottest() > ROOM);
  }

  @Test
  void asksOfASlowHandWhatVirtualWorkSays() {
    MotionSetup scene = lid(18, 2);
    Stroke slow = Stroke.of(scene, false, Double.POSITIVE_INFINITY);
    Stroke crawl = Stroke.of(scene, false, 3600);
    assertArrayEquals(slow.hand(), crawl.hand(), 0.2);
    TravelSpline course = scene.course();
    double end = course.end();
    double x = 0.43 - course.length(end);
    double moment =
        2 * SPRING.charged().compressing(x, ROOM) * course.lever(end) + course.load(end) + 0.5;
    assertEquals(moment / 0.8, slow.hand()[0], 0.01);
  }

  @Test
  void asksMoreOfAHandThatSlams() {
    MotionSetup scene = lid(18, 2);
    double slow = Stroke.of(scene, false, Double.POSITIVE_INFINITY).most();
    double easing = Stroke.of(scene, false, 10).most();
    Stroke slam = Stroke.of(scene, false, 0.5);
    assertTrue(slow < easing && easing < slam.most(), slow + " " + easing + " " + slam.most());
    assertTrue(slam.gasKelvin()[60] > ROOM + 10);
  }

  @Test
  void slamsWithoutHeatAsTheIsentropeSays() {
    Strut strut = Scenes.bare(SPRING);
    MotionSetup scene = Scenes.scene(Scenes.lid(18), strut, 2, 0.43);
    Stroke slam = Stroke.of(scene, false, 0.5);
    double from = 0.43 - scene.course().length(scene.course().end());
    double to = 0.43 - scene.course().length(0);
    double fast = SPRING.charged().fast(from, to, ROOM).gasTemperature(to);
    assertEquals(fast, slam.gasKelvin()[60], 1e-3);
  }
}
