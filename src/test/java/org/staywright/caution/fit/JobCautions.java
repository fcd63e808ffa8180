package org.staywright.caution.fit;

import java.util.List;
import java.util.stream.Stream;
import org.staywright.caution.Caution;
import org.staywright.fit.Samples;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.RankBy;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Point;

/** Every caution that the figures of a job can call for. */
public final class JobCautions {

  private JobCautions() {}

  public static List<Caution> everything() {
    Trial bad = new Trial();
    bad.part = Trial.damped();
    bad.rod = RodEnd.MOVING;
    bad.extended = 0.1;
    bad.shuts = 5;
    bad.latchPush = 6;
    bad.handWithOneFailed = 90;
    bad.heldOpen = -8;
    bad.peakPressure = 1e9;
    bad.bucklingFactor = 3.1;
    bad.swing = 0.1;
    bad.undampedStop = true;
    Trial pair = new Trial();
    pair.part = Trial.damped();
    pair.count = 2;
    pair.extended = 0.02;
    Trial four = new Trial();
    four.count = 4;
    four.heldWithOneFailed = 14;
    four.heldOpen = 3;
    four.latchPush = -1;
    Trial resting = new Trial();
    resting.handWithOneFailed = 40;
    resting.heldWithOneFailed = 20;
    Job hard = hard();
    return Stream.of(bad, pair, four, resting).flatMap(trial -> trial.of(hard).stream()).toList();
  }

  private static Job hard() {
    HingedFlap lid = (HingedFlap) Samples.lid().mechanism();
    Mounts apart = new Mounts(new Point(0.015, -0.065), new Point(0.36, -0.011), 0.03, null);
    HingedFlap slanted =
        new HingedFlap(
            lid.masses(),
            lid.centreOfMass(),
            lid.handle(),
            lid.sense(),
            lid.end(),
            lid.tilt(),
            lid.friction(),
            apart);
    Job plain = Samples.job(slanted, Job.OpenStop.FLAP_STOP, RankBy.BALANCED);
    return plain
        .asking(plain.requirements().with(Criterion.STAYS_SHUT, 0.0))
        .under(new Job.Conditions(245, 293.15, 350, 5, 10));
  }
}
