package org.staywright.fit.mounts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.fit.job.Job.OpenStop.FLAP_STOP;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.staywright.Effort;
import org.staywright.fit.SampleRange;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.rank.Screening;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.part.Family;
import org.staywright.part.Range;

class MountSearchTest {

  private static final Range RANGE = SampleRange.every(Effort.of(1, 3));
  private static final Zone FRAME = new Zone(-0.05, 0.15, -0.25, -0.05);
  private static final Zone MOVING = new Zone(0.2, 0.4, -0.1, 0.1);

  private static Job job(RankBy rankBy) {
    return Samples.job(Samples.lid().mechanism(), Job.OpenStop.FLAP_STOP, rankBy);
  }

  private static Zones zones(Zone frame, Zone moving, Zone... keepOut) {
    return new Zones(frame, moving, List.of(keepOut), 0, RodEnd.EITHER);
  }

  /** What is found for the usual job, once. */
  private static final class Usual {
    static final Found FOUND = search(job(RankBy.BALANCED), zones(FRAME, MOVING));
  }

  private static Found search(Job job, Zones zones) {
    return MountSearch.of(RANGE, job, zones, 1, Progress.UNSEEN);
  }

  @Test
  void everyArrangementIsAFitInARankingAtItsMounts() {
    for (RankBy rankBy : List.of(RankBy.BALANCED, RankBy.LOWEST_COST)) {
      Found found =
          rankBy == RankBy.BALANCED ? Usual.FOUND : search(job(rankBy), zones(FRAME, MOVING));
      assertNull(found.obstacle());
      assertTrue(found.arrangements().size() >= 3 && found.arrangements().size() <= 8);
      for (Arrangement each : found.arrangements()) {
        assertTrue(FRAME.holds(each.mounts().frame()) && MOVING.holds(each.mounts().moving()));
        Job there = job(rankBy).at(each.mounts());
        Screening screening = new Screening(there, RANGE);
        int row = RANGE.row(each.fit().part().number()).orElseThrow();
        assertTrue(
            screening.fits().stream()
                .anyMatch(fit -> fit.row() == row && fit.count() == each.fit().count()),
            each.mounts() + " " + each.fit().part().number());
      }
    }
  }

  @Test
  void arrangementsAreInTheOrderOfTheJobAndDiffer() {
    Found found = search(job(RankBy.LEAST_EFFORT), zones(FRAME, MOVING));
    double before = 0;
    Set<Object> seen = new HashSet<>();
    for (Arrangement each : found.arrangements()) {
      assertTrue(each.fit().figures().orElseThrow().hand().rms() >= before);
      before = each.fit().figures().orElseThrow().hand().rms();
      assertTrue(seen.add(List.of(each.fit().part().number(), each.fit().count(), each.mounts())));
    }
    assertTrue(
        found.arrangements().stream()
                .map(each -> each.fit().part().spring().stroke())
                .distinct()
                .count()
            > 1);
  }

  @Test
  void sameSeedSameAnswer() {
    assertEquals(said(Usual.FOUND), said(search(job(RankBy.BALANCED), zones(FRAME, MOVING))));
  }

  private static List<String> said(Found found) {
    return found.arrangements().stream()
        .map(each -> each.fit().part().number() + each.fit().count() + each.mounts())
        .toList();
  }

  @Test
  void aMillimetreMeansWhatAFreshAssessmentSays() {
    Arrangement best = Usual.FOUND.arrangements().get(0);
    double up = force(best, 1e-3);
    double down = force(best, -1e-3);
    assertEquals((up - down) / 2e-3, best.sensitivity().handForce().moving().y(), 1e-6);
    assertNotEquals(0, best.sensitivity().compressedReserve().frame().x());
  }

  private static double force(Arrangement at, double shift) {
    var moving = at.mounts().moving();
    var shifted = new org.staywright.mechanism.Point(moving.x(), moving.y() + shift);
    Job there = job(RankBy.BALANCED).at(at.mounts().with(at.mounts().frame(), shifted));
    return Assessment.of(there, RANGE, at.fit().part(), at.fit().count())
        .fit()
        .figures()
        .orElseThrow()
        .hand()
        .worst();
  }

  @Test
  void keepsOutOfKeepOuts() {
    Zone keepOut = new Zone(-0.05, 0.1, -0.25, -0.05);
    Found found = search(job(RankBy.BALANCED), zones(FRAME, MOVING, keepOut));
    assertTrue(!found.arrangements().isEmpty());
    found.arrangements().forEach(each -> assertTrue(!keepOut.holds(each.mounts().frame())));
  }

