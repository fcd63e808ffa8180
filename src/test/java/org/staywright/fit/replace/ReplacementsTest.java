package org.staywright.fit.replace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;
import org.staywright.fit.job.Job.FittingWish;
import org.staywright.fit.replace.Difference.Effect;
import org.staywright.fit.replace.Replacement.Interchange;
import org.staywright.part.Column;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.FittingType;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.unit.Unit;

public class ReplacementsTest {

  private static final Range RANGE = SampleRange.read();
  private static final FittingWish BALL = new FittingWish(FittingType.BALL_SOCKET, null);

  private final Map<Gauge, Reading> sizes = new EnumMap<>(Gauge.class);
  private FittingWish end;
  private String thread;
  private ScaleReading scale;
  private int count = 1;
  private Double handleTravel;

  private ReplacementsTest with(Gauge gauge, double millimetresOrNewtons, double plusMinus) {
    double unit = gauge == Gauge.PRINTED_FORCE ? 1 : 1e-3;
    sizes.put(gauge, new Reading(unit * millimetresOrNewtons, unit * plusMinus));
    return this;
  }

  private Measurements measured() {
    return new Measurements(
        sizes, null, end, end, thread, Finish.ZINC, false, null, scale, count, handleTravel);
  }

  private Replacements find() {
    return Replacements.of(RANGE, measured(), 20);
  }

  /** Rod 8, tube 18, stroke 160, 400 N, plain: a row of the sample range. */
  private static Part middling() {
    for (int row = 0; row < RANGE.size(); row++) {
      Part part = RANGE.part(row);
      boolean like =
          part.family() == Family.GAS_SPRING
              && at(Column.ROD_DIAMETER, row, 8e-3)
              && at(Column.STROKE, row, 0.16)
              && at(Column.FORCE, row, 400)
              && part.finish() == Finish.ZINC
              && part.endZone() == 0;
      if (like) {
        return part;
      }
    }
    throw new AssertionError("no such row");
  }

  private static boolean at(Column column, int row, double value) {
    return Math.abs(RANGE.column(column)[row] - value) < 1e-9;
  }

  private ReplacementsTest likeMiddling() {
    Part part = middling();
    double reach = 2 * 0.030;
    return with(Gauge.ROD_DIAMETER, 8.03, 0.1)
        .with(Gauge.TUBE_DIAMETER, 17.9, 0.3)
        .with(Gauge.EXTENDED_CENTRES, 1e3 * (part.spring().extendedLength() + reach) + 1, 2)
        .with(Gauge.STROKE, 158, 3);
  }

  @Test
  void findsTheVeryPartAndCallsItDropIn() {
    end = BALL;
    Replacements answer = likeMiddling().with(Gauge.PRINTED_FORCE, 400, 16).find();
    Replacement first = answer.found().get(0);
    assertEquals(middling().number(), first.part().number());
    assertEquals(Interchange.DROP_IN, first.kind());
    assertEquals(List.of(), first.differences());
    assertEquals(FittingType.BALL_SOCKET, first.rodFitting().type());
    assertTrue(first.likelihood() > 0.9, "likelihood " + first.likelihood());
    assertFalse(answer.matchesNothing());
  }

  @Test
  void groupsPartsThatNothingMeasuredTellsApart() {
    end = BALL;
    Replacement first = likeMiddling().find().found().get(0);
    assertTrue(first.alike().size() >= 5, "force was not measured: " + first.alike());
    for (String number : first.alike()) {
      Part part = RANGE.part(number).orElseThrow();
      assertEquals(0.16, part.spring().stroke(), 1e-9);
      assertEquals(8e-3, part.spring().rodDiameter(), 1e-9);
      assertEquals(0, part.endZone());
    }
    assertFalse(first.alike().contains(first.part().number()));
  }

  @Test
  void whatWasNotMeasuredTellsNothing() {
    Replacements answer =
        Replacements.of(
            RANGE,
            new Measurements(Map.of(), null, null, null, null, null, null, null, null, 1, null),
            5);
    assertEquals(1, answer.found().size());
    assertEquals(0.99, answer.found().get(0).likelihood(), 1e-9);
    assertEquals(RANGE.size() - 1, answer.found().get(0).alike().size());
  }

