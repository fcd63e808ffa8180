package org.staywright.caution.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.caution.fit.Trial.figure;
import static org.staywright.caution.fit.Trial.has;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.staywright.caution.Caution;
import org.staywright.caution.fit.Cautions;
import org.staywright.caution.fit.JobCautions;
import org.staywright.caution.fit.Trial;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.SeatFigures;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.SeatColumn;
import org.staywright.mechanism.StraightLift;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.spring.CoilSpring;
import org.staywright.spring.Damper;
import org.staywright.spring.Digression;
import org.staywright.spring.GasSpring;
import org.staywright.spring.Locking;
import org.staywright.spring.LockingSpring;
import org.staywright.spring.TractionSpring;
import org.staywright.unit.Unit;
import org.staywright.wording.CautionText;
import org.staywright.wording.Wording;

/** Each family calls for what it can do to people, and for nothing it cannot. */
class FamilyCautionsTest {

  private static final Part GAS = Trial.PART;
  private static final Part COIL =
      Trial.part(
          Family.COIL_SPRING,
          new CoilSpring(
              0.008,
              0.027,
              0.003,
              10,
              0.15,
              CoilSpring.DRAWN_WIRE,
              1500e6,
              0.05,
              0.18,
              0.13,
              60,
              2));
  private static final Part TRACTION =
      Trial.part(
          Family.TRACTION_SPRING,
          new TractionSpring(0.008, 0.018, 0.0156, 0.2, 0.53, 0.33, 300, 17, 1.5, 38e-6, 1e-6));
  private static final GasSpring OPEN =
      new GasSpring(0.01, 0.028, 0.024, 0.12, 0.32, 0.2, 400, 20, 1.5, 8e-5, 1e-6);
  private static final LockingSpring LOCK =
      new LockingSpring(OPEN, 5e-6, 1.5e-5, Locking.ELASTIC, 8000);
  private static final Part STRUT = Trial.part(Family.LOCKING_STRUT, LOCK);
  private static final Part COLUMN = Trial.part(Family.SEAT_COLUMN, LOCK);

  @Test
  void whatHoldsGasIsCharged() {
    for (Part part : List.of(GAS, TRACTION, STRUT, COLUMN, damper(50e-6))) {
      List<Caution> cautions = Cautions.of(part);
      assertTrue(has(cautions, "charge-pressure"), part.toString());
      assertTrue(has(cautions, "never-open") && has(cautions, "disposal"), part.toString());
      assertFalse(has(cautions, "stored-energy") || has(cautions, "no-heat"), part.toString());
    }
    for (Part part : List.of(COIL, damper(0))) {
      List<Caution> cautions = Cautions.of(part);
      assertFalse(has(cautions, "charge-pressure"), part.toString());
      assertFalse(has(cautions, "never-open") || has(cautions, "disposal"), part.toString());
      assertTrue(has(cautions, "no-heat"), part.toString());
    }
    assertTrue(has(Cautions.of(damper(0)), "disposal-oil"));
  }

  @Test
  void aCoilHoldsEnergyButNoGasAndNoSeal() {
    List<Caution> cautions = Cautions.of(COIL);
    // A straight line: the mean of the forces at both ends times the stroke.
    double energy =
        COIL.spring().stroke()
            * (COIL.spring().law().force(0, 293.15) + COIL.spring().law().force(0.05, 293.15))
            / 2;
    assertEquals(energy, figure(cautions, "stored-energy", 0), 1e-6 * energy);
    assertFalse(has(cautions, "sticking") || has(cautions, "rod-down"));
    assertTrue(has(cautions, "temperature-limits-dry"));
    assertFalse(has(Cautions.of(damper(0)), "stored-energy"));
  }

  @Test
  void onlyATractionSpringPullsTogether() {
    double most = -TRACTION.spring().law().force(0, 293.15);
    assertTrue(most > 300);
    assertEquals(most, figure(Cautions.of(TRACTION), "pulls-together", 0), 1e-9);
    for (Part part : List.of(GAS, COIL, STRUT, COLUMN, damper(0))) {
      assertFalse(has(Cautions.of(part), "pulls-together"), part.toString());
    }
  }

  @Test
  void aLockIsNoPersonalSafetyLock() {
    assertEquals(8000, figure(Cautions.of(STRUT), "lock-no-guard", 0));
    assertEquals(8000, figure(Cautions.of(COLUMN), "lock-no-guard", 0));
    for (Part part : List.of(GAS, COIL, TRACTION, damper(0))) {
      assertFalse(has(Cautions.of(part), "lock-no-guard"), part.toString());
    }
  }

