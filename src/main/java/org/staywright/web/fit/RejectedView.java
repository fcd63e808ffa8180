package org.staywright.web.fit;

import java.util.List;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.fit.rank.Rejected;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.web.query.JobQuery;
import org.staywright.web.shell.Pages;
import org.staywright.wording.FitText;
import org.staywright.wording.Wording;

/**
 * A page of the parts that are out for a job for one reason.
 *
 * @param reason in words
 * @param pages of all of them
 * @param rows of this page
 * @param back address of the ranking
 */
public record RejectedView(String reason, Pages pages, List<Row> rows, String back) {

  /**
   * @param count of springs
   * @param partNumber of the spring
   * @param about the spring in a few figures
   * @param against it, its figure and the limit, "" where there are none
   */
  public record Row(int count, String partNumber, String about, String against) {

    private static Row of(Job job, Range range, Rejected out, Wording wording) {
      Part part = range.part(out.row());
      return new Row(
          out.count(),
          part.number(),
          FitRow.about(part.spring(), wording),
          WhyView.by(Assessment.of(job, range, part, out.count()), wording));
    }
  }

  public static RejectedView of(
      JobQuery query, Job job, Range range, Rejection reason, int page, Wording wording) {
    List<Rejected> all = Rejected.of(job, range, reason);
    Pages pages = Pages.of(all.size(), page, query.rejected(reason));
    return new RejectedView(
        FitText.in(wording).rejection(reason),
        pages,
        all.subList(pages.from(), pages.to()).stream()
            .map(out -> Row.of(job, range, out, wording))
            .toList(),
        query.address());
  }
}
