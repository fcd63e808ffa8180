package org.staywright.fit.replace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;
import org.staywright.mechanism.HingedFlap;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.unit.Refusal;

class FlapForceTest {

  private static final long USUAL = 20261125;
  private static final long SEED = Long.getLong("staywright.seed", USUAL);
  private static final List<Part> PARTS = SampleRange.parts(Family.GAS_SPRING);
  private static final double SHARP = 1e-5;
  private static final int FLAPS = 600;

  private static Reading exactly(double value) {
    return new Reading(value, SHARP);
  }

  private static FlapReading scale(double force, double plusMinus, double degrees) {
    return new FlapReading(new Reading(force, plusMinus), exactly(Math.toRadians(degrees)));
  }

  /** Level lid, mounts square to each other about the hinge when it stands upright at 90°. */
  private static FlapSurvey lid(FlapReading first, FlapReading second, double open, Reading rises) {
    double spread = Math.toRadians(open);
    double apart = Math.sqrt(0.3 * 0.3 + 0.1 * 0.1 - 2 * 0.3 * 0.1 * Math.cos(spread));
    return new FlapSurvey(
        2,
        exactly(0.8),
        exactly(0),
        exactly(Math.toRadians(open)),
        first,
        second,
        exactly(0.1),
        exactly(0.3),
        exactly(apart),
        null,
        rises);
  }

  @Test
  void theForceThatJustHoldsIsTheClosedFormOfALevelLid() {
    // m·g·x_c = 80 N at 0.8 m, level; half of it at 60°. Spring 0.1 and 0.3 m from the hinge, 60°
    // apart: L = √0.07 m, lever 0.03·sin 60°/L, two springs.
    FlapSurvey lid = lid(scale(80, SHARP, 0), scale(40, SHARP, 60), 60, null);
    double lever = 0.03 * Math.sin(Math.PI / 3) / Math.sqrt(0.07);
    FlapForce found = FlapForce.of(lid);
    assertEquals(40 * 0.8 / (2 * lever), found.hold().middle(), 0.01);
    assertEquals(FlapForce.By.MARGIN, found.by());
  }

  @Test
  void aScaleThatMayBeOffByATwentiethLeavesTheForceOffByATwentieth() {
    // Read at the open slope itself, only that reading counts and the half-width is its own.
    FlapSurvey lid = lid(scale(80, SHARP, 0), scale(40, 2, 60), 60, null);
    Reading hold = FlapForce.of(lid).hold().reading();
    assertEquals(0.05, hold.plusMinus() / hold.value(), 0.003);
  }

  @Test
  void twoReadingsTellTheWeightMomentEverywhere() {
    Random random = new Random(SEED);
    for (int i = 0; i < 200; i++) {
      Flap one = Flap.of(PARTS, random);
      FlapStatics found = FlapStatics.of(one.measured(random, 1e-6, 1e-6, false));
      // Readings good to a millionth tell the less elsewhere, the nearer to each other they are.
      double off =
          3e-6
              * (Math.abs(found.firstMoment()) + Math.abs(found.secondMoment()))
              / Math.sin(found.second() - found.first());
      HingedFlap flap = one.flap();
      for (double q = 0; q <= flap.end(); q += flap.end() / 7) {
        double slope = one.slope() + q;
        double weight = one.weight(q);
        assertEquals(weight, found.weight(slope), off, "seed " + SEED + ", flap " + i);
        assertEquals(flap.length(q), found.length(slope), 1e-6);
        assertEquals(flap.lever(q), found.lever(slope), 1e-5);
      }
    }
  }

  @Test
  void theTrueForceClassLiesInTheStatedIntervalAsOftenAsStated() {
    assertTrue(rate(false) >= 0.94, () -> "seed " + SEED + ", by margin: " + rate(false));
  }

  @Test
  void whereItRoseByItselfTellsTheTrueForceClassAsOftenAsStated() {
    assertTrue(rate(true) >= 0.94, () -> "seed " + SEED + ", by behaviour: " + rate(true));
  }

