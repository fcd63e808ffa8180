package org.staywright.form.job;

import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;
import static org.staywright.form.schema.Field.withDefault;

import java.util.List;
import java.util.stream.IntStream;
import org.staywright.fit.job.Beside;
import org.staywright.fit.job.FittingChoice;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Job.FittingWish;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.Kind.Whole;
import org.staywright.form.schema.Shape;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Rigid;
import org.staywright.part.Family;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.unit.Refusal;

/** Parts beside the springs of a job: their places in its document, and the parts in a range. */
final class BesideForm {

  /** Different parts that may act along. */
  static final int MOST = 4;

  private static final Shape MOUNTS =
      Shape.of(
          "beside-mounts",
          required("frameMm", LoadShape.POINT),
          required("movingMm", LoadShape.POINT));

  /** One where no count is given; without mounts of its own it hangs where the springs do. */
  static final Shape SHAPE =
      Shape.of(
          "beside",
          required("partNumber", AnswerShape.PART_NUMBER),
          withDefault("count", new Whole(1, 8), 1),
          optional("mounts", MOUNTS));

  private static final String ALL = "/beside";

  private final Job job;
  private final JobTree tree;
  private final Range range;
  private final String number;
  private final String mounts;
  private final String count;

  private BesideForm(Job job, JobTree tree, Range range, int index) {
    this.job = job;
    this.tree = tree;
    this.range = range;
    String at = ALL + "/" + index;
    number = at + "/partNumber";
    count = at + "/count";
    mounts = at + "/mounts";
  }

  /** Adds what a sound document names; a refusal where the range has none such. */
  static Job added(Job job, JobTree tree, Range range) {
    int size = tree.size(ALL);
    return size == 0
        ? job
        : job.with(
            IntStream.range(0, size)
                .mapToObj(index -> new BesideForm(job, tree, range, index).beside())
                .toList());
  }

  private Beside beside() {
    Part part =
        range
            .part(tree.text(number))
            .filter(found -> found.family() != Family.SEAT_COLUMN)
            .orElseThrow(() -> refusal("", "no-such-part-beside"));
    Rigid mechanism = job.mechanism().rigid().orElseThrow();
    Beside beside =
        new Beside(
            part,
            (int) tree.number(count),
            fitting(job.rodEnd(), part.ends().rod()),
            fitting(job.tubeEnd(), part.ends().tube()),
            tree.given(mounts) ? mechanism.at(mounts(mechanism.mounts())) : mechanism);
    beside
        .fault()
        .ifPresent(
            fault -> {
              throw new Refusal(fault.at("#" + number));
            });
    return beside;
  }

  private Refusal refusal(String bound, String code) {
    return new Refusal(tree.fault(number, bound, code).at("#" + number));
  }

  private Mounts mounts(Mounts springs) {
    return new Mounts(
        tree.point(mounts + "/frameMm"),
        tree.point(mounts + "/movingMm"),
        springs.lateralOffset(),
        springs.rodEnd());
  }

  private Fitting fitting(FittingWish wish, String thread) {
    List<Fitting> suitable = FittingChoice.of(range.fittings(), wish, thread);
    if (suitable.isEmpty()) {
      throw refusal(thread, "beside-without-fitting");
    }
    return suitable.get(0);
  }
}
