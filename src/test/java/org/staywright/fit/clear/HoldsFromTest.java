package org.staywright.fit.clear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.Jobs;
import org.staywright.form.job.ConditionKnobs;
import org.staywright.form.job.JobForm;
import org.staywright.part.Range;

/** From where on a near part is said to hold, it does, and a step before it does not. */
class HoldsFromTest {

  private static final Range RANGE = SampleRange.read();

  /** Lengthens, asks to be held at its longest, and has no mounts that could be moved. */
  private static ObjectNode profile(double hold) {
    ObjectNode job = JobForm.withDefaults(Jobs.tree(Jobs.PROFILE));
    job.withObject("/requirements").put("minHoldOpenN", hold);
    return job;
  }

  private static ObjectNode past(double tilt) {
    ObjectNode job = JobForm.withDefaults(Jobs.lid());
    job.withObject("/load").put("openingAngleDeg", 100).put("tiltDeg", tilt);
    job.withObject("/requirements").put("minHoldOpenN", 20);
    return job;
  }

  private static ObjectNode under(ObjectNode job, String condition, double value) {
    job.withObject("/conditions").put(condition, value);
    return job;
  }

  @Test
  void itHoldsFromThereAndNotAStepBefore() {
    Set<String> paths = new TreeSet<>();
    for (ObjectNode tree :
        new ObjectNode[] {
          profile(40), under(under(profile(40), "serviceYears", 0), "minC", -20), past(-8), past(-6)
        }) {
      Job job = JobForm.read(tree).showing(60);
      HoldsFrom holds = new HoldsFrom(RANGE, ConditionKnobs.of(tree, RANGE));
      for (Fit near : Ranking.of(RANGE, job).near()) {
        Change change = holds.of(near).orElse(null);
        if (change == null) {
          continue;
        }
        String what = near.part().number() + ": " + change;
        BigDecimal to = (BigDecimal) change.to();
        boolean fine = change.path().endsWith("C");
        BigDecimal step = new BigDecimal(fine ? "0.5" : "0.1");
        BigDecimal back = change.by().orElseThrow().signum() > 0 ? step.negate() : step;
        assertTrue(fits(tree, near, change.path(), to), what);
        assertFalse(fits(tree, near, change.path(), to.add(back)), what);
        paths.add(change.path());
      }
    }
    assertEquals(Set.of("/conditions/minC", "/conditions/serviceYears", "/load/tiltDeg"), paths);
  }

  private static boolean fits(ObjectNode tree, Fit near, String path, BigDecimal to) {
    JsonPointer pointer = JsonPointer.compile(path);
    ObjectNode changed = tree.deepCopy();
    ((ObjectNode) changed.at(pointer.head())).put(pointer.last().getMatchingProperty(), to);
    return Assessment.of(JobForm.read(changed), RANGE, near.part(), near.count()).fit().fits();
  }
}
