package org.staywright.caution.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Severity;
import org.staywright.fit.RandomRange;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.RankBy;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.part.Part;
import org.staywright.unit.Unit;
import org.staywright.wording.CautionText;
import org.staywright.wording.Wording;

class CautionsTest {

  private static final Job LID = Samples.lid();
  private static final Part PART = RandomRange.part(new Random(1));

  @Test
  void aDeadSpringIsStillChargedSaysItsPressure() {
    Caution caution = named(Cautions.of(PART), "charge-pressure");
    // Statics: (p − p_a)·πd²/4 = F1 + f, 5 mm further in than at rest.
    double area = Math.PI / 4 * Math.pow(PART.spring().rodDiameter(), 2);
    double gauge = (PART.spring().force() + PART.spring().friction()) / area;
    double volume = PART.gas().orElseThrow().cylinder().gasVolume();
    double atRest = gauge * (1 - 5e-3 * area / volume);
    assertEquals(atRest, caution.figures().get(0).si(), 2e-3 * gauge);
    assertEquals(Severity.DANGER, caution.severity());
  }

  @Test
  void dangerComesFirst() {
    List<Severity> order =
        Cautions.of(LID, fit(LID, 2, RodEnd.FRAME, -1)).stream().map(Caution::severity).toList();
    assertEquals(order.stream().sorted().toList(), order);
  }

  @Test
  void rodDownIsJudgedClosedAndOpen() {
    // The lid's frame mount lies below its moving mount, closed and open.
    assertTrue(has(Cautions.of(LID, fit(LID, 2, RodEnd.FRAME, -1)), "rod-down"));
    List<Caution> turned = Cautions.of(LID, fit(LID, 2, RodEnd.MOVING, -1));
    Caution up = named(turned, "rod-up");
    assertEquals(Severity.WARNING, up.severity());
    assertFalse(has(turned, "rod-down"));
    // Closed: atan((65 − 11)/(360 − 15)) = 8.9° by hand.
    assertEquals(8.896, Unit.DEGREE.of(up.figures().get(0).si()), 0.01);
  }

  @Test
  void tiltTurnsRodDownIntoRodUp() {
    HingedFlap level = (HingedFlap) LID.mechanism();
    HingedFlap upsideDown =
        new HingedFlap(
            level.masses(),
            level.centreOfMass(),
            level.handle(),
            level.sense(),
            level.end(),
            Math.PI,
            level.friction(),
            level.mounts());
    Job job = Samples.job(upsideDown, Job.OpenStop.FLAP_STOP, RankBy.BALANCED);
    assertTrue(has(Cautions.of(job, fit(job, 2, RodEnd.FRAME, -1)), "rod-up"));
    assertTrue(has(Cautions.of(job, fit(job, 2, RodEnd.MOVING, -1)), "rod-down"));
  }

  @Test
  void aPairIsReplacedTogetherAndTwistsTheFlapWhenOneFails() {
    List<Caution> pair = Cautions.of(LID, fit(LID, 2, RodEnd.FRAME, -1));
    assertTrue(has(pair, "replace-together"));
    assertTrue(has(pair, "one-of-several-fails"));
    List<Caution> single = Cautions.of(LID, fit(LID, 1, RodEnd.FRAME, -1));
    assertFalse(has(single, "replace-together"));
    assertEquals(95, named(single, "only-spring-fails").figures().get(0).si());
  }

  @Test
  void aFlapThatTheSpringLiftsPressesOnItsLatch() {
    assertFalse(has(Cautions.of(LID, fit(LID, 2, RodEnd.FRAME, -3)), "latch-pressure"));
    Caution lifted = named(Cautions.of(LID, fit(LID, 2, RodEnd.FRAME, 10)), "latch-pressure");
    assertEquals(10, lifted.figures().get(0).si(), 1e-9);
  }

  @Test
  void everyCautionNamesItsSourceAndHasASentenceWithoutGaps() {
    CautionText text = CautionText.in(Wording.english());
    for (RodEnd rod : List.of(RodEnd.FRAME, RodEnd.MOVING)) {
      for (int count = 1; count <= 2; count++) {
        for (Caution caution : Cautions.of(LID, fit(LID, count, rod, 10))) {
          assertFalse(caution.source().isBlank());
          String sentence = text.sentence(caution);
          assertTrue(sentence.endsWith("."), sentence);
          assertFalse(sentence.contains("{"), sentence);
        }
      }
    }
  }

  private static Fit fit(Job job, int count, RodEnd rod, double latchPush) {
    Trial trial = new Trial();
    trial.part = PART;
    trial.count = count;
    trial.rod = rod;
    trial.latchPush = latchPush;
    trial.handWithOneFailed = 95;
    return trial.fit(job);
  }

  private static boolean has(List<Caution> cautions, String code) {
    return cautions.stream().anyMatch(caution -> caution.code().equals(code));
  }

  private static Caution named(List<Caution> cautions, String code) {
    return cautions.stream()
        .filter(caution -> caution.code().equals(code))
        .findFirst()
        .orElseThrow(() -> new AssertionError(code + " not in " + cautions));
  }
}