  @Test
  void aSeatIsToldOfItsColumnsLimits() {
    Job job =
        Samples.job(new SeatColumn(9, 45, 120, 0.8, 0.1), Job.OpenStop.FLAP_STOP, RankBy.BALANCED);
    List<Caution> calm = Cautions.of(job, seat(100e5, 5));
    assertFalse(has(calm, "near-pressure") || has(calm, "near-buckling"));
    assertTrue(has(calm, "lock-no-guard") && has(calm, "pinch-points"));
    List<Caution> hard = Cautions.of(job, seat(390e5, 3.1));
    assertTrue(has(hard, "near-pressure") && has(hard, "near-buckling"));
    CautionText text = CautionText.in(Wording.english().about(SeatColumn.CODE));
    for (Caution caution : hard) {
      String sentence = text.sentence(caution);
      assertFalse(sentence.contains("flap") || sentence.contains("{"), sentence);
    }
  }

  @Test
  void onlyAHingedFlapIsCalledAFlap() {
    List<Caution> all =
        Stream.of(GAS, COIL, TRACTION, STRUT, COLUMN, damper(0), damper(50e-6))
            .flatMap(part -> Cautions.of(part).stream())
            .toList();
    List<Caution> inAJob = JobCautions.everything();
    for (String subject :
        List.of("", StraightLift.CODE, ForceProfile.CODE, SeatColumn.CODE, "gas-spring")) {
      CautionText text = CautionText.in(Wording.english().about(subject));
      Stream.concat(all.stream(), inAJob.stream())
          .map(text::sentence)
          .forEach(sentence -> assertFalse(sentence.toLowerCase().contains("flap"), sentence));
    }
    CautionText flap = CautionText.in(Wording.english().about(HingedFlap.CODE));
    long named = inAJob.stream().filter(any -> flap.sentence(any).contains("lap")).count();
    assertTrue(named >= 5, "sentences about the flap: " + named);
  }

  /** Of a force, an energy or a pressure it is said in which case it comes to that. */
  @Test
  void everySentenceNamesTheCaseOfItsFigures() {
    Pattern english = Pattern.compile("(?i)at worst|at its worst|nominal|hot|cold|as rated");
    Pattern german =
        Pattern.compile("(?i)schlimmstenfalls|ungünstig|nominell|heiß|kalt|Kälte|laut Angabe");
    List<Caution> all =
        Stream.concat(
                Stream.of(GAS, COIL, TRACTION, STRUT, COLUMN, damper(0), damper(50e-6))
                    .flatMap(part -> Cautions.of(part).stream()),
                JobCautions.everything().stream())
            .filter(caution -> caution.figures().stream().anyMatch(FamilyCautionsTest::varies))
            .toList();
    assertTrue(all.size() > 20, all.toString());
    for (String subject : List.of("", HingedFlap.CODE, ForceProfile.CODE, SeatColumn.CODE)) {
      for (Caution caution : all) {
        String said = CautionText.in(Wording.english().about(subject)).sentence(caution);
        assertTrue(english.matcher(said).find(), said);
        String sagt = CautionText.in(Wording.of(Locale.GERMAN).about(subject)).sentence(caution);
        assertTrue(german.matcher(sagt).find(), sagt);
      }
    }
  }

  private static boolean varies(Caution.Figure figure) {
    return EnumSet.of(Unit.NEWTON, Unit.JOULE, Unit.BAR).contains(figure.unit());
  }

  private static Fit seat(double pressure, double buckling) {
    SeatFigures figures =
        new SeatFigures(
            new SeatColumn(6, 45, 120, 0.85, 0.1),
            0.12,
            1.2,
            1.2,
            100,
            new SeatFigures.Bounce(0.01, 0.01, 0.01),
            new SeatFigures.Strength(1200, 900, pressure, buckling));
    return new Fit(COLUMN, 1, null, null, RodEnd.FRAME, figures, List.of(), null, 0, 0);
  }

  private static Part damper(double gas) {
    Digression way = new Digression(400, 0.1, 0.7);
    return Trial.part(
        Family.DAMPER,
        new Damper(
            0.008, 0.022, 0.019, 0.1, 0.32, 0.22, gas > 0 ? 80 : 0, 10, 1.5, gas, 28e-6, way, way));
  }
}
