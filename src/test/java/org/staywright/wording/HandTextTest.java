package org.staywright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.Jobs;
import org.staywright.form.job.JobForm;
import org.staywright.mechanism.Mechanism.Movement;
import org.staywright.part.Family;
import org.staywright.part.Range;
import org.staywright.unit.Unit;

/** What is said of hanging a spring on, held against the mechanism's own lengths. */
class HandTextTest {

  private static final Range RANGE = SampleRange.read();
  private static final double SLACK = 1e-6;

  @Test
  void howFarPastTheStopASpringHangsFreeIsWhereItsMountsStandThatFarApart() {
    int frees = 0;
    int stuck = 0;
    List<String> all = new ArrayList<>(List.of(Jobs.LID, Jobs.LIFT, Jobs.PROFILE));
    for (int x = 330; x < 360; x += 3) {
      all.add(Jobs.LID.replace("\"x\": 360", "\"x\": " + x));
    }
    for (String json : all) {
      Job job = job(json);
      boolean turns = job.mechanism().movement() == Movement.TURNS;
      Unit way = turns ? Unit.DEGREE : Unit.MILLIMETRE;
      double sought = way.si(turns ? 15 : 50);
      for (Fit fit : Ranking.of(RANGE, job.showing(200)).fits()) {
        double end = fit.figures().orElseThrow().end();
        double extended = fit.figures().orElseThrow().lengths().extended();
        String said = hanging(job, fit, way);
        if (job.mechanism().length(end) >= extended - SLACK) {
          assertTrue(said.contains("hangs on freely"), said);
        } else if (job.mechanism().length(end + sought) < extended - SLACK) {
          assertTrue(said.contains("it does not hang free"), said);
          assertTrue(said.contains("up to " + shown(sought, way) + " "), said);
          stuck++;
        } else {
          double lift = fit.figures().orElseThrow().hanging().lift();
          assertTrue(job.mechanism().length(end + lift) >= extended - SLACK, said);
          assertTrue(said.contains(shown(lift, way)), said);
          assertTrue(said.contains("it hangs free"), said);
          frees++;
        }
      }
    }
    assertTrue(frees > 5 && stuck > 5, frees + " and " + stuck);
  }

  @Test
  void aSpringThatPullsIsPulledOntoItsMounts() {
    Range pulling = SampleRange.with(Family.TRACTION_SPRING);
    Job job =
        job(
            Jobs.LID
                .replace("[\"gas-spring\"]", "[\"traction-spring\"]")
                .replace("{\"x\": 15, \"y\": -65}", "{\"x\": -250, \"y\": -200}")
                .replace("{\"x\": 360, \"y\": -11}", "{\"x\": 60, \"y\": -30}"));
    Ranking ranking = Ranking.of(pulling, job);
    Fit fit = ranking.fits().isEmpty() ? ranking.near().get(0) : ranking.fits().get(0);
    assertEquals(-1, fit.part().spring().sense());
    String said = hanging(job, fit, Unit.DEGREE);
    assertTrue(said.contains(" must pull it out (hot and new)"), said);
    assertFalse(said.contains("press"), said);
  }

  private static String hanging(Job job, Fit fit, Unit way) {
    Wording words = Wording.english().about(job.mechanism().code());
    return HandText.of(fit, fit.figures().orElseThrow(), job.requirements(), way, words).hanging();
  }

  private static String shown(double si, Unit way) {
    return Wording.english().quantity(si, way, 0, RoundingMode.CEILING);
  }

  private static Job job(String json) {
    return JobForm.read(JobForm.withDefaults(Jobs.tree(json)));
  }
}
