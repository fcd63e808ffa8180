package org.staywright.web;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.staywright.job.JobJson;
import org.staywright.job.Jobs;
import org.staywright.job.SavedJob;
import org.staywright.wording.Wording;

/**
 * A page of the saved jobs.
 *
 * @param rows of this page, the newest first
 * @param page from 1
 * @param pages in all
 * @param before address of the page before, "" for none
 * @param after address of the page after, "" for none
 */
public record JobsView(List<Row> rows, int page, int pages, String before, String after) {

  private static final int SIZE = 25;

  /**
   * @param id of the job
   * @param name given, or a word for none
   * @param changed last
   * @param chosen part and count, "" for none
   * @param ranking address of its ranking
   * @param version as seen, named by whatever changes it
   */
  public record Row(
      Long id, String name, String changed, String chosen, String ranking, int version) {

    static Row of(SavedJob job, Wording wording) {
      return new Row(
          job.id,
          title(job, wording),
          LocalDate.ofInstant(job.changed, ZoneId.systemDefault()).toString(),
          job.choice == null ? "" : job.choice.count() + " × " + job.choice.part(),
          JobQuery.of(JobJson.of(job), Seen.of(job).toString()).address(),
          job.version);
    }
  }

  private static String title(SavedJob job, Wording wording) {
    return job.name.isBlank() ? wording.text("page.jobs.unnamed", job.id.toString()) : job.name;
  }

  static JobsView of(Jobs jobs, int asked, Wording wording) {
    int pages = (int) Math.max(1, (jobs.count() + SIZE - 1) / SIZE);
    int page = Math.min(asked, pages);
    Address address = new Address("/jobs", Map.of());
    return new JobsView(
        jobs.page(page - 1, SIZE).stream().map(job -> Row.of(job, wording)).toList(),
        page,
        pages,
        page > 1 ? address.with("page", page - 1).toString() : "",
        page < pages ? address.with("page", page + 1).toString() : "");
  }

  /** The first few, for the start page. */
  static List<Row> some(Jobs jobs, int most, Wording wording) {
    return jobs.page(0, most).stream().map(job -> Row.of(job, wording)).toList();
  }
}