  @Test
  void theRoughReadingCountsLess() {
    with(Gauge.STROKE, 200, 60).with(Gauge.EXTENDED_LENGTH, 380, 1);
    double extended = find().found().get(0).part().spring().extendedLength();
    assertEquals(0.380, extended, 1.5e-3);
  }

  @Test
  void namesMoreForceWithWhatTheHandFeels() {
    end = BALL;
    count = 2;
    handleTravel = 1.0;
    likeMiddling().with(Gauge.PRINTED_FORCE, 350, 5);
    sizes.remove(Gauge.STROKE);
    with(Gauge.CENTRES_CLOSED, 297, 3).with(Gauge.CENTRES_OPEN, 433, 3);
    Difference force =
        find().found().stream()
            .filter(one -> Math.abs(one.part().spring().force() - 400) < 1)
            .flatMap(one -> one.differences().stream())
            .filter(difference -> difference.what() == Difference.What.FORCE)
            .findFirst()
            .orElseThrow();
    assertEquals(Effect.FORCE_MORE_AT_HAND, force.effect());
    assertEquals(50, force.more(), 1e-9);
    // Two springs, 50 N each, over 136 mm; the handle goes 1,000 mm.
    assertEquals(2 * 50 * 0.136 / 1.0, force.figure(), 1e-9);
  }

  @Test
  void anotherBallAsksForOtherFittings() {
    end = new FittingWish(FittingType.CLEVIS, null);
    Measurements old = measured();
    Part part = middling();
    Comparison onBalls =
        Comparison.of(
            old,
            part,
            RANGE.fitting("MT6-6YQ").orElseThrow(),
            RANGE.fitting("MT6-6YQ").orElseThrow());
    assertEquals(Interchange.OTHER_FITTINGS, onBalls.kind());
    assertEquals(Effect.OTHER_END, onBalls.differences().get(0).effect());
  }

  @Test
  void aSpringThatWouldBottomIsChangedTravel() {
    with(Gauge.CENTRES_CLOSED, 200, 3);
    Comparison comparison = Comparison.of(measured(), middling(), null, null);
    assertEquals(Interchange.CHANGED_TRAVEL, comparison.kind());
    assertEquals(Effect.HAS_NO_ROOM, comparison.differences().get(0).effect());
  }

  @Test
  void nothingMatchesYetTheNearestComesAndTheReadingThatSpoilsItIsNamed() {
    end = BALL;
    Replacements answer = likeMiddling().with(Gauge.TUBE_DIAMETER, 20.4, 0.3).find();
    assertTrue(answer.matchesNothing());
    assertTrue(answer.suspects().contains(Gauge.TUBE_DIAMETER), "suspects " + answer.suspects());
    assertEquals(0.16, answer.found().get(0).part().spring().stroke(), 0.021);
    assertTrue(answer.found().get(0).likelihood() < 0.5);
  }

  @Test
  void aScaleNeverShowsMoreThanANewSpringDoes() {
    end = BALL;
    Reading force = new Reading(340, 10);
    scale = new ScaleReading(force, 5e-3, Unit.ROOM, ScaleReading.Direction.EASING);
    List<Replacement> found = likeMiddling().find().found();
    double weakest =
        found.stream()
            .filter(one -> one.likelihood() > 0.01)
            .mapToDouble(one -> one.part().spring().force())
            .min()
            .orElseThrow();
    assertTrue(weakest >= 315, "a part of " + weakest + " N cannot show 340 N");
    assertTrue(
        found.stream().anyMatch(one -> one.part().spring().force() > 600), "it may be tired");
  }

  @Test
  void findsWhatContradictsWhat() {
    with(Gauge.STROKE, 400, 3).with(Gauge.EXTENDED_LENGTH, 380, 2);
    assertEquals(
        List.of(new Contradiction(Gauge.STROKE, Gauge.EXTENDED_LENGTH, null)),
        Contradiction.in(measured()));
    with(Gauge.STROKE, 100, 3).with(Gauge.COMPRESSED_LENGTH, 220, 2);
    assertEquals(
        List.of(new Contradiction(Gauge.STROKE, Gauge.EXTENDED_LENGTH, Gauge.COMPRESSED_LENGTH)),
        Contradiction.in(measured()));
    with(Gauge.STROKE, 158, 3);
    assertEquals(List.of(), Contradiction.in(measured()));
  }
}
