package org.staywright.job;

import java.time.Instant;
import org.staywright.fit.Assessment;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.fit.Job.FittingWish;
import org.staywright.form.ChoiceForm;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/** Judges a part before it is chosen: what is out for the job is refused. */
final class Choosing {

  private static final String PART = "#/partNumber";

  private Choosing() {}

  /** The choice a wish amounts to in a range. */
  static Choice first(Job job, Range range, ChoiceForm wish, Instant now) {
    Part part =
        range
            .part(wish.partNumber())
            .orElseThrow(() -> new Refusal(new Fault(PART, wish.partNumber(), "", "no-such-part")));
    Job fitted =
        job.with(
            wish.rodEnd() == null ? job.rodEnd() : wish.rodEnd(),
            wish.tubeEnd() == null ? job.tubeEnd() : wish.tubeEnd());
    Fit fit = judged(fitted, range, part, wish.count(), PART);
    return new Choice(
        part.number(),
        wish.count(),
        fit.rodFitting().number(),
        fit.tubeFitting().number(),
        fit.rodEndAt(),
        wish.sets(),
        wish.spares(),
        wish.brackets(),
        range.revision(),
        now);
  }

  /** Refuses a changed job that an earlier choice is out for. */
  static void again(Job job, Range range, Choice choice) {
    Job fitted =
        job.with(
            new FittingWish(null, choice.rodFitting()),
            new FittingWish(null, choice.tubeFitting()));
    judged(fitted, range, range.part(choice.part()).orElseThrow(), choice.count(), "#/choice");
  }

  private static Fit judged(Job job, Range range, Part part, int count, String where) {
    Assessment assessment = Assessment.of(job, range, part, count);
    if (assessment.rejection() != null) {
      String code = where.equals(PART) ? "part-rejected" : "choice-rejected";
      throw new Refusal(new Fault(where, part.number(), assessment.rejection().code(), code));
    }
    return assessment.fit();
  }
}
