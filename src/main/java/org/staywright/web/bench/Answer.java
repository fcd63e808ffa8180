package org.staywright.web.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Stream;
import org.staywright.document.view.ViewPosition;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.job.JobForm;
import org.staywright.part.Range;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.web.field.FormFields;
import org.staywright.web.field.Typed;
import org.staywright.web.fit.Cleared;
import org.staywright.web.query.Bench;
import org.staywright.web.query.JobQuery;
import org.staywright.web.shell.ProgramMetrics;
import org.staywright.wording.Wording;

/**
 * What a description of a job gives.
 *
 * @param query the job, its defaults filled in where it is sound
 * @param form with its faults
 * @param held its best spring in the side view, null while it is not sound
 * @param ranking null while it is not sound
 */
record Answer(JobQuery query, FormFields form, HeldSpring held, RankingView ranking) {

  /** So many rows are looked at for each that is shown: what is nearly the same shares one. */
  private static final int DEEP = 4;

  /** Near misses are solved where nothing fits: else they stand folded away. */
  static Answer to(JobQuery asked, Range range) {
    return to(asked, range, false);
  }

  /**
   * @param near whether near misses are to be solved in any case
   */
  static Answer to(JobQuery asked, Range range, boolean near) {
    Wording wording = asked.bench().wording();
    try {
      ObjectNode tree = JobForm.withDefaults(asked.tree());
      Job job = JobForm.read(tree, range);
      Ranking ranking =
          ProgramMetrics.ranking(() -> Ranking.of(range, job.showing(DEEP * job.limit())));
      boolean solve = near || ranking.fits().isEmpty();
      JobQuery query = JobQuery.of(tree, asked.saved());
      Typed typed = new Typed(query.values(), asked.typed().texts());
      FormFields form = form(query.bench(), typed, List.of(), range, wording);
      return new Answer(
          query,
          form,
          HeldSpring.of(job, best(ranking), ViewPosition.START, wording),
          RankingView.of(
              query,
              job,
              ranking,
              solve ? Cleared.of(tree, job, range, wording) : Cleared.NOT,
              form,
              wording));
    } catch (Refusal refusal) {
      return new Answer(
          asked, form(asked.bench(), asked.typed(), refusal.faults(), range, wording), null, null);
    }
  }

  private static Fit best(Ranking ranking) {
    return Stream.concat(ranking.fits().stream(), ranking.near().stream()).findFirst().orElse(null);
  }

  private static FormFields form(
      Bench bench, Typed typed, List<Fault> faults, Range range, Wording wording) {
    return new FormFields(wording, bench.shape(), typed, faults, range.fittings());
  }
}
