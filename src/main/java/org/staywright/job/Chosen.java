package org.staywright.job;

import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Job.FittingWish;
import org.staywright.job.order.Alternate;
import org.staywright.job.order.Choice;
import org.staywright.job.order.Misfit;
import org.staywright.job.order.OrderedFit;
import org.staywright.job.order.Outfit;
import org.staywright.job.order.Wanted;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.Range;

/**
 * A job with the part chosen for it, judged by the stock it was frozen from.
 *
 * @param job as it is now
 * @param choice frozen
 * @param range of the choice's revision
 * @param assessment with the chosen end fittings
 */
public record Chosen(Job job, Choice choice, Range range, Assessment assessment) {

  static Chosen of(Job job, Choice choice, Range range) {
    Job fitted =
        choice.fitted()
            ? job.with(
                new FittingWish(null, choice.rodFitting()),
                new FittingWish(null, choice.tubeFitting()))
            : job;
    Part part = range.part(choice.part()).orElseThrow();
    return new Chosen(job, choice, range, Assessment.of(fitted, range, part, choice.count()));
  }

  public Part part() {
    return range.part(choice.part()).orElseThrow();
  }

  /** What the part does, null where it is out altogether. */
  public Fit fit() {
    return assessment.fit();
  }

  /** Why it does not fit, null where it does. */
  public Misfit misfit() {
    return Misfit.of(job, assessment);
  }

  /** As a line of a list. */
  Wanted wanted() {
    return new Wanted(
        job.name(),
        new Outfit(
            part(),
            choice.count(),
            fitting(choice.rodFitting()),
            fitting(choice.tubeFitting()),
            choice.brackets(),
            job.beside()),
        choice.sets(),
        choice.spares(),
        range.fittings(),
        range.revision(),
        job.conditions().years(),
        misfit(),
        OrderedFit.of(job, fit()),
        Alternate.of(job, range, choice, fit()));
  }

  /** Null where the choice has none. */
  private Fitting fitting(String number) {
    return number == null ? null : range.fitting(number).orElseThrow();
  }
}