  @Test
  void theForceThatJustHoldsLiesInItsIntervalInNinetyFiveOfAHundred() {
    List<Double> widths = new ArrayList<>();
    double rate =
        rate(
            false,
            (one, found) -> {
              if (found.hold() == null) {
                return false;
              }
              HingedFlap flap = one.flap();
              widths.add(found.hold().reading().plusMinus() / found.hold().reading().value());
              return found
                  .hold()
                  .holds(one.weight(flap.end()) / (one.springs() * flap.lever(flap.end())));
            });
    System.out.println("hold within: " + rate + ", half-width " + median(widths));
    assertEquals(0.95, rate, 0.025, "seed " + SEED);
  }

  private static double rate(boolean remembered) {
    List<Double> widths = new ArrayList<>();
    double rate =
        rate(
            remembered,
            (one, found) -> {
              widths.add(found.force().reading().plusMinus() / found.force().reading().value());
              return found.force().holds(one.part().spring().force());
            });
    System.out.println(
        "FlapForceTest seed "
            + SEED
            + ": true class within "
            + rate
            + ", half-width "
            + median(widths));
    assertTrue(median(widths) < 0.4, "an interval too wide to be of use: " + median(widths));
    return rate;
  }

  /** A flap and what was found of it. */
  private record Answer(Flap flap, FlapForce found) {}

  private static final Map<Boolean, List<Answer>> ANSWERS = new HashMap<>();

  /** Share of flaps whose answer is right; readings too rough to tell a force are left out. */
  private static double rate(boolean remembered, BiFunction<Flap, FlapForce, Boolean> right) {
    List<Answer> answers = ANSWERS.computeIfAbsent(remembered, FlapForceTest::answers);
    long within = answers.stream().filter(a -> right.apply(a.flap, a.found)).count();
    return (double) within / answers.size();
  }

  private static List<Answer> answers(boolean remembered) {
    Random random = new Random(SEED);
    List<Answer> answers = new ArrayList<>();
    int refused = 0;
    while (answers.size() < FLAPS) {
      Flap one = Flap.of(PARTS, random);
      if (remembered && !(one.rises() > 0.1 * one.flap().end())) {
        continue;
      }
      FlapSurvey survey = one.measured(random, 1, 0.05, remembered);
      try {
        answers.add(new Answer(one, FlapForce.of(survey)));
      } catch (Refusal rough) {
        refused++;
      }
    }
    System.out.println("refused " + refused);
    if (SEED == USUAL) {
      assertTrue(refused < FLAPS / 10, "refused " + refused);
    }
    return answers;
  }

  private static double median(List<Double> values) {
    return values.stream().sorted().toList().get(values.size() / 2);
  }

  @Test
  void gravityThatKeepsItOpenAsksForWhereItRose() {
    FlapReading level = scale(80, 1, 0);
    FlapReading beyond = scale(14, 1, 80);
    FlapSurvey lid = lid(level, beyond, 105, null);
    Refusal refusal = assertThrows(Refusal.class, () -> FlapForce.of(lid));
    assertEquals("gravity-keeps-open", refusal.faults().get(0).code());
    Reading rises = new Reading(Math.toRadians(50), 0.05);
    FlapForce found = FlapForce.of(lid(level, beyond, 105, rises));
    assertNull(found.hold());
    assertEquals(FlapForce.By.BEHAVIOUR, found.by());
    assertTrue(found.force().least() > 0);
  }

  @Test
  void mountsTooNearToALineTellNoForce() {
    FlapSurvey lid = lid(scale(80, 1, 0), scale(40, 1, 60), 60, null);
    FlapSurvey flat =
        new FlapSurvey(
            2,
            lid.arm(),
            lid.closed(),
            lid.open(),
            lid.first(),
            lid.second(),
            lid.frameMount(),
            lid.movingMount(),
            new Reading(0.4, 0.01),
            null,
            null);
    Refusal refusal = assertThrows(Refusal.class, () -> FlapForce.of(flat));
    assertEquals("force-too-uncertain", refusal.faults().get(0).code());
  }

  @Test
  void theSameReadingsTellTheSameForceEveryTime() {
    FlapSurvey lid = lid(scale(80, 4, 0), scale(40, 2, 60), 60, null);
    assertNotNull(FlapForce.of(lid).hold());
    assertEquals(FlapForce.of(lid), FlapForce.of(lid));
  }
}