  @Test
  void takesLinesAndPoints() {
    Zone line = new Zone(0.3, 0.3, -0.03, 0.0);
    Found found = search(job(RankBy.BALANCED), zones(FRAME, line));
    assertTrue(!found.arrangements().isEmpty());
    found.arrangements().forEach(each -> assertEquals(0.3, each.mounts().moving().x()));
    Zone here = new Zone(0.015, 0.015, -0.065, -0.065);
    Zone there = new Zone(0.36, 0.36, -0.011, -0.011);
    Found fixed = search(job(RankBy.BALANCED), zones(here, there));
    assertEquals(
        new Screening(Samples.lid(), RANGE).fits().isEmpty(), fixed.arrangements().isEmpty());
    Found along = search(job(RankBy.BALANCED), zones(here, new Zone(0.3, 0.4, -0.011, -0.011)));
    assertTrue(!along.arrangements().isEmpty());
  }

  @Test
  void findsItsWayInZonesFarTooWide() {
    Zone wide = new Zone(-10, 10, -10, 10);
    Found found = search(job(RankBy.BALANCED), zones(wide, wide));
    assertTrue(!found.arrangements().isEmpty(), String.valueOf(found.obstacle()));
  }

  @Test
  void saysWhatStandsInTheWay() {
    Zone far = new Zone(5, 5.2, 5, 5.2);
    assertEquals(Obstacle.Code.MOUNTS_TOO_FAR, code(job(RankBy.BALANCED), zones(far, MOVING)));
    Zone close = new Zone(0.02, 0.03, 0.01, 0.02);
    Zone closeToo = new Zone(0.05, 0.06, 0.01, 0.02);
    assertEquals(Obstacle.Code.MOUNTS_TOO_NEAR, code(job(RankBy.BALANCED), zones(close, closeToo)));
    assertEquals(
        Obstacle.Code.TOO_MUCH_STROKE,
        code(
            job(RankBy.BALANCED),
            zones(new Zone(0.5, 0.51, -0.06, -0.05), new Zone(0.9, 0.91, 0, 0.01))));
    assertEquals(Obstacle.Code.NO_PLACE, code(job(RankBy.BALANCED), zones(FRAME, MOVING, FRAME)));
    Job plain = job(RankBy.BALANCED);
    Job hot =
        new Job(
            plain.name(),
            plain.mechanism(),
            plain.springCounts(),
            plain.rodEnd(),
            plain.tubeEnd(),
            new Job.Conditions(263, 293, 420, 5, 1000),
            plain.requirements(),
            new Job.Filters(Set.of(Family.GAS_SPRING), null, false),
            plain.rankBy(),
            20);
    assertEquals(Obstacle.Code.NO_PART, code(hot, zones(FRAME, MOVING)));
  }

  private static Obstacle.Code code(Job job, Zones zones) {
    Found found = search(job, zones);
    assertEquals(List.of(), found.arrangements());
    return found.obstacle().code();
  }

  @Test
  void stopsWhenToldAndGivesWhatItHasFoundUntilThen() {
    for (int at : new int[] {1000, 16_500}) {
      AtomicInteger last = new AtomicInteger();
      Progress stop =
          (done, total) -> {
            assertTrue(done > 0 && done <= total);
            last.set(done);
            return done < at;
          };
      Found found = MountSearch.of(RANGE, job(RankBy.BALANCED), zones(FRAME, MOVING), 1, stop);
      assertTrue(last.get() >= at && last.get() < at + 3000, "stopped at " + last.get());
      assertTrue(found.places() >= Math.min(at, Usual.FOUND.places()));
      assertTrue(found.places() <= Usual.FOUND.places());
      assertTrue(!found.arrangements().isEmpty(), String.valueOf(found.obstacle()));
      for (Arrangement each : found.arrangements()) {
        Job there = job(RankBy.BALANCED).at(each.mounts());
        assertTrue(Assessment.of(there, RANGE, each.fit().part(), each.fit().count()).fit().fits());
      }
    }
  }

  @Test
  void stoppedBeforeItFindsAnythingItDoesNotSayThatNothingFits() {
    Job plain = job(RankBy.BALANCED);
    Requirements strict = Requirements.of(2, 1.1, 5e-3, 4e-3, FLAP_STOP);
    Job job =
        new Job(
            plain.name(),
            plain.mechanism(),
            plain.springCounts(),
            plain.rodEnd(),
            plain.tubeEnd(),
            plain.conditions(),
            strict,
            plain.filters(),
            plain.rankBy(),
            20);
    Zones zones = zones(FRAME, MOVING);
    assertEquals(Obstacle.Code.REQUIREMENTS, code(job, zones));
    Found found = MountSearch.of(RANGE, job, zones, 1, (done, total) -> done < 500);
    assertEquals(Obstacle.Code.STOPPED, found.obstacle().code());
    assertEquals(List.of(), found.arrangements());
  }
}
