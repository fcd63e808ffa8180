package org.staywright.job;

import java.time.Instant;
import java.util.List;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.FittingChoice;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Job.FittingWish;
import org.staywright.fit.job.Rejection;
import org.staywright.form.job.ChoiceForm;
import org.staywright.job.order.Choice;
import org.staywright.job.order.Misfit;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/** Judges a part before it is chosen: what does not fit is refused, unless it is wanted so. */
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
    if (!job.fitted() && wish.count() > 1) {
      throw new Refusal(new Fault("#/count", wish.count(), "1", "one-column"));
    }
    Assessment assessment = Assessment.of(fitted, range, part, wish.count());
    Misfit misfit = Misfit.of(job, assessment);
    if (misfit != null && !wish.evenIfMisfit()) {
      String code = misfit.rejection() == null ? "part-near" : "part-rejected";
      throw new Refusal(new Fault(PART, part.number(), misfit.codes(), code));
    }
    Fit fit = assessment.fit();
    Fitting rod = null;
    Fitting tube = null;
    if (job.fitted()) {
      rod = fit != null ? fit.rodFitting() : any(range, fitted.rodEnd(), part.ends().rod());
      tube = fit != null ? fit.tubeFitting() : any(range, fitted.tubeEnd(), part.ends().tube());
    }
    return new Choice(
        part.number(),
        wish.count(),
        rod == null ? null : rod.number(),
        tube == null ? null : tube.number(),
        Assessment.rodEnd(job),
        wish.sets(),
        wish.spares(),
        wish.brackets(),
        wish.evenIfMisfit(),
        range.revision(),
        now);
  }

  /** A fitting for a part that is out: where none goes on the thread there is nothing to order. */
  private static Fitting any(Range range, FittingWish wish, String thread) {
    List<Fitting> suiting = FittingChoice.of(range.fittings(), wish, thread);
    if (suiting.isEmpty()) {
      throw new Refusal(new Fault(PART, thread, Rejection.FITTING.code(), "part-without-fitting"));
    }
    return suiting.get(0);
  }

  /** Refuses a changed job that an earlier choice does not fit, unless it was wanted so. */
  static void again(Job job, Range range, Choice choice) {
    Misfit misfit = Chosen.of(job, choice, range).misfit();
    if (misfit != null && !choice.despite()) {
      throw new Refusal(new Fault("#/choice", choice.part(), misfit.codes(), "choice-rejected"));
    }
  }
}
