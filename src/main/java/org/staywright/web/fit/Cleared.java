package org.staywright.web.fit;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.clear.Clearing;
import org.staywright.fit.clear.HoldsFrom;
import org.staywright.fit.job.Job;
import org.staywright.form.job.ConditionKnobs;
import org.staywright.form.job.JobKnobs;
import org.staywright.part.Range;
import org.staywright.wording.FitText;
import org.staywright.wording.Wording;

/** What would make near parts fit, or from where on they hold as they are, in words. */
public interface Cleared {

  /** Where it is solved later or not at all. */
  Cleared NOT = (rank, near) -> "";

  /** "" beyond the first rows. */
  String of(int rank, Fit near);

  /**
   * @param tree the job with its defaults filled in
   */
  static Cleared of(ObjectNode tree, Job job, Range range, Wording wording) {
    Clearing clearing = new Clearing(job, range, JobKnobs.of(tree, range));
    HoldsFrom holdsFrom = new HoldsFrom(range, ConditionKnobs.of(tree, range));
    FitText text = FitText.in(wording);
    return (rank, near) ->
        rank > Clearing.ROWS || near.fits()
            ? ""
            : clearing
                .of(near)
                .map(change -> wording.text("fit.cleared", text.change(change)))
                .orElseGet(
                    () ->
                        holdsFrom
                            .of(near)
                            .map(text::holdsFrom)
                            .orElseGet(() -> wording.text("fit.not-cleared")));
  }
}
