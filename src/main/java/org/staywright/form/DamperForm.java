package org.staywright.form;

import static org.staywright.form.Field.optional;
import static org.staywright.form.Field.required;

import java.util.List;
import org.staywright.fit.Beside;
import org.staywright.fit.FittingChoice;
import org.staywright.fit.Job;
import org.staywright.fit.Job.FittingWish;
import org.staywright.form.Kind.Whole;
import org.staywright.mechanism.Mounted;
import org.staywright.mechanism.Mounts;
import org.staywright.part.Family;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.unit.Refusal;

/** Dampers beside the springs of a job: their place in its document, and the part in a range. */
final class DamperForm {

  private static final Shape MOUNTS =
      Shape.of(
          "damper-mounts",
          required("frameMm", LoadShape.POINT),
          required("movingMm", LoadShape.POINT));

  /** One where no count is given; without mounts of its own it hangs beside the springs. */
  static final Shape SHAPE =
      Shape.of(
          "damper",
          required("partNumber", JobShape.PART_NUMBER),
          optional("count", new Whole(1, 8)),
          optional("mounts", MOUNTS));

  private static final String AT = "/damper";
  private static final String NUMBER = AT + "/partNumber";
  private static final String COUNT = AT + "/count";
  private static final String FRAME = AT + "/mounts/frameMm";
  private static final String MOVING = AT + "/mounts/movingMm";
  private static final String FAMILY = Family.DAMPER.code();

  private DamperForm() {}

  /** Adds the dampers of a sound document to its job; a refusal where the range has none such. */
  static Job added(Job job, JobTree tree, Range range) {
    if (!tree.given(AT)) {
      return job;
    }
    Part part =
        range
            .part(tree.text(NUMBER))
            .filter(found -> found.family() == Family.DAMPER)
            .orElseThrow(
                () -> new Refusal(tree.fault(NUMBER, FAMILY, "no-such-damper").at("#" + NUMBER)));
    Mounted mechanism = (Mounted) job.mechanism();
    Beside beside =
        new Beside(
            part,
            tree.given(COUNT) ? (int) tree.number(COUNT) : 1,
            fitting(range, job.rodEnd(), part.ends().rod(), tree),
            fitting(range, job.tubeEnd(), part.ends().tube(), tree),
            tree.given(FRAME) ? mechanism.at(mounts(mechanism.mounts(), tree)) : mechanism);
    beside
        .fault()
        .ifPresent(
            fault -> {
              throw new Refusal(fault.at("#" + NUMBER));
            });
    return job.with(beside);
  }

  private static Mounts mounts(Mounts springs, JobTree tree) {
    return new Mounts(
        tree.point(FRAME), tree.point(MOVING), springs.lateralOffset(), springs.rodEnd());
  }

  private static Fitting fitting(Range range, FittingWish wish, String thread, JobTree tree) {
    List<Fitting> suitable = FittingChoice.of(range.fittings(), wish, thread);
    if (suitable.isEmpty()) {
      throw new Refusal(tree.fault(NUMBER, thread, "damper-without-fitting").at("#" + NUMBER));
    }
    return suitable.get(0);
  }
}
