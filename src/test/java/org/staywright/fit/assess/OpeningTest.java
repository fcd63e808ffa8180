package org.staywright.fit.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.Effort;
import org.staywright.fit.SampleRange;
import org.staywright.fit.Samples;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.mounts.Arrangement;
import org.staywright.fit.mounts.Found;
import org.staywright.fit.mounts.MountSearch;
import org.staywright.fit.mounts.Progress;
import org.staywright.fit.mounts.Zone;
import org.staywright.fit.mounts.Zones;
import org.staywright.fit.rank.Ranking;
import org.staywright.fit.time.TimeFigures;
import org.staywright.form.job.JobForm;
import org.staywright.form.schema.JsonText;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.part.Range;

/** What a hand at its limit does to a load is a requirement like any other. */
class OpeningTest {

  private static final Range RANGE = SampleRange.read();
  private static final Job LID = Samples.lid();

  private static Job asking(Criterion criterion, double limit) {
    return asking(LID.requirements().with(criterion, limit));
  }

  private static Job asking(Requirements asked) {
    return LID.asking(asked).showing(5000);
  }

  private static double stopSpeed(Job job, Fit fit) {
    return TimeFigures.of(job, fit).orElseThrow().opening().stopSpeed().value();
  }

  @Test
  void whatHitsTheStopTooFastIsNearAndSaysByHowMuch() {
    Job plain = asking(LID.requirements());
    Range range = SampleRange.every(Effort.of(1, 3));
    List<Fit> all = Ranking.of(range, plain).fits();
    double[] speeds = all.stream().mapToDouble(fit -> stopSpeed(plain, fit)).sorted().toArray();
    double limit = speeds[20];
    int slow = (int) DoubleStream.of(speeds).filter(speed -> speed <= limit).count();
    Job job = asking(Criterion.STOP_SPEED, limit);
    Ranking ranking = Ranking.of(range, job);
    assertEquals(slow, ranking.fitsTotal());
    for (Fit fit : all) {
      assertEquals(stopSpeed(job, fit) <= limit, Opening.keeps(job, fit), fit.toString());
    }
    ranking.fits().forEach(fit -> assertTrue(stopSpeed(job, fit) <= limit, fit.toString()));
    List<Fit> fast =
        ranking.near().stream()
            .filter(fit -> fit.blockedBy().get(0).criterion() == Criterion.STOP_SPEED)
            .toList();
    assertEquals(all.size() - slow, fast.size());
    Fit first = fast.get(0);
    assertEquals(limit, first.blockedBy().get(0).needed());
    assertEquals(stopSpeed(job, first), first.blockedBy().get(0).has(), 1e-12);
  }

  /** A speed limit at the stop is usable: damped parts meet it in every corner. */
  @ParameterizedTest
  @ValueSource(strings = {"/jobs/flap.json", "/ways/level-lid.json"})
  void aLidThatPagesOpenWithIsMetByDampedPartsAtOneAndAHalfMetresASecond(String file)
      throws IOException {
    ObjectNode lid;
    try (var in = OpeningTest.class.getResourceAsStream(file)) {
      lid = (ObjectNode) JsonText.read(in.readAllBytes()).tree();
    }
    lid.withObject("/requirements").put("maxStopSpeedMmPerS", 1500);
    Job job = JobForm.read(lid, RANGE);
    Ranking ranking = Ranking.of(RANGE, job);
    assertTrue(ranking.fitsTotal() > 0, ranking.fitsTotal() + " fit");
    assertTrue(ranking.fits().stream().anyMatch(fit -> fit.part().endZone() > 0));
    for (Fit fit : ranking.fits()) {
      Kept kept = Opening.kept(job, fit).get(0);
      assertTrue(kept.met() && kept.has() <= 1.5, fit.part().number() + " " + kept);
    }
  }

  @Test
  void whatNeverOpensInTimeSaysSo() {
    Job job = asking(Criterion.OPENING_TIME, 1e-3);
    Ranking ranking = Ranking.of(RANGE, job);
    assertEquals(0, ranking.fitsTotal());
    assertTrue(
        ranking.near().stream()
            .flatMap(fit -> fit.blockedBy().stream())
            .anyMatch(blocker -> blocker.criterion() == Criterion.OPENING_TIME));
  }

  @Test
  @Tag("full")
  void theFinderKeepsIt() {
    Zones zones =
        new Zones(
            new Zone(0, 0.04, -0.09, -0.06),
            new Zone(0.33, 0.37, -0.03, -0.01),
            List.of(),
            0,
            RodEnd.EITHER);
    Job plain = asking(LID.requirements());
    Found fast = MountSearch.of(RANGE, plain, zones, 1, Progress.UNSEEN);
    double limit = 0.9 * stopSpeed(plain, fast.arrangements().get(0).fit());
    Job job = asking(Criterion.STOP_SPEED, limit);
    Found found = MountSearch.of(RANGE, job, zones, 1, Progress.UNSEEN);
    assertNull(found.obstacle());
    for (Arrangement each : found.arrangements()) {
      assertTrue(stopSpeed(job.at(each.mounts()), each.fit()) <= limit, each.toString());
    }
  }
}
