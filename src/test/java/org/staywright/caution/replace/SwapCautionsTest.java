package org.staywright.caution.replace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Severity;
import org.staywright.fit.SampleRange;
import org.staywright.fit.replace.Gauge;
import org.staywright.fit.replace.Measurements;
import org.staywright.fit.replace.Reading;
import org.staywright.fit.replace.Replacement;
import org.staywright.fit.replace.Replacement.Interchange;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Range;

class SwapCautionsTest {

  private static final Range RANGE = SampleRange.read();
  private static final Replacement NOW = now();

  private final Map<Gauge, Reading> sizes = new EnumMap<>(Gauge.class);
  private int springs = 1;

  private static Replacement now() {
    var part = RANGE.part(RANGE.number(RANGE.size() / 2)).orElseThrow();
    Fitting socket =
        RANGE.fittings().stream()
            .filter(one -> one.type() == FittingType.BALL_SOCKET)
            .filter(one -> one.thread().equals(part.ends().rod()))
            .findFirst()
            .orElseThrow();
    return new Replacement(part, 1, List.of(), Interchange.DROP_IN, List.of(), socket, socket);
  }

  private SwapCautionsTest with(Gauge gauge, double value, double plusMinus) {
    sizes.put(gauge, new Reading(value, plusMinus));
    return this;
  }

  private List<Caution> cautions() {
    return SwapCautions.of(
        new Measurements(sizes, null, null, null, null, null, null, null, null, springs, null),
        NOW);
  }

  private boolean says(String code) {
    return cautions().stream().anyMatch(one -> one.code().equals(code));
  }

  private Caution the(String code) {
    return cautions().stream().filter(one -> one.code().equals(code)).findFirst().orElseThrow();
  }

  @Test
  void aSpringLongerThanTheRoomOfTheClosedFlapIsADanger() {
    with(Gauge.CENTRES_CLOSED, NOW.compressed() - 0.004, 0.002);
    Caution caution = the("swap-no-room");
    assertEquals(Severity.DANGER, caution.severity());
    assertEquals(NOW.compressed(), caution.figures().get(0).si(), 1e-12);
    assertFalse(says("swap-room-unknown"));
  }

  @Test
  void roomToSpareCallsForNothing() {
    with(Gauge.CENTRES_CLOSED, NOW.compressed() + 0.012, 0.002);
    assertFalse(says("swap-no-room"));
    assertFalse(says("swap-room-unknown"));
    assertFalse(says("swap-longer-closed"));
  }

  @Test
  void roomThatNobodyMeasuredIsAskedFor() {
    assertTrue(says("swap-room-unknown"));
  }

  @Test
  void longerClosedThanTheOldOneIsToBeClosedSlowly() {
    with(Gauge.COMPRESSED_CENTRES, NOW.compressed() - 0.004, 0.001);
    assertEquals(0.004, the("swap-longer-closed").figures().get(0).si(), 1e-9);
  }

  @Test
  void aLongerStrokeThanTheHingeWasMadeForIsNamed() {
    with(Gauge.EXTENDED_CENTRES, NOW.extended() - 0.020, 0.002);
    assertEquals(0.018, the("swap-longer-stroke").figures().get(0).si(), 1e-9);
  }

  /** In at the top of its tolerance by F1 and a little more, as the gas gives way to the rod. */
  @Test
  void whatMustBePressedOntoItsMountsIsNamedWithItsForce() {
    with(Gauge.CENTRES_OPEN, NOW.extended() - 0.005, 0.001);
    Caution caution = the("swap-hang-on");
    double strong = NOW.part().spring().force() + NOW.part().forceTolerance();
    double friction = NOW.part().spring().friction();
    assertEquals(0.005, caution.figures().get(0).si(), 1e-9);
    // F3 is measured there: F1, and twice the friction more, pushed in.
    assertEquals(strong + 2 * friction, caution.figures().get(1).si(), 0.01 * strong);
    with(Gauge.CENTRES_OPEN, NOW.extended() + 0.005, 0.001);
    assertFalse(says("swap-hang-on"));
  }

  @Test
  void moreForceThanTheBracketsWereBuiltForIsNamed() {
    double force = NOW.part().spring().force();
    with(Gauge.PRINTED_FORCE, force - 50, 5);
    assertEquals(50, the("swap-more-force").figures().get(0).si(), 1e-9);
    with(Gauge.PRINTED_FORCE, force, 5);
    assertFalse(says("swap-more-force"));
  }

  @Test
  void aSpringThatTheFlapFindsTooWeakIsADangerAndOneTooStrongAWarning() {
    double force = NOW.part().spring().force();
    with(Gauge.FLAP_FORCE, 1.5 * force, 0.1 * force);
    assertEquals(Severity.DANGER, the("swap-too-weak").severity());
    with(Gauge.FLAP_FORCE, 0.5 * force, 0.1 * force);
    assertEquals(Severity.WARNING, the("swap-too-strong").severity());
    with(Gauge.FLAP_FORCE, force, 0.1 * force);
    assertFalse(says("swap-too-weak") || says("swap-too-strong"));
  }

  @Test
  void pairsAreReplacedTogether() {
    assertTrue(says("swap-only-one"));
    springs = 2;
    assertEquals(Severity.WARNING, the("swap-pair").severity());
    assertFalse(says("swap-only-one"));
  }

  @Test
  void everySwapNamesPropChargeBracketsAndDisposalTheDangersFirst() {
    for (String code :
        List.of(
            "prop-first",
            "never-open",
            "swap-still-charged",
            "swap-brackets",
            "swap-class-changed",
            "local-codes")) {
      assertTrue(says(code), code);
    }
    assertEquals(2, the("disposal").figures().size());
    assertTrue(the("disposal").figures().get(0).si() > 1e6, "gauge pressure at rest, Pa");
    assertEquals(Severity.DANGER, cautions().get(0).severity());
  }
}
