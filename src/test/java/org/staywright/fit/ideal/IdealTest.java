package org.staywright.fit.ideal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.unit.Unit.STANDARD_GRAVITY;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.fit.SampleRange;
import org.staywright.fit.assess.Alongside;
import org.staywright.fit.assess.Path;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.Requirements;
import org.staywright.form.job.JobForm;
import org.staywright.form.schema.JsonText;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.StraightLift;
import org.staywright.mechanism.Travel;
import org.staywright.part.Family;
import org.staywright.part.FittingType;
import org.staywright.part.Range;

/** The spring that would be made, against balances in closed form and against the range. */
class IdealTest {

  private static final Range RANGE = SampleRange.read();
  private static final double MASS = 20;
  private static final double WEIGHT = MASS * STANDARD_GRAVITY;

  private static final double CENTRE = 0.5;
  private static final double BELOW = 0.25;
  private static final double OUT = 0.3;

  /** Straight up, the spring along the way. */
  private static Mechanism lift(double travel, double apart) {
    return new StraightLift(
        new Masses(MASS, MASS, MASS),
        travel,
        Math.PI / 2,
        0,
        new Mounts(new Point(0, 0), new Point(0, apart), 0, RodEnd.EITHER));
  }

  /** Level when closed, the frame mount plumb below the hinge: L² = h² + p² + 2hp sin θ. */
  private static Mechanism flap(double end) {
    return new HingedFlap(
        new Masses(MASS, MASS, MASS),
        new Point(CENTRE, 0),
        new Point(1, 0),
        1,
        end,
        0,
        0,
        new Mounts(new Point(0, -BELOW), new Point(OUT, 0), 0, RodEnd.EITHER));
  }

  private static Path path(Mechanism mechanism, double end) {
    Travel travel = mechanism.travel(end);
    return new Path(travel, Alongside.nothing(travel), null, null);
  }

  private static Job job(Mechanism mechanism, double maxHand, double hold, int count) {
    return new Job(
        "",
        mechanism,
        List.of(count),
        new Job.FittingWish(FittingType.BALL_SOCKET, null),
        new Job.FittingWish(FittingType.BALL_SOCKET, null),
        new Job.Conditions(293, 293.15, 293.3, 0.01, 1),
        Requirements.of(maxHand, hold, 5e-3, 4e-3, Job.OpenStop.FLAP_STOP),
        new Job.Filters(Set.of(Family.GAS_SPRING), null, false),
        RankBy.BALANCED,
        5);
  }

  @Test
  void aConstantForceBalancesALoadOnAPlumbLine() {
    for (int count : new int[] {1, 2, 3}) {
      Balance balance = Balance.of(path(lift(0.2, 0.4), 0.2), count, 1.6);
      assertEquals(WEIGHT / count, balance.longForce(), 1e-9);
      assertEquals(1, balance.progression(), 1e-9);
      assertEquals(0, balance.handRms(), 1e-9);
    }
  }

  @Test
  void atOneAngleTheForceIsThatOfTheLevers() {
    double end = Math.toRadians(0.01);
    double exact = WEIGHT * CENTRE * Math.hypot(BELOW, OUT) / (BELOW * OUT);
    assertEquals(exact, Balance.of(path(flap(end), end), 1, 1.6).longForce(), 1e-3 * exact);
  }

  /** Balance at every angle would want F in proportion to L, falling as it is pressed in. */
  @Test
  void overATravelItIsTheLeastSquaresOfAConstantForce() {
    double end = Math.toRadians(60);
    DoubleUnaryOperator length =
        a -> Math.sqrt(BELOW * BELOW + OUT * OUT + 2 * BELOW * OUT * Math.sin(a));
    DoubleUnaryOperator lever = a -> BELOW * OUT * Math.cos(a) / length.applyAsDouble(a);
    double above = mean(a -> lever.applyAsDouble(a) * WEIGHT * CENTRE * Math.cos(a), end);
    double below = mean(a -> lever.applyAsDouble(a) * lever.applyAsDouble(a), end);
    Balance balance = Balance.of(path(flap(end), end), 2, 1.6);
    assertEquals(1, balance.progression(), 1e-9);
    assertEquals(above / below / 2, balance.longForce(), 1e-4 * above / below);
  }

  /** By the trapezium rule at the places where a travel is sampled, finer by a hundred. */
  private static double mean(DoubleUnaryOperator of, double end) {
    int steps = 60;
    double sum = 0;
    for (int i = 0; i <= steps; i++) {
      sum += of.applyAsDouble(end * i / steps);
    }
    return sum / (steps + 1);
  }

  /** A metre of room for a few centimetres of travel: the gas hardly notices. */
  @Test
  void whatIsMadeInMuchRoomComesToTheConstantForce() {
    Ideal ideal = Ideal.of(job(lift(0.04, 0.9), 400, 0, 1), RANGE);
    assertNotNull(ideal.made());
    assertTrue(ideal.made().fits(), ideal.made().blockedBy().toString());
    // F1 is what is left of the gas force behind the friction of the extending rod.
    double gas = ideal.made().part().spring().force() + ideal.made().part().spring().friction();
    assertEquals(WEIGHT, gas, 0.02 * WEIGHT);
    assertEquals(1, ideal.made().part().spring().progression(), 0.04);
    assertEquals(ideal.made().figures().orElseThrow().lengths().extendedReserve(), 4e-3, 1e-9);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "hinge-at-top",
        "hinge-at-bottom",
        "level-lid",
        "overhead",
        "folding-bed",
        "upright-guard",
        "lift-on-a-line"
      })
  void noPartOfTheRangeAsksLessOfTheHand(String way) throws IOException {
    try (InputStream in = IdealTest.class.getResourceAsStream("/ways/" + way + ".json")) {
      Job job = JobForm.read(JsonText.read(in.readAllBytes()).tree()).forSpringsToMake();
      Ideal ideal = Ideal.of(job, RANGE);
      assertTrue(ideal.made() != null && ideal.made().fits() && !ideal.stockFails());
      double stock = ideal.stock().figures().orElseThrow().hand().rms();
      assertTrue(
          ideal.made().figures().orElseThrow().hand().rms() <= 1.03 * stock,
          ideal.made().figures().orElseThrow().hand().rms() + " against " + stock);
      assertEquals(
          stock - ideal.made().figures().orElseThrow().hand().rms(), ideal.costsRms(), 1e-9);
    }
  }

  @Test
  void saysHowMuchRoomIsMissing() {
    Ideal ideal = Ideal.of(job(lift(0.3, 0.25), 50, 1.1, 1), RANGE);
    assertNull(ideal.made());
    assertNull(ideal.stock());
    assertTrue(ideal.shortfall().needed() > ideal.shortfall().has());
    assertEquals(0.245, ideal.shortfall().has(), 1e-9);
  }
}
