package org.staywright.fit.clear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.job.JobForm;
import org.staywright.form.job.JobKnobs;
import org.staywright.mechanism.SeatColumn;
import org.staywright.part.Range;

/** What is said to clear a near miss does, and a little less does not. */
class ClearingTest {

  private static final Range RANGE = SampleRange.read();

  @Test
  void everyChangeFoundMakesThePartFitAndOneStepLessDoesNot() throws IOException {
    Set<String> paths = new TreeSet<>();
    for (ObjectNode tree : jobs()) {
      Job job = JobForm.read(tree);
      Clearing clearing = new Clearing(job, RANGE, JobKnobs.of(tree, RANGE));
      for (Fit near : few(Ranking.of(RANGE, job).near())) {
        Change change = clearing.of(near).orElse(null);
        if (change == null) {
          continue;
        }
        String what = job.name() + ", " + near.part().number() + ": " + change;
        paths.add(change.path());
        assertTrue(fits(tree, near, change.path(), change.to()), what);
        if (change.by().isPresent() && !change.path().equals("/springCounts")) {
          BigDecimal step = smallest(change);
          BigDecimal less = ((BigDecimal) change.to()).subtract(step);
          assertFalse(fits(tree, near, change.path(), less), what + " but " + less + " does too");
        }
      }
    }
    assertTrue(paths.size() >= 5, "only these were ever changed: " + paths);
  }

  @Test
  void aMountNeedsToMoveNoFartherThanTheReserveLacks() throws IOException {
    ObjectNode tree = tree("/jobs/flap.json");
    Job job = JobForm.read(tree).showing(5000);
    Clearing clearing = new Clearing(job, RANGE, JobKnobs.of(tree, RANGE));
    Fit near =
        Ranking.of(RANGE, job).near().stream()
            .filter(fit -> fit.blockedBy().size() == 1)
            .filter(fit -> fit.blockedBy().get(0).criterion() == Criterion.COMPRESSED_RESERVE)
            .findFirst()
            .orElseThrow();
    double lacks = near.blockedBy().get(0).needed() - near.blockedBy().get(0).has();
    Change change = clearing.of(near).orElseThrow();
    // Closed, the spring lies within 9° of level: x of a mount lengthens it nearly one to one.
    assertTrue(change.path().endsWith("/x"), change.toString());
    assertEquals(1000 * lacks, change.by().orElseThrow().abs().doubleValue(), 0.2);
  }

  @Test
  void aLimitIsGivenWayOnOnlyWhereNothingElseHelps() throws IOException {
    int moved = 0;
    int gaveWay = 0;
    for (ObjectNode tree : jobs()) {
      Job job = JobForm.read(tree);
      List<Knob> free = JobKnobs.of(tree, RANGE).stream().filter(knob -> !knob.asked()).toList();
      for (Fit near : few(Ranking.of(RANGE, job).near()).subList(0, 2)) {
        Optional<Change> change = new Clearing(job, RANGE, JobKnobs.of(tree, RANGE)).of(near);
        Optional<Change> keeping = new Clearing(job, RANGE, free).of(near);
        if (keeping.isPresent()) {
          assertEquals(keeping, change, job.name());
          moved++;
        } else if (change.isPresent()) {
          assertTrue(change.get().path().startsWith("/requirements/"), change.toString());
          gaveWay++;
        }
      }
    }
    assertTrue(moved > 0 && gaveWay > 0, moved + " moved, " + gaveWay + " gave way");
  }

  private static boolean fits(ObjectNode tree, Fit near, String path, Object to) {
    ObjectNode changed = tree.deepCopy();
    int count = near.count();
    if (path.equals("/springCounts")) {
      count = ((BigDecimal) to).intValueExact();
      changed.putArray("springCounts").add(count);
    } else {
      JsonPointer pointer = JsonPointer.compile(path);
      ObjectNode parent = (ObjectNode) changed.at(pointer.head());
      String name = pointer.last().getMatchingProperty();
      if (to instanceof BigDecimal number) {
        parent.put(name, number);
      } else {
        parent.put(name, (String) to);
      }
    }
    Fit fit = Assessment.of(JobForm.read(changed), RANGE, near.part(), count).fit();
    return fit != null && fit.fits();
  }

  private static BigDecimal smallest(Change change) {
    boolean fine = change.path().endsWith("massKg") || change.path().endsWith("minHoldRatio");
    BigDecimal step = new BigDecimal(fine ? "0.01" : "0.1");
    return change.by().orElseThrow().signum() < 0 ? step.negate() : step;
  }

  private static List<Fit> few(List<Fit> near) {
    return near.subList(0, Math.min(Clearing.ROWS, near.size()));
  }

  /** The sample jobs that a hand moves, each also asking for less and for more. */
  private static List<ObjectNode> jobs() throws IOException {
    List<ObjectNode> jobs = new ArrayList<>();
    try (var in = ClearingTest.class.getResourceAsStream("/catalog-data/sample-jobs.json")) {
      for (JsonNode job : new ObjectMapper().readTree(in)) {
        if (job.at("/load/type").asText().equals(SeatColumn.CODE)) {
          continue;
        }
        jobs.add(JobForm.withDefaults(job));
        ObjectNode hard = JobForm.withDefaults(job);
        double limit = hard.at("/requirements/maxHandForceN").doubleValue();
        hard.withObject("/requirements").put("maxHandForceN", 0.7 * limit);
        hard.put("rankBy", "least-effort");
        jobs.add(hard);
      }
    }
    return jobs;
  }

  private static ObjectNode tree(String resource) throws IOException {
    try (var in = ClearingTest.class.getResourceAsStream(resource)) {
      return JobForm.withDefaults(new ObjectMapper().readTree(in));
    }
  }
}
